package flankfit.setup;

import flankfit.finding.Code;
import flankfit.finding.Nearest;
import flankfit.finding.Place;
import flankfit.motion.Point;
import flankfit.unit.Angles;
import flankfit.unit.LengthUnit;
import flankfit.unit.Lengths;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/**
 * One value of the sheet. Each reading method gives the value or reports why it can't.
 *
 * @param log where to report
 * @param value value as the parser gives it
 * @param place where it stands
 * @param label its name for people, such as {@code "diameter" in [[tool]]}
 * @param expected what is expected there
 */
record SheetItem(SheetLog log, Object value, Place place, String label, String expected) {
  /** Greatest length that a sheet may state (mm): 100 m, beyond any machine. */
  static final double GREATEST = 100_000;

  private static final List<String> UNITS = List.of("mm", "in", "inch");
  private static final int LONGEST_SHOWN = 60;

  Optional<String> text() {
    if (value instanceof String text) {
      return Optional.of(text);
    }
    return wrongType("text");
  }

  /** A name without folders: files are looked up beside the sheet only. */
  Optional<String> fileName() {
    return text()
        .flatMap(
            name ->
                name.isBlank()
                        || name.equals("..")
                        || name.equals(".")
                        || name.contains("/")
                        || name.contains("\\")
                        || name.indexOf('\0') >= 0
                    ? impossible("it must be the name of a file beside the sheet")
                    : Optional.of(name));
  }

  Optional<Boolean> flag() {
    if (value instanceof Boolean flag) {
      return Optional.of(flag);
    }
    return wrongType("true or false");
  }

  Optional<Double> number() {
    return value instanceof Long || value instanceof Double
        ? finite(((Number) value).doubleValue())
        : wrongType("a number");
  }

  Optional<Integer> whole(int least, int greatest) {
    if (!(value instanceof Long number)) {
      return wrongType("a whole number");
    }
    return number >= least && number <= greatest
        ? Optional.of(number.intValue())
        : impossible("it must lie between " + least + " and " + greatest);
  }

  /** A length of either sign (mm). */
  Optional<Double> length() {
    Optional<Double> length = value instanceof String text ? lengthOf(text) : plainLength();
    return length.flatMap(
        mm ->
            Math.abs(mm) <= GREATEST
                ? length
                : impossible("a length must not exceed " + Lengths.plain(GREATEST) + " mm"));
  }

  Optional<Double> lengthAboveZero() {
    return length().flatMap(mm -> mm > 0 ? Optional.of(mm) : impossible("it must be above 0"));
  }

  Optional<Double> lengthFromZero() {
    return length().flatMap(mm -> mm >= 0 ? Optional.of(mm) : impossible("it must not be below 0"));
  }

  /** A speed above 0 (mm/min): a number in units a minute, or text with a unit and {@code /min}. */
  Optional<Double> speed() {
    Optional<Double> speed =
        value instanceof String text && text.strip().endsWith("/min")
            ? lengthOf(text.strip().substring(0, text.strip().length() - "/min".length()))
            : plainLength();
    return speed.flatMap(s -> s > 0 ? speed : impossible("it must be above 0"));
  }

  /** An angle above 0, up to a greatest one (degrees), as radians (rad). */
  Optional<Double> angle(double greatest) {
    return number()
        .flatMap(
            degrees ->
                degrees > 0 && degrees <= greatest
                    ? Optional.of(Angles.toRadians(degrees))
                    : impossible(
                        "it must be above 0 and not above "
                            + Lengths.plain(greatest)
                            + " degrees"));
  }

  <T> Optional<T> choice(List<Choice<T>> choices) {
    return text()
        .flatMap(
            text ->
                choices.stream()
                    .filter(c -> c.word().equals(text))
                    .map(Choice::value)
                    .findFirst()
                    .or(() -> unknownWord(text, Choice.words(choices))));
  }

  Optional<SheetTable> table(Keys keys, String name) {
    return value instanceof TomlTable table
        ? Optional.of(new SheetTable(log, table, name, place, keys))
        : wrongType("a table");
  }

  /** The items of a list; empty when it is none. */
  Optional<List<SheetItem>> list() {
    if (!(value instanceof TomlArray array)) {
      return wrongType("a list");
    }
    List<SheetItem> items = new ArrayList<>();
    for (int i = 0; i < array.size(); i++) {
      Place at = log.place(array.inputPositionOf(i));
      items.add(new SheetItem(log, array.get(i), at, "item " + (i + 1) + " of " + label, expected));
    }
    return Optional.of(items);
  }

  /** A list of just so many lengths (mm). */
  Optional<List<Double>> lengths(int count) {
    Optional<List<SheetItem>> items = list();
    if (items.isPresent() && items.get().size() != count) {
      return wrongType("a list of " + count + " lengths");
    }
    return items.flatMap(list -> all(list.stream().map(SheetItem::length).toList()));
  }

  Optional<Point> point() {
    return lengths(3).map(c -> new Point(c.get(0), c.get(1), c.get(2)));
  }

  /** All values, when all are there. */
  static <T> Optional<List<T>> all(List<Optional<T>> values) {
    return values.stream().allMatch(Optional::isPresent)
        ? Optional.of(values.stream().map(Optional::orElseThrow).toList())
        : Optional.empty();
  }

  /** Reports a value that can't be, with the rule it breaks. */
  <T> Optional<T> impossible(String rule) {
    return impossible(rule, "");
  }

  <T> Optional<T> impossible(String rule, String fix) {
    String what = label + " is " + shown() + ", but " + rule;
    log.report(Code.SH05, place, what, "expected " + expected, fix);
    return Optional.empty();
  }

  <T> Optional<T> unknownWord(String text, List<String> known) {
    String fix =
        Nearest.of(text, known)
            .map(near -> "write \"" + near + "\"")
            .orElse("write one of: " + String.join(", ", known));
    return impossible("no such word is known there", fix);
  }

  /** Reports a value whose type is not the one expected. */
  <T> Optional<T> wrongType(String wanted) {
    String what = label + ": expected " + wanted + ", found " + found();
    log.report(Code.SH04, place, what, "expected " + expected, "");
    return Optional.empty();
  }

  private Optional<Double> plainLength() {
    return number().map(log::plainLength);
  }

  private Optional<Double> lengthOf(String text) {
    var quantity = Lengths.quantity(text);
    if (quantity.isEmpty()) {
      return wrongType("a length, a number or text such as \"9.5 mm\"");
    }
    Optional<LengthUnit> unit = Lengths.unit(quantity.get().unit());
    if (unit.isEmpty()) {
      return unknownUnit(quantity.get().unit());
    }
    return finite(unit.get().toMillimetres(quantity.get().value()));
  }

  /** Reports a word that is no unit of length. */
  <T> Optional<T> unknownUnit(String word) {
    String fix =
        Nearest.of(word, UNITS)
            .map(near -> "write \"" + near + "\"")
            .orElse("write mm, in or inch");
    log.report(
        Code.SH06,
        place,
        label + ": unknown unit \"" + cut(word) + "\"",
        "expected " + expected + "; units of length are " + String.join(", ", UNITS),
        fix);
    return Optional.empty();
  }

  private Optional<Double> finite(double number) {
    return Double.isFinite(number) ? Optional.of(number) : impossible("it must be finite");
  }

  private String found() {
    if (value instanceof String) {
      return "text " + shown();
    }
    if (value instanceof Long || value instanceof Double) {
      return "the number " + shown();
    }
    if (value instanceof TomlArray array) {
      return "a list of " + array.size();
    }
    return value instanceof TomlTable ? "a table" : shown();
  }

  /** The value as the sheet would write it. */
  String shown() {
    return cut(show(value));
  }

  private static String show(Object value) {
    if (value instanceof String text) {
      return "\"" + text.replaceAll("\\p{Cntrl}", " ") + "\"";
    }
    if (value instanceof Double number) {
      return Double.isFinite(number) ? Lengths.plain(number) : number.toString();
    }
    if (value instanceof TomlArray array) {
      return "[" + String.join(", ", array.toList().stream().map(SheetItem::show).toList()) + "]";
    }
    return value instanceof TomlTable ? "{ … }" : value.toString();
  }

  static String cut(String text) {
    return text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN) + "…";
  }
}
