package flankfit.cli;

import flankfit.unit.LengthUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as people read them: fixed decimals, no minus zero. */
final class Figures {
  private Figures() {}

  /** A number with fixed decimals. */
  static String fixed(double value, int decimals) {
    if (!Double.isFinite(value)) {
      return "-";
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
  }

  /** A number with a sign, also when it is positive. */
  static String signed(double value, int decimals) {
    String text = fixed(value, decimals);
    return text.startsWith("-") ? text : "+" + text;
  }

  /** A number without trailing zeros. */
  static String plain(double value, int mostDecimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(mostDecimals, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** A count with its noun, such as {@code 1 move} or {@code 3 moves}. */
  static String count(long number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }

  /** Text padded on the left to a width. */
  static String right(String text, int width) {
    return text.length() >= width ? text : " ".repeat(width - text.length()) + text;
  }

  /** Text padded on the right to a width. */
  static String left(String text, int width) {
    return text.length() >= width ? text : text + " ".repeat(width - text.length());
  }

  /** Decimals that show a unit to its least increment: 3 for millimetres, 4 for inches. */
  static int decimals(LengthUnit unit) {
    return unit == LengthUnit.INCH ? 4 : 3;
  }

  /** A length (mm) in a unit, to its least increment, without the symbol. */
  static String length(double millimetres, LengthUnit unit) {
    return fixed(unit.fromMillimetres(millimetres), decimals(unit));
  }

  /** A length (mm) in a unit, to its least increment, with the symbol. */
  static String lengthWithUnit(double millimetres, LengthUnit unit) {
    return length(millimetres, unit) + " " + unit.symbol();
  }
}
