package flankfit.standard;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A basic major diameter of the Unified system in millionths of an inch, so that gauge numbers and
 * sixty-fourths are whole.
 *
 * @param millionths diameter (0.000001 in)
 */
record InchSize(long millionths) implements Comparable<InchSize> {
  private static final long INCH = 1_000_000;
  private static final int FINEST_FRACTION = 64;

  /** Gauge numbers of ASME B1.1 by their diameter: 0.060 in and 0.013 in a number. */
  private static final Map<Long, Integer> NUMBERS = numbers();

  /** The size of a gauge number; empty where ASME B1.1 has none so called. */
  static Optional<InchSize> number(int number) {
    return NUMBERS.containsValue(number)
        ? Optional.of(new InchSize(60_000 + 13_000L * number))
        : Optional.empty();
  }

  /** The size of whole inches and a fraction; empty where the fraction is none of an inch rule. */
  static Optional<InchSize> fraction(int whole, int numerator, int denominator) {
    boolean onRule =
        denominator >= 2
            && denominator <= FINEST_FRACTION
            && Integer.bitCount(denominator) == 1
            && numerator < denominator
            && numerator > 0;
    return onRule
        ? Optional.of(new InchSize(whole * INCH + numerator * INCH / denominator))
        : Optional.empty();
  }

  /** The size of a decimal text (in), to six decimals. */
  static InchSize decimal(String text) {
    return new InchSize(new BigDecimal(text).movePointRight(6).longValue());
  }

  /** The diameter (in). */
  double inches() {
    return millionths / (double) INCH;
  }

  /** How the size is written in a designation: {@code #10}, {@code 1-1/4}, or {@code 0.495}. */
  String text() {
    if (NUMBERS.containsKey(millionths)) {
      return "#" + NUMBERS.get(millionths);
    }
    long parts = millionths * FINEST_FRACTION;
    return parts % INCH == 0
        ? fractionText((int) (parts / INCH), FINEST_FRACTION)
        : Rounding.text(inches());
  }

  /** A fraction in lowest terms with whole inches before a hyphen, such as {@code 1-1/4}. */
  static String fractionText(int numerator, int denominator) {
    int whole = numerator / denominator;
    int rest = numerator % denominator;
    if (rest == 0) {
      return Integer.toString(whole);
    }
    int divisor = Math.min(Integer.lowestOneBit(rest), denominator);
    String part = rest / divisor + "/" + denominator / divisor;
    return whole == 0 ? part : whole + "-" + part;
  }

  @Override
  public int compareTo(InchSize other) {
    return Long.compare(millionths, other.millionths);
  }

  private static Map<Long, Integer> numbers() {
    Map<Long, Integer> numbers = new TreeMap<>();
    for (int number : new int[] {0, 1, 2, 3, 4, 5, 6, 8, 10, 12}) {
      numbers.put(60_000 + 13_000L * number, number);
    }
    return Map.copyOf(numbers);
  }
}
