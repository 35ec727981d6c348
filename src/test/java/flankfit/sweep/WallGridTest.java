package flankfit.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.unit.Angles;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The grid against single readings. */
class WallGridTest {
  private static final double ACCURACY = 1e-4;

  @Test
  void every_place_of_the_grid_is_that_of_a_single_reading() {
    for (MilledCase milled : SweptWallProperties.cases().subList(0, 6)) {
      SweptWall wall = milled.wall();
      double[] theta = IntStream.range(0, 5).mapToDouble(i -> Angles.TURN * i / 5 - 2).toArray();
      double low = milled.zStart() - 3 * milled.pitch();
      double[] z =
          IntStream.range(0, 40).mapToDouble(i -> low + i * milled.pitch() / 5.3).toArray();
      WallGrid grid =
          WallGrid.of(wall, theta, z, milled.blankRadius(), milled.bottomRadius(), ACCURACY);
      for (int i = 0; i < grid.angles(); i++) {
        for (int k = 0; k < grid.heights(); k++) {
          assertThat(grid.radius(i, k))
              .as("%s at %s, %s", milled, grid.theta(i), grid.z(k))
              .isCloseTo(wall.radius(grid.theta(i), grid.z(k)), within(ACCURACY));
        }
      }
    }
  }

  @Test
  void a_regular_thread_comes_out_as_its_profile() {
    Tooth tooth = MilledCase.straight(16, 2.5);
    RegularThread thread = new RegularThread(new HelicalGroove(tooth, true, 2, 2.5), 2.5, 8.75);
    GroovePhase phase = new GroovePhase(-5, 2.5 / Angles.TURN, 2.5);
    Wall wall = new RegularWall(thread, phase, new SweptWall.Range(-20, 0));
    double[] theta = {0, 1, 2};
    double[] z = IntStream.range(0, 100).mapToDouble(i -> -10 + i * 0.05).toArray();
    WallGrid grid = WallGrid.of(wall, theta, z, 8.75, 10, ACCURACY);
    for (int i = 0; i < 3; i++) {
      for (int k = 0; k < z.length; k++) {
        double expected = thread.surface(z[k] - phase.middle(0, theta[i]));
        assertThat(grid.radius(i, k)).isCloseTo(expected, within(ACCURACY));
      }
    }
  }
}
