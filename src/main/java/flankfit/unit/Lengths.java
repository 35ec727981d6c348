package flankfit.unit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths from text with a unit, and to text again; the same on every machine and locale. */
public final class Lengths {
  private static final Pattern QUANTITY =
      Pattern.compile("([+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+))\\s*(\\p{L}[\\p{L}/]*)");

  private Lengths() {}

  /**
   * A number and the unit word after it, as text says them.
   *
   * @param value number (in the unit)
   * @param unit word as written; not looked up yet
   */
  public record Quantity(double value, String unit) {}

  /** The number and the unit word of text such as {@code 0.374 in}; empty for other text. */
  public static Optional<Quantity> quantity(String text) {
    Matcher matcher = QUANTITY.matcher(text.strip());
    if (!matcher.matches()) {
      return Optional.empty();
    }
    return Optional.of(new Quantity(Double.parseDouble(matcher.group(1)), matcher.group(2)));
  }

  /** The unit of a word: {@code mm}, {@code in} or {@code inch}, in either case. */
  public static Optional<LengthUnit> unit(String word) {
    return switch (word.strip().toLowerCase(Locale.ROOT)) {
      case "mm" -> Optional.of(LengthUnit.MILLIMETRE);
      case "in", "inch" -> Optional.of(LengthUnit.INCH);
      default -> Optional.empty();
    };
  }

  /**
   * A length with its unit (mm), such as {@code 9.5 mm}, {@code 0.374 in}, {@code .374inch}.
   *
   * @return the length (mm); empty when the text is no number with a known unit
   */
  public static OptionalDouble parse(String text) {
    Optional<Quantity> quantity = quantity(text);
    Optional<LengthUnit> unit = quantity.flatMap(q -> unit(q.unit()));
    return unit.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(unit.get().toMillimetres(quantity.get().value()));
  }

  /**
   * A length in a unit with its symbol, rounded half away from zero, such as {@code 0.374 in}.
   *
   * @param millimetres length (mm), finite
   * @param unit unit to show
   * @param decimals digits after the point, not below 0
   */
  public static String print(double millimetres, LengthUnit unit, int decimals) {
    double value = unit.fromMillimetres(Require.finite("millimetres", millimetres));
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString()
        + " "
        + unit.symbol();
  }

  /** As {@link #print}, without zeros at the end of the fraction, such as {@code 0.75 in}. */
  public static String brief(double millimetres, LengthUnit unit, int decimals) {
    double value = unit.fromMillimetres(Require.finite("millimetres", millimetres));
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return trimmed(rounded) + " " + unit.symbol();
  }

  /** A finite number with as few digits as tell it from its neighbours; no exponent. */
  public static String plain(double number) {
    return trimmed(BigDecimal.valueOf(Require.finite("number", number)));
  }

  /** A finite number rounded half away from zero, without zeros at the end; no exponent. */
  public static String plain(double number, int mostDecimals) {
    BigDecimal exact = BigDecimal.valueOf(Require.finite("number", number));
    return trimmed(exact.setScale(mostDecimals, RoundingMode.HALF_UP));
  }

  private static String trimmed(BigDecimal digits) {
    return digits.signum() == 0 ? "0" : digits.stripTrailingZeros().toPlainString();
  }
}
