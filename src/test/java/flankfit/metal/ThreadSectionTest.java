package flankfit.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.setup.Hole;
import flankfit.setup.Tool;
import flankfit.solid.Crossing;
import flankfit.solid.Solid;
import flankfit.sweep.HelicalGroove;
import flankfit.sweep.RegularThread;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A milled thread against the closed forms of the package {@code sweep}. */
class ThreadSectionTest {
  private static final double PITCH = 1.5;
  private static final double BORE = 9.1881;
  private static final double PATH = 3;

  /** The M20 x 1.5 of the samples, cut by one row in so many turns from 12 below upwards. */
  private static Job job(Tool mill, int turns) {
    Hole bore =
        new Hole(
            "port",
            false,
            0,
            0,
            0,
            2 * BORE,
            Optional.empty(),
            Math.PI,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(Hole.MadeBy.STOCK),
            0);
    return new Job()
        .block(-13, -13, -16, 13, 13, 0)
        .hole(bore)
        .take(mill)
        .rapid(0, 0, -13)
        .line(PATH, 0, -13)
        .arc(0, 0, turns * 2 * Math.PI, -13 + turns * PITCH);
  }

  private static Tool mill(boolean ground) {
    return ground
        ? SampleTools.groundMill(1, 14, 1, PITCH, "M20x1.5-6H")
        : SampleTools.threadMill(1, 14, 1, PITCH);
  }

  private static RegularThread thread(Tool mill) {
    return new RegularThread(
        new HelicalGroove(SheetTeeth.tooth(mill, mill.teeth().orElseThrow()), true, PATH, PITCH),
        PITCH,
        BORE);
  }

  @Test
  void the_section_of_a_thread_is_that_of_the_exact_wall() {
    for (boolean ground : new boolean[] {false, true}) {
      Tool mill = mill(ground);
      Metal metal = job(mill, 4).metal(0.1);
      RegularThread exact = thread(mill);
      Solid solid = metal.at(3);
      Crossing crossing = new Crossing();
      for (int i = 0; i < 150; i++) {
        double angle = 0.3 * i;
        double z = -10 + PITCH * i / 75;
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        solid.crossing(12 * c, 12 * s, z, 8 * c, 8 * s, z, crossing);
        // The groove's middle lies one pitch above the tip, and rises with the angle.
        double groove = -13 + PITCH + PITCH * angle / (2 * Math.PI);
        double radius = Math.hypot(crossing.x(), crossing.y());
        // Ground flanks are read as straight bands that stray by 5e-5 mm.
        assertThat(radius)
            .as("ground %s, %s", ground, i)
            .isCloseTo(exact.surface(z - groove), within(ground ? 2e-4 : 1e-7));
      }
    }
  }

  @Test
  void one_more_turn_takes_away_the_volume_of_one_pitch_of_the_groove() {
    Tool mill = mill(false);
    RegularThread exact = thread(mill);
    int steps = 4000;
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      double r = exact.surface(PITCH * (i + 0.5) / steps);
      sum += Math.PI * (r * r - BORE * BORE) * PITCH / steps;
    }
    double[] error = new double[2];
    for (int i = 0; i < 2; i++) {
      // The bore's own cells are some five times coarser than the thread's.
      double cell = i == 0 ? 0.08 : 0.04;
      double three = job(mill, 3).metal(cell).volume(3);
      double four = job(mill, 4).metal(cell).volume(3);
      error[i] = Math.abs((three - four) / sum - 1);
    }
    assertThat(error[1]).isLessThan(1e-3);
    assertThat(error[0] / error[1]).isGreaterThan(Math.pow(2, 1.8));
  }
}
