package flankfit.picture;

import flankfit.unit.LengthUnit;
import java.util.Locale;

/**
 * Numbers as people read them in drawings: a true minus, no negative zero, always with the unit.
 */
public final class Figures {
  private Figures() {}

  /**
   * A number with fixed decimals.
   *
   * @param value any finite number
   * @param decimals digits after the point, 0 to 9
   */
  public static String fixed(double value, int decimals) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(value));
    boolean zero = text.chars().allMatch(c -> c == '0' || c == '.');
    return value < 0 && !zero ? "−" + text : text;
  }

  /** A number with at most so many decimals, without trailing zeros. */
  public static String plain(double value, int mostDecimals) {
    String text = fixed(value, mostDecimals);
    if (text.indexOf('.') < 0) {
      return text;
    }
    int end = text.length();
    while (text.charAt(end - 1) == '0') {
      end--;
    }
    return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
  }

  /** A length (mm) in a unit, to a micrometre or a ten-thousandth of an inch, without its unit. */
  public static String length(double millimetres, LengthUnit unit) {
    return fixed(unit.fromMillimetres(millimetres), unit == LengthUnit.INCH ? 4 : 3);
  }

  /** The same with its unit. */
  public static String lengthWithUnit(double millimetres, LengthUnit unit) {
    return length(millimetres, unit) + " " + unit.symbol();
  }
}
