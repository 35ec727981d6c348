package flankfit.draft;

import flankfit.unit.LengthUnit;
import flankfit.unit.Lengths;
import flankfit.unit.Require;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The least increment that a control takes. Every coordinate of a draft is a whole number of them,
 * so distances add up exactly whatever the mode.
 *
 * @param unit unit of the words
 * @param increment least increment (mm)
 */
record Grid(LengthUnit unit, double increment) {
  /** Digits of an increment in its unit that are kept: 0.0001 in is not known better. */
  private static final int DIGITS = 9;

  Grid {
    Require.positive("increment", increment);
  }

  /** The nearest whole number of increments of a length (mm). */
  long steps(double millimetres) {
    return Math.round(millimetres / increment);
  }

  /** The same, rounded up. */
  long stepsUp(double millimetres) {
    return (long) Math.ceil(millimetres / increment - 1e-6);
  }

  /** The nearest even number of increments, so that the half of it is a whole number. */
  long evenSteps(double millimetres) {
    return 2 * Math.round(millimetres / increment / 2);
  }

  /** A number of increments as a length (mm). */
  double millimetres(long steps) {
    return steps * increment;
  }

  /** A number of increments as a word's number, always with a point, such as {@code 3.} */
  String word(long steps) {
    BigDecimal one =
        BigDecimal.valueOf(unit.fromMillimetres(increment))
            .setScale(DIGITS, RoundingMode.HALF_EVEN);
    BigDecimal value = one.multiply(BigDecimal.valueOf(steps));
    String text = value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    return text.contains(".") ? text : text + ".";
  }

  /** A length for people, one digit finer than the words, such as {@code 0.1875 mm}. */
  String text(double millimetres) {
    return number(millimetres) + " " + unit.symbol();
  }

  /** The same without the unit. */
  String number(double millimetres) {
    return Lengths.plain(unit.fromMillimetres(millimetres), unit == LengthUnit.INCH ? 5 : 4);
  }

  /** A mill no larger than a diameter (mm), in the steps in which mills are named (mm). */
  double mill(double atMost) {
    double step = unit == LengthUnit.INCH ? unit.toMillimetres(0.005) : 0.1;
    return Math.floor(atMost / step + 1e-9) * step;
  }
}
