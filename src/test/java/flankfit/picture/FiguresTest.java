package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.unit.LengthUnit;
import org.junit.jupiter.api.Test;

class FiguresTest {
  @Test
  void negative_numbers_have_a_true_minus_and_zero_has_no_sign() {
    assertThat(Figures.fixed(-1.25, 2)).isEqualTo("−1.25");
    assertThat(Figures.fixed(-0.0004, 3)).isEqualTo("0.000");
  }

  @Test
  void plain_numbers_lose_their_trailing_zeros_only() {
    assertThat(Figures.plain(240, 2)).isEqualTo("240");
    assertThat(Figures.plain(0.5, 6)).isEqualTo("0.5");
    assertThat(Figures.plain(100, 0)).isEqualTo("100");
  }

  @Test
  void lengths_carry_their_unit() {
    assertThat(Figures.lengthWithUnit(25.4, LengthUnit.INCH)).isEqualTo("1.0000 in");
    assertThat(Figures.lengthWithUnit(25.4, LengthUnit.MILLIMETRE)).isEqualTo("25.400 mm");
  }
}
