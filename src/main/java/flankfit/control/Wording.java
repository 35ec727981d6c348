package flankfit.control;

import flankfit.motion.Plane;
import flankfit.unit.Angles;
import flankfit.unit.LengthUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as findings show them. */
final class Wording {
  private static final int SIGNIFICANT_DECIMALS = 4;

  private Wording() {}

  /** A length (mm) in the unit of the program, with millimetres beside inches. */
  static String length(double mm, LengthUnit unit) {
    String metric = number(mm) + " mm";
    return unit == LengthUnit.INCH
        ? number(unit.fromMillimetres(mm)) + " in (" + metric + ")"
        : metric;
  }

  /** A coordinate (mm) in the unit of the program, without the unit. */
  static String coordinate(double mm, LengthUnit unit) {
    return number(unit.fromMillimetres(mm));
  }

  /** An angle (rad) in degrees. */
  static String degrees(double radians) {
    return number(Angles.toDegrees(radians)) + "°";
  }

  /** Four decimals, more for a small number, no zeros at the end. */
  static String number(double value) {
    if (!Double.isFinite(value)) {
      return String.valueOf(value);
    }
    int more = value != 0 && Math.abs(value) < 1e-3 ? 3 : 0;
    BigDecimal rounded =
        BigDecimal.valueOf(value)
            .setScale(SIGNIFICANT_DECIMALS + more, RoundingMode.HALF_UP)
            .stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  static String plane(Plane plane) {
    return switch (plane) {
      case XY -> "XY";
      case ZX -> "ZX";
      case YZ -> "YZ";
    };
  }

  static String planeFunction(Plane plane) {
    return switch (plane) {
      case XY -> "G17";
      case ZX -> "G18";
      case YZ -> "G19";
    };
  }
}
