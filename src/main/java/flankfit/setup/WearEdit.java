package flankfit.setup;

import flankfit.motion.Point;
import flankfit.unit.LengthUnit;
import flankfit.unit.Lengths;
import flankfit.unit.Require;
import flankfit.unit.Tolerance;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * Puts another wear entry into the text of a setup sheet and leaves every other byte as it is. The
 * edited text is read again: unless it says the same as before but for that entry, it is refused.
 */
public final class WearEdit {
  private static final int DECIMALS = 6;
  private static final Pattern VALUE =
      Pattern.compile(
          "[+-]?[0-9][0-9_]*(?:\\.[0-9_]+)?(?:[eE][+-]?[0-9]+)?|\"[^\"\\n]*\"|'[^'\\n]*'");
  private static final Pattern TO_VALUE = Pattern.compile("[^=\\n]*=[ \\t]*");
  private static final Pattern HEADER =
      Pattern.compile("(?m)^[ \\t]*\\[[ \\t]*offsets[ \\t]*\\][^\\n]*(?:\\n|\\z)");

  private static final Point ANY_STOCK = new Point(1000, 1000, 1000);

  private final String text;
  private final SetupSheet sheet;
  private final int register;
  private final double wear;
  private final TomlTable top;

  private WearEdit(String text, SetupSheet sheet, int register, double wear) {
    this.text = text;
    this.sheet = sheet;
    this.register = register;
    this.wear = wear;
    top = Toml.parse(text);
  }

  /** How an edit came out. */
  public sealed interface Outcome {}

  /**
   * It is certain.
   *
   * @param text the whole sheet, with the entry changed
   */
  public record Edited(String text) implements Outcome {
    public Edited {
      Objects.requireNonNull(text, "text");
    }
  }

  /**
   * It is not made.
   *
   * @param why the reason, one clause
   * @param fix what to do in its place
   */
  public record Refused(String why, String fix) implements Outcome {
    public Refused {
      Objects.requireNonNull(why, "why");
      Objects.requireNonNull(fix, "fix");
    }
  }

  /**
   * Changes the wear entry of a D register.
   *
   * @param file name of the sheet
   * @param text the whole sheet; a byte order mark at its beginning stays
   * @param register number of the register, 1 to 999
   * @param wear the entry (mm, as entered)
   */
  public static Outcome of(String file, String text, int register, double wear) {
    Require.within("register", register, 1, 999);
    Require.finite("wear", wear);
    String mark = text.startsWith("\uFEFF") ? "\uFEFF" : "";
    String plain = text.substring(mark.length());
    Optional<SetupSheet> before = read(file, plain);
    if (before.isEmpty()) {
      return new Refused("the sheet on the disk has errors", "mend them first");
    }
    WearEdit edit = new WearEdit(plain, before.get(), register, wear);
    Optional<String> after = edit.edited();
    if (after.isPresent() && edit.isProved(file, after.get())) {
      return new Edited(mark + after.get());
    }
    return new Refused(
        "D" + register + " is written in a way that cannot be changed with certainty",
        "write it by hand: D" + register + " = { geometry = …, wear = " + edit.number(0) + " }");
  }

  /** A mesh that the sheet names as stock is not looked at: registers do not depend on it. */
  private static Optional<SetupSheet> read(String file, String text) {
    return SetupReader.readWithFiles(file, text, name -> ANY_STOCK).sheet();
  }

  private Optional<String> edited() {
    Optional<TomlTable> offsets = table(top, "offsets");
    if (offsets.isEmpty()) {
      boolean ends = text.isEmpty() || text.endsWith("\n");
      return Optional.of(
          text + (ends ? "" : newline()) + newline() + "[offsets]" + newline() + entry());
    }
    Optional<String> key = key(offsets.get());
    if (key.isEmpty()) {
      Matcher header = HEADER.matcher(text);
      return header.find()
          ? Optional.of(
              text.substring(0, header.end())
                  + (header.group().endsWith("\n") ? "" : newline())
                  + entry()
                  + text.substring(header.end()))
          : Optional.empty();
    }
    return table(offsets.get(), key.get())
        .flatMap(table -> table.contains("wear") ? replaced(table) : added(table));
  }

  private static Optional<TomlTable> table(TomlTable in, String key) {
    Object value = in.get(List.of(key));
    return value instanceof TomlTable table ? Optional.of(table) : Optional.empty();
  }

  private Optional<String> key(TomlTable offsets) {
    Pattern name = Pattern.compile("[Dd]0*" + register);
    return offsets.keySet().stream().filter(k -> name.matcher(k).matches()).findFirst();
  }

  private String newline() {
    return text.contains("\r\n") ? "\r\n" : "\n";
  }

  private String entry() {
    return "D" + register + " = { wear = " + number(0) + " }" + newline();
  }

  /** A place in the text: from its first character to the one after its last. */
  private record Span(int from, int to) {}

  /** Where the value of a key stands. */
  private Optional<Span> value(TomlTable table, String key) {
    TomlPosition position = table.inputPositionOf(List.of(key));
    if (position == null) {
      return Optional.empty();
    }
    int at = at(position);
    Matcher way = TO_VALUE.matcher(text).region(at, text.length());
    if (way.lookingAt()) {
      at = way.end();
    }
    Matcher value = VALUE.matcher(text).region(at, text.length());
    return value.lookingAt() ? Optional.of(new Span(at, value.end())) : Optional.empty();
  }

  private int at(TomlPosition position) {
    int line = 0;
    for (int i = 1; i < position.line(); i++) {
      line = text.indexOf('\n', line) + 1;
    }
    return text.offsetByCodePoints(line, position.column() - 1);
  }

  private Optional<String> replaced(TomlTable table) {
    return value(table, "wear")
        .map(
            span ->
                text.substring(0, span.from())
                    + token(text.substring(span.from(), span.to()))
                    + text.substring(span.to()));
  }

  /** Behind the geometry entry, in the same braces or on a line of its own. */
  private Optional<String> added(TomlTable table) {
    Optional<Span> geometry = value(table, "geometry");
    if (geometry.isEmpty()) {
      return Optional.empty();
    }
    int line = text.lastIndexOf('\n', geometry.get().from()) + 1;
    String before = text.substring(line, geometry.get().from());
    int end = geometry.get().to();
    if (before.contains("{")) {
      return Optional.of(text.substring(0, end) + ", wear = " + number(0) + text.substring(end));
    }
    int next = text.indexOf('\n', end);
    String own = before.replace("geometry", "wear") + number(0);
    return Optional.of(
        next < 0
            ? text + newline() + own + newline()
            : text.substring(0, next + 1) + own + newline() + text.substring(next + 1));
  }

  /** The new value in the spelling of the old one. */
  private String token(String old) {
    char quote = old.charAt(0);
    if (quote != '"' && quote != '\'') {
      int point = old.indexOf('.');
      boolean plain = point >= 0 && old.matches("[+-]?[0-9]+\\.[0-9]+");
      return number(plain ? old.length() - point - 1 : 0);
    }
    String inner = old.substring(1, old.length() - 1);
    Optional<LengthUnit> unit = Lengths.quantity(inner).flatMap(q -> Lengths.unit(q.unit()));
    return unit.map(u -> quote + number(u, 0) + " " + u.symbol() + quote).orElse(old);
  }

  private String number(int leastDecimals) {
    return number(sheet.unit(), leastDecimals);
  }

  /** A number that TOML reads as one with a point. */
  private String number(LengthUnit unit, int leastDecimals) {
    BigDecimal value =
        BigDecimal.valueOf(unit.fromMillimetres(wear))
            .setScale(DECIMALS, RoundingMode.HALF_EVEN)
            .stripTrailingZeros();
    int scale = Math.max(Math.max(1, Math.min(DECIMALS, leastDecimals)), value.scale());
    return value.setScale(scale, RoundingMode.UNNECESSARY).toPlainString();
  }

  private boolean isProved(String file, String after) {
    Optional<Offsets.Register> read = read(file, after).flatMap(s -> s.offsets().radius(register));
    TomlParseResult parsed = Toml.parse(after);
    double geometry = sheet.offsets().radius(register).map(Offsets.Register::geometry).orElse(0.0);
    return read.isPresent()
        && Tolerance.MODEL.near(read.get().wear(), wear)
        && read.get().geometry() == geometry
        && !parsed.hasErrors()
        && rest(top).equals(rest(parsed));
  }

  /** All that a sheet says but for the entry. */
  private Map<String, Object> rest(TomlTable table) {
    Map<String, Object> all = plain(table);
    if (all.get("offsets") instanceof Map<?, ?> offsets) {
      Map<String, Object> others = new TreeMap<>();
      Pattern own = Pattern.compile("D0*" + register);
      offsets.forEach(
          (key, value) -> {
            if (!own.matcher(key.toString().toUpperCase(Locale.ROOT)).matches()) {
              others.put(key.toString(), value);
            }
          });
      all.put("offsets", others);
    } else {
      all.put("offsets", Map.of());
    }
    return all;
  }

  private static Map<String, Object> plain(TomlTable table) {
    Map<String, Object> map = new TreeMap<>();
    for (String key : table.keySet()) {
      map.put(key, plain(table.get(List.of(key))));
    }
    return map;
  }

  private static Object plain(Object value) {
    if (value instanceof TomlTable table) {
      return plain(table);
    }
    if (value instanceof TomlArray array) {
      List<Object> list = new ArrayList<>();
      for (int i = 0; i < array.size(); i++) {
        list.add(plain(array.get(i)));
      }
      return list;
    }
    return value;
  }
}
