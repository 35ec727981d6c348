package flankfit.standard;

import java.math.BigDecimal;

/** Decimal rounding as the tables were made: to the nearest step, a half upwards. */
final class Rounding {
  /** Lifts a half that binary arithmetic left a hair too small (steps). */
  private static final double GUARD = 1e-9;

  private static final double[] TEN_TO = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8};

  private Rounding() {}

  /** The nearest whole number of steps (1). */
  static long steps(double value) {
    return (long) Math.floor(value + 0.5 + GUARD);
  }

  /** The value to so many decimals, 0 to 8. */
  static double decimals(double value, int decimals) {
    double scale = TEN_TO[decimals];
    return steps(value * scale) / scale;
  }

  /** A whole number of steps rounded to a multiple of ten steps. */
  static long tens(long steps) {
    return Math.floorDiv(steps + 5, 10L) * 10;
  }

  /** A decimal number without needless zeros, such as {@code 1.5}. */
  static String text(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
