package flankfit.setup;

import flankfit.finding.Code;
import flankfit.finding.Nearest;
import flankfit.finding.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/** One table of the sheet; reports its unknown keys when made. */
final class SheetTable {
  private final SheetLog log;
  private final TomlTable table;
  private final String name;
  private final Place place;
  private final Keys keys;

  SheetTable(SheetLog log, TomlTable table, String name, Place place, Keys keys) {
    this.log = log;
    this.table = table;
    this.name = name;
    this.place = place;
    this.keys = keys;
    table.keySet().stream().filter(key -> !keys.knows(key)).forEach(this::reportUnknown);
  }

  private void reportUnknown(String key) {
    Place at = log.place(table.inputPositionOf(List.of(key)));
    String fix =
        Nearest.of(key, keys.words())
            .map(near -> "write \"" + near + "\"")
            .orElse("use one of: " + String.join(", ", keys.words()));
    log.report(
        Code.SH02,
        new Place(at.file(), at.line(), at.column(), at.column() == 0 ? 0 : key.length()),
        "unknown key \"" + SheetItem.cut(key.replaceAll("\\p{Cntrl}", " ")) + "\" in " + name,
        "a key is read or refused, none is passed over",
        fix);
  }

  SheetLog log() {
    return log;
  }

  /** Where the table begins. */
  Place place() {
    return place;
  }

  boolean has(String key) {
    return table.contains(List.of(key));
  }

  /** The value of a key, if it is there. */
  Optional<SheetItem> item(String key) {
    String expected = keys.expected(key);
    Object value = table.get(List.of(key));
    if (value == null) {
      return Optional.empty();
    }
    Place at = log.place(table.inputPositionOf(List.of(key)));
    return Optional.of(new SheetItem(log, value, at, "\"" + key + "\" in " + name, expected));
  }

  /** The value of a key; reports it as missing when it is not there. */
  Optional<SheetItem> needed(String key) {
    Optional<SheetItem> item = item(key);
    if (item.isEmpty()) {
      reportMissing(key, "expected " + keys.expected(key));
    }
    return item;
  }

  void reportMissing(String key, String why) {
    String what = name + " lacks the key \"" + key + "\"";
    log.report(Code.SH03, place, what, why, "add " + key + " = …");
  }

  /** The value of a key as read; another value, with the sentence said, when it is not there. */
  <T> Optional<T> or(
      String key, Function<SheetItem, Optional<T>> read, T otherwise, String sentence) {
    Optional<SheetItem> item = item(key);
    if (item.isEmpty()) {
      log.assume(sentence);
      return Optional.of(otherwise);
    }
    return item.flatMap(read);
  }

  /** A table within this one. */
  Optional<SheetTable> table(String key, Keys inner) {
    return item(key).flatMap(item -> item.table(inner, "[" + key + "]"));
  }

  /** The tables of a list of tables, such as {@code [[tool]]}. */
  List<SheetTable> tables(String key, Keys inner) {
    Optional<SheetItem> item = item(key);
    if (item.isEmpty()) {
      return List.of();
    }
    String each = "[[" + key + "]]";
    if (!(item.get().value() instanceof TomlArray)) {
      item.get().wrongType("a list of tables, each headed " + each);
      return List.of();
    }
    List<SheetTable> tables = new ArrayList<>();
    for (SheetItem one : item.get().list().orElse(List.of())) {
      one.table(inner, each).ifPresent(tables::add);
    }
    return tables;
  }
}
