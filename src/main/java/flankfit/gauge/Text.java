package flankfit.gauge;

import flankfit.unit.Angles;
import flankfit.unit.LengthUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Numbers in sentences, in the unit of the program; an inch has its millimetres beside it.
 *
 * @param unit unit of the program
 */
public record Text(LengthUnit unit) {
  /** A length to a tenth of a micrometre: {@code 0.0391 mm}, or {@code 0.00154 in (0.0391 mm)}. */
  public String length(double millimetres) {
    String metric = number(millimetres, 4) + " mm";
    return unit == LengthUnit.INCH
        ? number(unit.fromMillimetres(millimetres), 5) + " in (" + metric + ")"
        : metric;
  }

  /** A coordinate (mm) as the program would write it, without its unit. */
  public String coordinate(double millimetres) {
    return number(unit.fromMillimetres(millimetres), unit == LengthUnit.INCH ? 5 : 4);
  }

  /** A feed (mm/min) as the program would write it, with its unit. */
  String feed(double millimetresPerMinute) {
    int decimals = unit == LengthUnit.INCH ? 2 : 1;
    return number(unit.fromMillimetres(millimetresPerMinute), decimals)
        + " "
        + unit.symbol()
        + "/min";
  }

  /** A number without trailing zeros; never in powers of ten. */
  static String number(double value, int decimals) {
    if (!Double.isFinite(value)) {
      return "unknown";
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** A chance in percent, such as {@code 98.4 %}; no chance is told as certain. */
  public static String percent(double chance) {
    double percent = 100 * chance;
    if (percent >= 99.95) {
      return "over 99.9 %";
    }
    return percent < 0.05 ? "under 0.1 %" : number(percent, 1) + " %";
  }

  /** An angle in degrees, such as {@code 29.977°}. */
  public static String degrees(double radians) {
    return number(Angles.toDegrees(radians), 3) + "°";
  }
}
