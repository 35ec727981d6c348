package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.gauge.Travel.Play;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The largest gauge against a slow search that knows points only, and laws that it must obey. */
class LargestGaugeProperties {
  private static final double LOW = -5.9;
  private static final double HIGH = -1.1;

  /** What is left out by the linear program: the shift squared over the diameter, and slip (mm). */
  private static final double LINEAR = 4e-4;

  private static TurnedWall random(long seed, String designation) {
    Random random = new Random(seed);
    TurnedWall wall = new TurnedWall(designation);
    wall.bottom = -7;
    wall.phase = -random.nextDouble();
    double oval = 0.02 * random.nextDouble();
    double turn = 6 * random.nextDouble();
    double three = 0.01 * random.nextDouble();
    double taper = 0.004 * (random.nextDouble() - 0.5);
    double lead = 0.01 * (random.nextDouble() - 0.5);
    double bulge = 0.01 * random.nextDouble();
    wall.larger =
        (theta, z) ->
            oval * Math.cos(2 * theta + turn)
                + three * Math.cos(3 * theta)
                + taper * z
                + bulge * Math.sin(z);
    wall.raised = (theta, z) -> lead * z + 0.003 * Math.sin(theta + 2 * turn);
    wall.upperAngle = 0.01 * (random.nextDouble() - 0.5);
    wall.lowerAngle = 0.01 * (random.nextDouble() - 0.5);
    wall.axisX = 0.01 * (random.nextDouble() - 0.5);
    wall.axisY = 0.01 * (random.nextDouble() - 0.5);
    return wall;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
  void a_search_over_places_finds_the_same_gauge(long seed) {
    String designation = seed % 4 == 0 ? "M16x2-6g" : seed % 4 == 1 ? "M16x2-6H-LH" : "M16x2-6H";
    TurnedWall wall = random(seed, designation);
    WallField field = WallField.sample(wall, wall.spec, true, 24);
    Functional found = Functional.flanks(field, Play.FREE, LOW, HIGH);
    double witness = new PlaceSearch(wall, field, LOW, HIGH).largest();
    assertThat(found.diameter()).isCloseTo(witness, within(LINEAR));
    double sign = wall.spec.internal() ? 1 : -1;
    double central = Functional.flanks(field, Play.CENTRAL, LOW, HIGH).diameter();
    assertThat(sign * (found.diameter() - central)).isGreaterThan(-1e-9);
  }

  @ParameterizedTest
  @ValueSource(longs = {31, 32, 33, 34, 35})
  void turning_the_part_changes_nothing(long seed) {
    TurnedWall wall = random(seed, "M16x2-6H");
    wall.axisX = 0;
    wall.axisY = 0;
    TurnedWall turned = random(seed, "M16x2-6H");
    turned.axisX = 0;
    turned.axisY = 0;
    double by = 2 * Math.PI * 10 / 36;
    // The same groove numbered from another direction: its helix starts lower by what it rises.
    turned.phase = wall.phase - by / Math.PI;
    turned.larger = (theta, z) -> wall.larger.applyAsDouble(theta - by, z);
    turned.raised = (theta, z) -> wall.raised.applyAsDouble(theta - by, z);
    for (Play play : Play.values()) {
      double before = flanks(wall, play, LOW, HIGH);
      assertThat(flanks(turned, play, LOW, HIGH)).isCloseTo(before, within(1e-7));
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {41, 42, 43, 44, 45})
  void a_part_lifted_along_its_axis_gauges_alike(long seed) {
    TurnedWall wall = random(seed, "M16x2-6H");
    TurnedWall lifted = random(seed, "M16x2-6H");
    lifted.phase += 5;
    lifted.top = 5;
    lifted.bottom = -2;
    lifted.larger = (theta, z) -> wall.larger.applyAsDouble(theta, z - 5);
    lifted.raised = (theta, z) -> wall.raised.applyAsDouble(theta, z - 5);
    for (Play play : Play.values()) {
      assertThat(flanks(lifted, play, LOW + 5, HIGH + 5))
          .isCloseTo(flanks(wall, play, LOW, HIGH), within(1e-7));
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {51, 52, 53, 54, 55})
  void the_mirrored_left_hand_thread_gauges_alike(long seed) {
    TurnedWall wall = random(seed, "M16x2-6H");
    TurnedWall mirrored = random(seed, "M16x2-6H-LH");
    mirrored.axisY = -wall.axisY;
    mirrored.larger = (theta, z) -> wall.larger.applyAsDouble(-theta, z);
    mirrored.raised = (theta, z) -> wall.raised.applyAsDouble(-theta, z);
    mirrored.phase = wall.phase;
    for (Play play : Play.values()) {
      assertThat(flanks(mirrored, play, LOW, HIGH))
          .isCloseTo(flanks(wall, play, LOW, HIGH), within(1e-7));
    }
  }

  private static double flanks(TurnedWall wall, Play play, double low, double high) {
    return Functional.flanks(WallField.sample(wall, wall.spec, true, 36), play, low, high)
        .diameter();
  }
}
