package flankfit.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class TabulatedTest {
  @Test
  void kinks_are_met_as_well_as_curves() {
    DoubleUnaryOperator f = x -> 2 * x + 0.3 * x * x + Math.max(0, 5 * (x - 0.123456));
    Tabulated table = Tabulated.of(f, -1, 1, 1e-6);
    for (double x = -1; x <= 1; x += 0.00137) {
      assertThat(table.at(x)).isCloseTo(f.applyAsDouble(x), within(4e-6));
    }
    assertThat(table.pieces()).isLessThan(2500);
  }

  @Test
  void where_is_the_inverse_and_beyond_the_ends_the_last_piece_goes_on() {
    Tabulated table = Tabulated.of(x -> x * x * x + x, -1, 1, 1e-7);
    for (double y = -1.9; y < 1.9; y += 0.1) {
      assertThat(table.at(table.where(y))).isCloseTo(y, within(1e-12));
    }
    assertThat(table.where(table.at(1.5))).isCloseTo(1.5, within(1e-9));
  }

  @Test
  void a_function_without_a_value_is_refused() {
    assertThatThrownBy(() -> Tabulated.of(Math::sqrt, -1, 1, 1e-3))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
