package flankfit.gauge;

import flankfit.unit.Angles;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers in sentences. */
final class Text {
  private Text() {}

  /** A length to a tenth of a micrometre, such as {@code 0.0391 mm}. */
  static String mm(double length) {
    return number(length, 4) + " mm";
  }

  /** A number without trailing zeros; never in powers of ten. */
  static String number(double value, int decimals) {
    if (!Double.isFinite(value)) {
      return "unknown";
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** An angle in degrees, such as {@code 29.977°}. */
  static String degrees(double radians) {
    return number(Angles.toDegrees(radians), 3) + "°";
  }
}
