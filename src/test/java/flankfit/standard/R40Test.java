package flankfit.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Preferred numbers. */
class R40Test {
  @Test
  void every_number_is_near_its_power_of_ten() {
    for (int step = 0; step < 160; step++) {
      double exact = Math.pow(10, step / 40.0);
      // ISO 3 rounds its numbers by no more than 1.27 %
      assertThat(R40.at(step) / exact).isCloseTo(1, within(0.0127));
    }
  }

  @Test
  void nearest_number_to_a_preferred_number_is_itself() {
    for (int step = 0; step < 160; step++) {
      assertThat(R40.nearest(R40.at(step))).isEqualTo(step);
    }
  }

  @ParameterizedTest
  @CsvSource({"26.5, 26", "42.5, 42", "31.5, 32", "35.5, 36", "47.5, 48", "21.2, 21", "23.6, 24"})
  void halves_are_written_as_printed(double number, long printed) {
    assertThat(R40.micrometres(R40.nearest(number))).isEqualTo(printed);
  }

  /** T_d2 of M10x1.5: 90 P^0.4 d^0.1 is 130.2; grade 8 is printed 212, not 200 = 1.6 times 130. */
  @Test
  void grades_move_by_whole_steps() {
    assertThat(R40.micrometres(R40.nearest(130.2))).isEqualTo(132);
    assertThat(R40.micrometres(R40.nearest(130.2) + 8)).isEqualTo(212);
  }
}
