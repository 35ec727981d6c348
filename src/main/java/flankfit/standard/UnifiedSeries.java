package flankfit.standard;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Series of Unified threads, and which one a diameter with its threads per inch belongs to.
 *
 * @see "ASME B1.1, table of standard series, as in Machinery's Handbook, table 4; sizes of the
 *     constant-pitch series from memory"
 */
enum UnifiedSeries {
  UNC(
      "#1-64 #2-56 #3-48 #4-40 #5-40 #6-32 #8-32 #10-24 #12-24 1/4-20 5/16-18 3/8-16 7/16-14 1/2-13"
          + " 9/16-12 5/8-11 3/4-10 7/8-9 1-8 1.1/8-7 1.1/4-7 1.3/8-6 1.1/2-6 1.3/4-5 2-4.5"
          + " 2.1/4-4.5 2.1/2-4 2.3/4-4 3-4 3.1/4-4 3.1/2-4 3.3/4-4 4-4"),
  UNF(
      "#0-80 #1-72 #2-64 #3-56 #4-48 #5-44 #6-40 #8-36 #10-32 #12-28 1/4-28 5/16-24 3/8-24 7/16-20"
          + " 1/2-20 9/16-18 5/8-18 3/4-16 7/8-14 1-12 1.1/8-12 1.1/4-12 1.3/8-12 1.1/2-12"),
  UNEF(
      "#12-32 1/4-32 5/16-32 3/8-32 7/16-28 1/2-28 9/16-24 5/8-24 11/16-24 3/4-20 13/16-20 7/8-20"
          + " 15/16-20 1-20 1.1/16-18 1.1/8-18 1.3/16-18 1.1/4-18 1.5/16-18 1.3/8-18 1.7/16-18"
          + " 1.1/2-18 1.9/16-18 1.5/8-18 1.11/16-18"),
  UN(""),
  UNS("");

  /** Threads per inch, smallest and greatest diameter of the constant-pitch series (1, in, in). */
  private static final double[][] CONSTANT = {
    {4, 2.625, 6},
    {6, 1.4375, 6},
    {8, 1.0625, 6},
    {12, 0.625, 6},
    {16, 0.4375, 6},
    {20, 0.3125, 3},
    {28, 0.3125, 1.5},
    {32, 0.4375, 1}
  };

  private final String table;

  UnifiedSeries(String table) {
    this.table = table;
  }

  /** The tables as read, once: threads per inch by size, smallest size first. */
  private static final class Tables {
    static final Map<UnifiedSeries, Map<InchSize, Double>> ALL = readAll();

    private static Map<UnifiedSeries, Map<InchSize, Double>> readAll() {
      Map<UnifiedSeries, Map<InchSize, Double>> all = new EnumMap<>(UnifiedSeries.class);
      for (UnifiedSeries series : values()) {
        all.put(series, series.table.isEmpty() ? Map.of() : read(series.table));
      }
      return all;
    }
  }

  private Map<InchSize, Double> threads() {
    return Tables.ALL.get(this);
  }

  /** The series a diameter and its threads per inch belong to; UNS where they are special. */
  static UnifiedSeries of(InchSize size, double tpi) {
    for (UnifiedSeries series : new UnifiedSeries[] {UNC, UNF, UNEF}) {
      if (series.threads().getOrDefault(size, 0.0) == tpi) {
        return series;
      }
    }
    return isConstant(size, tpi) ? UN : UNS;
  }

  /** The series of that name; empty where there is none. */
  static Optional<UnifiedSeries> named(String name) {
    for (UnifiedSeries series : values()) {
      if (series.name().equals(name)) {
        return Optional.of(series);
      }
    }
    return Optional.empty();
  }

  /** Threads per inch that this series gives a diameter; empty where it has no such diameter. */
  OptionalDouble threadsPerInch(InchSize size) {
    Double tpi = threads().get(size);
    return tpi == null ? OptionalDouble.empty() : OptionalDouble.of(tpi);
  }

  /** The diameter of this series nearest to another, the smaller of two; empty for UN and UNS. */
  Optional<InchSize> nearest(InchSize size) {
    return threads().keySet().stream()
        .min(
            Comparator.comparingLong((InchSize s) -> Math.abs(s.millionths() - size.millionths())));
  }

  private static boolean isConstant(InchSize size, double tpi) {
    long step = size.inches() <= 2 ? 62_500 : 125_000;
    if (size.millionths() % step != 0) {
      return false;
    }
    for (double[] row : CONSTANT) {
      if (row[0] == tpi) {
        return size.inches() >= row[1] && size.inches() <= row[2];
      }
    }
    return false;
  }

  private static Map<InchSize, Double> read(String table) {
    Map<InchSize, Double> threads = new TreeMap<>();
    for (String entry : table.split(" ", -1)) {
      int hyphen = entry.indexOf('-');
      threads.put(size(entry.substring(0, hyphen)), Double.valueOf(entry.substring(hyphen + 1)));
    }
    return threads;
  }

  /** A size of the table: {@code #10}, {@code 3/4}, {@code 2}, or {@code 1.1/4}. */
  private static InchSize size(String text) {
    if (text.startsWith("#")) {
      return InchSize.number(Integer.parseInt(text.substring(1))).orElseThrow();
    }
    int point = text.indexOf('.');
    int slash = text.indexOf('/');
    if (slash < 0) {
      return InchSize.decimal(text);
    }
    int whole = point < 0 ? 0 : Integer.parseInt(text.substring(0, point));
    int numerator = Integer.parseInt(text.substring(point + 1, slash));
    return InchSize.fraction(whole, numerator, Integer.parseInt(text.substring(slash + 1)))
        .orElseThrow();
  }
}
