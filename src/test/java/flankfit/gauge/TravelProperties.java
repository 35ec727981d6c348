package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.gauge.Travel.From;
import flankfit.gauge.Travel.Play;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Laws that every gauge's way obeys, on walls drawn by chance. */
class TravelProperties {
  private static final int DIRECTIONS = 24;

  private static TurnedWall random(long seed) {
    Random random = new Random(seed);
    TurnedWall wall = new TurnedWall("M16x2-6H");
    wall.bottom = -12;
    double oval = 0.02 * random.nextDouble();
    double taper = 0.006 * random.nextDouble();
    double lead = 0.008 * (random.nextDouble() - 0.5);
    double turn = 6 * random.nextDouble();
    wall.larger = (theta, z) -> oval * Math.cos(2 * theta + turn) + taper * z;
    wall.raised = (theta, z) -> lead * z;
    return wall;
  }

  private static Travel travel(TurnedWall wall, double smaller, Play play, double length) {
    ThreadGauge gauge =
        ThreadGauge.go(wall.spec)
            .withPitchDiameter(wall.pitchDiameter() - smaller)
            .withLength(length);
    WallField field = WallField.sample(wall, wall.spec, true, DIRECTIONS);
    return Travel.of(field, gauge, From.MOUTH, play);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void a_smaller_a_shorter_and_a_freer_gauge_goes_no_less_far(long seed) {
    TurnedWall wall = random(seed);
    double before = 0;
    for (double smaller = 0; smaller <= 0.1; smaller += 0.02) {
      double turns = travel(wall, smaller, Play.FREE, 16).turns();
      assertThat(turns).isGreaterThanOrEqualTo(before - 1e-6);
      assertThat(turns)
          .isGreaterThanOrEqualTo(travel(wall, smaller, Play.CENTRAL, 16).turns() - 1e-6);
      assertThat(travel(wall, smaller, Play.FREE, 6).turns()).isGreaterThanOrEqualTo(turns - 1e-6);
      before = turns;
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13, 14, 15, 16})
  void the_clearance_told_is_that_of_the_largest_gauge_that_passes(long seed) {
    TurnedWall wall = random(seed);
    Travel loose = travel(wall, 0.2, Play.FREE, 5);
    assertThat(loose.end()).isEqualTo(Travel.End.THROUGH);
    double clearance = loose.clearance().orElseThrow();
    Travel snug = travel(wall, 0.2 - clearance + 1e-5, Play.FREE, 5);
    assertThat(snug.end()).isEqualTo(Travel.End.THROUGH);
    assertThat(snug.clearance().orElseThrow()).isCloseTo(1e-5, within(2e-6));
    Travel tight = travel(wall, 0.2 - clearance - 1e-5, Play.FREE, 5);
    assertThat(tight.end()).isEqualTo(Travel.End.STOPPED);
  }

  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23})
  void the_same_wall_gives_the_same_answer_to_the_last_digit(long seed) {
    TurnedWall wall = random(seed);
    assertThat(travel(wall, 0.05, Play.FREE, 6)).isEqualTo(travel(wall, 0.05, Play.FREE, 6));
  }

  @ParameterizedTest
  @ValueSource(longs = {31, 32, 33, 34})
  void mirrored_and_lifted_walls_give_the_same_turns(long seed) {
    TurnedWall wall = random(seed);
    TurnedWall mirrored = random(seed);
    TurnedWall left = new TurnedWall("M16x2-6H-LH");
    left.bottom = -12 + 3;
    left.top = 3;
    left.phase = mirrored.phase + 3;
    left.larger = (theta, z) -> mirrored.larger.applyAsDouble(-theta, z - 3);
    left.raised = (theta, z) -> mirrored.raised.applyAsDouble(-theta, z - 3);
    for (double smaller = 0.02; smaller <= 0.06; smaller += 0.02) {
      Travel right = travel(wall, smaller, Play.FREE, 16);
      Travel other = travel(left, smaller, Play.FREE, 16);
      assertThat(other.turns()).isCloseTo(right.turns(), within(1e-4));
      assertThat(other.z() - 3).isCloseTo(right.z(), within(2e-4));
      assertThat(other.shiftX()).isCloseTo(right.shiftX(), within(1e-4));
      assertThat(other.shiftY()).isCloseTo(-right.shiftY(), within(1e-4));
    }
  }
}
