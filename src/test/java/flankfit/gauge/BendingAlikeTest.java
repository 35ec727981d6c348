package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.sweep.Blank;
import flankfit.sweep.Sweep;
import flankfit.sweep.SweptWall;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is lost where rows that bend nearly alike are swept as one. */
class BendingAlikeTest {
  /** What may be lost on a diameter while no row bends by more than this (mm). */
  private static final double LOST = 1e-4;

  private static final double USUAL = 0.010;

  private static double lostOnDiameter(double[] off) {
    double[] told = RealPath.alike(off);
    double most = 0;
    for (int row = 0; row < off.length; row++) {
      most = Math.max(most, 2 * Math.abs(told[row] - off[row]));
    }
    return most;
  }

  @Test
  void usual_bending_is_told_to_a_tenth_of_a_micrometre_and_more_to_a_fiftieth() {
    Random random = new Random(4);
    for (int i = 0; i < 2000; i++) {
      double most = 0.08 * random.nextDouble();
      double[] off =
          random.doubles(1 + random.nextInt(40), -0.2 * most, most).map(d -> d).toArray();
      double greatest = DoubleStream.of(off).map(Math::abs).max().orElseThrow();
      assertThat(lostOnDiameter(off)).isLessThanOrEqualTo(Math.max(LOST, greatest / 50) + 1e-12);
      if (greatest <= USUAL) {
        assertThat(lostOnDiameter(off)).isLessThanOrEqualTo(LOST + 1e-12);
      }
    }
    assertThat(RealPath.alike(new double[] {0, 0})).containsExactly(0, 0);
  }

  /** The rows of a comb bend in a line: {@code most} at the lowest, less by {@code taper} above. */
  @ParameterizedTest(name = "bent by {0}, {1} less at the top")
  @CsvSource({
    "0.0031, 0.0008",
    "0.0063, 0.0017",
    "0.0099, 0.0043",
    "0.0099, 0.0002",
    "0.0147, 0.0023",
    "0.0300, 0.0094"
  })
  void measures_of_the_wall_are_those_of_every_row_for_itself(double most, double taper) {
    Milled job = new Milled();
    job.wear = -0.03;
    ThreadAnswer answer = job.judged();
    SweptWall stiff = (SweptWall) answer.real().orElseThrow().wall();
    Sweep sweep = stiff.sweeps().get(0);
    int rows = sweep.cutter().rows();
    double[] off = new double[rows];
    for (int row = 0; row < rows; row++) {
      off[row] = most - taper * row / (rows - 1);
    }
    WallMeasures exact = measures(stiff, sweep.drawnIn(off), answer);
    WallMeasures told = measures(stiff, sweep.drawnIn(RealPath.alike(off)), answer);
    double allowed = Math.max(LOST, most / 50);
    assertThat(told.pitch().mean()).isCloseTo(exact.pitch().mean(), within(allowed));
    assertThat(told.pitch().least()).isCloseTo(exact.pitch().least(), within(allowed));
    assertThat(told.pitch().greatest()).isCloseTo(exact.pitch().greatest(), within(allowed));
    assertThat(told.functional().free().diameter())
        .isCloseTo(exact.functional().free().diameter(), within(allowed));
    assertThat(told.flanks().central().diameter())
        .isCloseTo(exact.flanks().central().diameter(), within(allowed));
    // That it is bending which is told: the thread lies between those of both ends of the comb.
    double stiffPitch = answer.real().orElseThrow().measures().orElseThrow().pitch().mean();
    assertThat(stiffPitch - told.pitch().mean())
        .isBetween(2 * (most - taper) - 2e-4, 2 * most + 2e-4);
  }

  private static WallMeasures measures(SweptWall like, Sweep sweep, ThreadAnswer answer) {
    SweptWall wall =
        new SweptWall(
            true,
            0,
            0,
            new SweptWall.Range(like.bottom(), like.top()),
            List.of(Blank.hole(9.25, like.bottom())),
            List.of(sweep));
    return WallMeasures.of(WallField.sample(wall, answer.spec(), true, 40)).orElseThrow();
  }
}
