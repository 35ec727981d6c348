package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.unit.Angles;
import org.junit.jupiter.api.Test;

/** Measuring over wires and balls against printed examples. */
class BallReadingPublishedTest {
  private static final double SIXTY = Math.PI / 6;
  private static final double WHITWORTH = Angles.toRadians(27.5);

  @Test
  void three_wires_on_the_inch_and_a_half_screw_read_1_6674() {
    // F. D. Jones, Turning and Boring, worked example: 1 1/2 in, 6 threads, wires 0.140 in: 1.6674
    // in.
    double pitchDiameter = 1.5 - 0.649519 / 6;
    assertThat(BallReading.overWires(pitchDiameter, 0.140, 1.0 / 6, SIXTY))
        .isCloseTo(1.6674, within(0.5e-4));
  }

  @Test
  void constants_are_those_printed_for_60_and_55_degrees() {
    // Article of a national metrology institute: 3 and 0.866025; 3.16568 and 0.960491.
    assertThat(BallReading.overWires(0, 1, 0, SIXTY)).isCloseTo(3, within(1e-9));
    assertThat(-BallReading.overWires(0, 0, 1, SIXTY)).isCloseTo(0.866025, within(0.5e-6));
    assertThat(BallReading.overWires(0, 1, 0, WHITWORTH)).isCloseTo(3.16568, within(0.5e-5));
    assertThat(-BallReading.overWires(0, 0, 1, WHITWORTH)).isCloseTo(0.960491, within(0.6e-6));
    assertThat(BallReading.bestSize(1, SIXTY)).isCloseTo(0.57735, within(0.5e-5));
    assertThat(BallReading.bestSize(1, WHITWORTH)).isCloseTo(0.56369, within(0.5e-5));
  }

  @Test
  void two_balls_in_a_nut_stand_where_computed() {
    // Computed from the geometry, not published: M20x1.5 with its best ball 0.866025.
    double ball = BallReading.bestSize(1.5, SIXTY);
    double centres = BallReading.betweenCentres(19.025721, ball, 1.5, SIXTY);
    assertThat(centres).isCloseTo(18.592709, within(1.1e-6));
    assertThat(centres + ball).isCloseTo(19.458734, within(1.1e-6));
  }
}
