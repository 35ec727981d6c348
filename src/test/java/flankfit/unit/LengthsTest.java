package flankfit.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lengths from text and to text. */
class LengthsTest {
  @ParameterizedTest
  @CsvSource({
    "9.5 mm, 9.5",
    "9.5mm, 9.5",
    "0.374 in, 9.4996",
    ".5 inch, 12.7",
    "1. IN, 25.4",
    "-2 mm, -2",
    "+3 mm, 3",
    "0 in, 0"
  })
  void a_length_with_its_unit_is_millimetres(String text, double millimetres) {
    assertThat(Lengths.parse(text)).hasValue(millimetres);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "mm", "9.5", "9,5 mm", "9.5 cm", "1e3 mm", "--1 mm", ". mm", "1/2 in"})
  void other_text_is_no_length(String text) {
    assertThat(Lengths.parse(text)).isEmpty();
  }

  @Test
  void an_unknown_unit_is_told_from_no_number() {
    assertThat(Lengths.quantity("3 cm")).contains(new Lengths.Quantity(3, "cm"));
    assertThat(Lengths.quantity("three mm")).isEmpty();
    assertThat(Lengths.unit("cm")).isEmpty();
    assertThat(Lengths.unit("Inch")).contains(LengthUnit.INCH);
  }

  @Test
  void lengths_are_printed_with_just_so_many_decimals() {
    assertThat(Lengths.print(9.525, LengthUnit.MILLIMETRE, 2)).isEqualTo("9.53 mm");
    assertThat(Lengths.print(-0.0004, LengthUnit.MILLIMETRE, 3)).isEqualTo("0.000 mm");
    assertThat(Lengths.print(25.4, LengthUnit.INCH, 4)).isEqualTo("1.0000 in");
    assertThat(Lengths.print(1e7, LengthUnit.MILLIMETRE, 0)).isEqualTo("10000000 mm");
    assertThat(Lengths.brief(19.049999999999997, LengthUnit.INCH, 6)).isEqualTo("0.75 in");
    assertThat(Lengths.brief(-1e-15, LengthUnit.MILLIMETRE, 6)).isEqualTo("0 mm");
    assertThat(Lengths.plain(1e-4)).isEqualTo("0.0001");
    assertThat(Lengths.plain(-0.0)).isEqualTo("0");
    assertThatIllegalArgumentException().isThrownBy(() -> Lengths.plain(Double.NaN));
  }

  @Test
  void printing_does_not_depend_on_the_locale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertThat(Lengths.print(1234.5, LengthUnit.MILLIMETRE, 1)).isEqualTo("1234.5 mm");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void what_is_printed_is_read_again_within_the_last_decimal() {
    Random random = new Random(11);
    for (int i = 0; i < 1000; i++) {
      double length = 2000 * random.nextDouble() - 1000;
      for (LengthUnit unit : LengthUnit.values()) {
        double read = Lengths.parse(Lengths.print(length, unit, 5)).orElseThrow();
        assertThat(Math.abs(read - length)).isLessThan(unit.toMillimetres(0.5001e-5));
      }
    }
  }
}
