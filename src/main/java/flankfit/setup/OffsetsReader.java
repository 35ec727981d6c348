package flankfit.setup;

import flankfit.finding.Code;
import flankfit.finding.Nearest;
import flankfit.motion.Point;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads {@code [offsets]} and {@code [work-offsets]}, whose keys are names of registers. */
final class OffsetsReader {
  private static final Pattern REGISTER = Pattern.compile("([HD])0*([1-9][0-9]{0,2})");
  private static final Pattern NUMBERED = Pattern.compile("G54\\.1 ?P0*([1-9][0-9]?)");
  private static final List<String> ORIGINS =
      List.of("G54", "G55", "G56", "G57", "G58", "G59", "G59.1", "G59.2", "G59.3", "common");
  private static final String REGISTERS = "H or D and a number from 1 to 999, such as D4";
  private static final String ORIGIN_NAMES =
      "G54 to G59, \"G54.1 P1\" to \"G54.1 P99\", \"G59.1\" to \"G59.3\", or common";

  private OffsetsReader() {}

  /** Keys for a table whose names are checked here: just those that stand in it. */
  static Keys keysOf(Iterable<String> present, String expected) {
    Keys keys = Keys.none();
    present.forEach(key -> keys.and(key, expected));
    return keys;
  }

  static Offsets offsets(SheetTable table, Iterable<String> present) {
    Map<Integer, Offsets.Register> lengths = new TreeMap<>();
    Map<Integer, Offsets.Register> radii = new TreeMap<>();
    for (String key : present) {
      SheetItem item = table.item(key).orElseThrow();
      Matcher name = REGISTER.matcher(key.toUpperCase(Locale.ROOT));
      if (!name.matches()) {
        reportName(item, key, "register", REGISTERS, Optional.empty());
        continue;
      }
      int number = Integer.parseInt(name.group(2));
      var registers = name.group(1).equals("H") ? lengths : radii;
      register(item, key).ifPresent(r -> put(registers, number, r, item));
    }
    return new Offsets(lengths, radii);
  }

  private static Optional<Offsets.Register> register(SheetItem item, String key) {
    Keys keys = Keys.none().and("geometry", "a length").and("wear", "a length");
    Optional<SheetTable> table = item.table(keys, key);
    if (table.isEmpty()) {
      return Optional.empty();
    }
    if (!table.get().has("geometry") && !table.get().has("wear")) {
      table.get().reportMissing("geometry", "a register holds a geometry, a wear, or both");
      return Optional.empty();
    }
    Optional<Double> geometry = lengthOrZero(table.get(), "geometry");
    Optional<Double> wear = lengthOrZero(table.get(), "wear");
    return geometry.flatMap(g -> wear.map(w -> new Offsets.Register(g, w)));
  }

  private static Optional<Double> lengthOrZero(SheetTable table, String key) {
    Optional<SheetItem> item = table.item(key);
    return item.isEmpty() ? Optional.of(0.0) : item.flatMap(SheetItem::length);
  }

  static Map<String, Point> origins(SheetTable table, Iterable<String> present) {
    Map<String, Point> origins = new TreeMap<>();
    for (String key : present) {
      SheetItem item = table.item(key).orElseThrow();
      Optional<String> name = originName(key);
      Optional<Point> point = item.point();
      if (name.isEmpty()) {
        reportName(item, key, "work offset", ORIGIN_NAMES, Nearest.of(key, ORIGINS));
      } else {
        point.ifPresent(p -> put(origins, name.get(), p, item));
      }
    }
    return origins;
  }

  private static Optional<String> originName(String key) {
    String plain = key.strip().replaceAll("\\s+", " ");
    Optional<String> simple = ORIGINS.stream().filter(o -> o.equalsIgnoreCase(plain)).findFirst();
    Matcher numbered = NUMBERED.matcher(plain.toUpperCase(Locale.ROOT));
    return simple.isEmpty() && numbered.matches()
        ? Optional.of("G54.1 P" + numbered.group(1))
        : simple;
  }

  private static <K, V> void put(Map<K, V> map, K key, V value, SheetItem item) {
    if (map.put(key, value) != null) {
      item.log()
          .report(
              Code.SH05,
              item.place(),
              item.label() + " is there already in another spelling",
              "expected each once",
              "remove one of them");
    }
  }

  private static void reportName(
      SheetItem item, String key, String kind, String expected, Optional<String> near) {
    item.log()
        .report(
            Code.SH02,
            item.place(),
            "unknown " + kind + " \"" + SheetItem.cut(key.replaceAll("\\p{Cntrl}", " ")) + "\"",
            "expected " + expected,
            near.map(n -> "write \"" + n + "\"").orElse(""));
  }
}
