package flankfit.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.setup.Hole;
import flankfit.setup.Stock;
import flankfit.setup.Tool;
import flankfit.solid.Crossing;
import flankfit.solid.Solid;
import flankfit.sweep.HelicalGroove;
import flankfit.sweep.RegularThread;
import flankfit.sweep.Tooth;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Milled threads, inside and outside, against the closed forms of the package {@code sweep}. */
class ThreadSectionTest {
  private static final double PITCH = 1.5;
  private static final double BORE = 9.1881;
  private static final double PATH = 3;

  /** The M20 x 1.5 of the samples, cut by one row in so many turns from 12 below upwards. */
  private static Job job(Tool mill, int turns) {
    return job(mill, turns, 0, 0, 0);
  }

  /** The same in a block that stays where it is, the thread moved. */
  private static Job job(Tool mill, int turns, double x, double y, double up) {
    Hole bore =
        new Hole(
            "port",
            false,
            x,
            y,
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
        .rapid(x, y, up - 13)
        .line(x + PATH, y, up - 13)
        .arc(x, y, turns * 2 * Math.PI, up - 13 + turns * PITCH);
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
      Metal metal = job(mill, 4).metal(0.3);
      RegularThread exact = thread(mill);
      Solid solid = metal.at(3);
      Crossing crossing = new Crossing();
      for (int i = 0; i < 75; i++) {
        double angle = 0.3 * i;
        double z = -10 + PITCH * i / 37;
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

  /**
   * Where the groove lies between the lattice's points makes one error chance; several of them show
   * how errors fall. The corner of the tooth leaves a round of 0.03 mm, finer than any of the
   * cells.
   */
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
    double[][] places = {{0, 0, 0}, {0.05, 0.08, 0.11}, {-0.09, 0.02, 0.09}, {0.07, -0.06, -0.12}};
    double[] cells = {0.24, 0.12};
    double[] errors = new double[2];
    for (int i = 0; i < 2; i++) {
      for (double[] p : places) {
        double three = job(mill, 3, p[0], p[1], p[2]).metal(cells[i]).volume(3);
        double four = job(mill, 4, p[0], p[1], p[2]).metal(cells[i]).volume(3);
        double error = (three - four) / sum - 1;
        assertThat(error).as("cells of %s", cells[i]).isCloseTo(0, within(5e-4));
        errors[i] += error * error / places.length;
      }
    }
    double order = Math.log(errors[0] / errors[1]) / 2 / Math.log(2);
    assertThat(order).isGreaterThan(1.8);
    assertThat(Math.sqrt(errors[1])).isLessThan(4e-5);
  }

  private static final double STUD = 8;
  private static final double AROUND = 14.2;

  /** A stud of 16 mm, cut from outside by one row in so many turns upwards. */
  private static Job boss(Tool mill, int turns) {
    return new Job()
        .stock(Stock.Shape.CYLINDER, -STUD, -STUD, -16, STUD, STUD, 0, 0)
        .take(mill)
        .rapid(40, 0, -13)
        .line(AROUND, 0, -13)
        .arc(0, 0, turns * 2 * Math.PI, -13 + turns * PITCH);
  }

  @Test
  void the_section_and_volume_of_a_thread_on_a_boss_are_those_of_the_exact_wall() {
    Tool mill = mill(false);
    Tooth tooth = SheetTeeth.tooth(mill, mill.teeth().orElseThrow());
    RegularThread exact =
        new RegularThread(new HelicalGroove(tooth, false, AROUND, PITCH), PITCH, STUD);
    Metal four = boss(mill, 4).metal(0.16);
    Crossing crossing = new Crossing();
    for (int i = 0; i < 60; i++) {
      double angle = 0.7 * i;
      double z = -10 + PITCH * i / 30;
      double c = Math.cos(angle);
      double s = Math.sin(angle);
      four.at(3).crossing(5 * c, 5 * s, z, 9 * c, 9 * s, z, crossing);
      double groove = -13 + PITCH + PITCH * angle / (2 * Math.PI);
      assertThat(Math.hypot(crossing.x(), crossing.y()))
          .as("place %s", i)
          .isCloseTo(exact.surface(z - groove), within(1e-7));
    }
    int steps = 4000;
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      double r = exact.surface(PITCH * (i + 0.5) / steps);
      sum += Math.PI * (STUD * STUD - r * r) * PITCH / steps;
    }
    double turn = boss(mill, 3).metal(0.16).volume(3) - four.volume(3);
    assertThat(turn / sum).isCloseTo(1, within(2e-4));
  }
}
