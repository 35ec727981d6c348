package flankfit.lesson;

import flankfit.motion.Point;
import flankfit.setup.ControlSwitches;
import flankfit.unit.LengthUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How a number is written beside others: with a point or without, with zeros at its end or not.
 *
 * @param point whether whole numbers carry a point
 * @param zeros decimals up to which zeros are written
 * @param leadingZero whether 0 stands before the point of a fraction
 */
record Numeral(boolean point, int zeros, boolean leadingZero) {
  /** Digits beyond which a binary number is noise (decimals). */
  private static final int NOISE = 9;

  /** Lengths below this are noise of binary numbers (mm). */
  static final double NOTHING = 1e-9;

  /** The manner of a word as written, such as {@code X1.500} or {@code Z-.25}. */
  static Numeral like(String word) {
    String digits = word.replaceAll("[^0-9.]", "");
    int at = digits.indexOf('.');
    boolean padded = at >= 0 && digits.length() > at + 1 && digits.endsWith("0");
    boolean bare = at == 0;
    return new Numeral(at >= 0, padded ? digits.length() - at - 1 : 0, !bare);
  }

  /** Decimals of a word as written; 0 without a point. */
  static int decimals(String word) {
    String digits = word.replaceAll("[^0-9.]", "");
    int at = digits.indexOf('.');
    return at < 0 ? 0 : digits.length() - at - 1;
  }

  /** Decimals of the least increment of a unit. */
  static int decimals(ControlSwitches.Reading reading, LengthUnit unit) {
    double increment = unit.fromMillimetres(reading.leastIncrement(unit));
    int decimals = 0;
    while (decimals < NOISE && increment * Math.pow(10, decimals) < 1 - 1e-6) {
      decimals++;
    }
    return decimals;
  }

  /** A length (mm) in a unit, rounded to so many decimals, half away from zero. */
  static BigDecimal rounded(double millimetres, LengthUnit unit, int decimals) {
    return BigDecimal.valueOf(unit.fromMillimetres(millimetres))
        .setScale(NOISE + 2, RoundingMode.HALF_UP)
        .setScale(decimals, RoundingMode.HALF_UP);
  }

  /** Writes a number. */
  String write(BigDecimal number) {
    BigDecimal plain = number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
    int scale = Math.max(zeros, Math.max(0, plain.scale()));
    String text = plain.setScale(scale, RoundingMode.UNNECESSARY).toPlainString();
    if (!leadingZero && text.contains(".") && plain.signum() != 0) {
      text = text.replaceFirst("^(-?)0\\.", "$1.");
    }
    return point && !text.contains(".") ? text + "." : text;
  }

  /** A coordinate or distance (mm) for reading: no zeros at its end. */
  static String plain(double millimetres, LengthUnit unit) {
    BigDecimal value = rounded(millimetres, unit, unit == LengthUnit.INCH ? 5 : 4);
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  /** A point (mm) for reading, such as {@code X3 Y0 Z-12.5}. */
  static String plain(Point p, LengthUnit unit) {
    return "X" + plain(p.x(), unit) + " Y" + plain(p.y(), unit) + " Z" + plain(p.z(), unit);
  }
}
