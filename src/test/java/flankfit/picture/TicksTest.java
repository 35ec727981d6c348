package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TicksTest {
  @Test
  void steps_are_one_two_or_five_times_a_power_of_ten() {
    assertThat(Ticks.stepAtLeast(1)).isEqualTo(1);
    assertThat(Ticks.stepAtLeast(1.01)).isEqualTo(2);
    assertThat(Ticks.stepAtLeast(2.5)).isEqualTo(5);
    assertThat(Ticks.stepAtLeast(6)).isEqualTo(10);
    assertThat(Ticks.stepAtLeast(0.03)).isEqualTo(0.05);
    assertThat(Ticks.stepAtLeast(1e-3)).isEqualTo(1e-3);
  }

  @Test
  void labels_have_just_the_decimals_their_step_needs() {
    assertThat(Ticks.decimals(20)).isZero();
    assertThat(Ticks.decimals(0.5)).isEqualTo(1);
    assertThat(Ticks.decimals(0.001)).isEqualTo(3);
  }
}
