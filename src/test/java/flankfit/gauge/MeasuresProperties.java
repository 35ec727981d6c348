package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.Point;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Where a thread lies, how its motion is split, and its unit do not change what it measures. */
class MeasuresProperties {
  @Test
  void place_split_hand_sense_and_unit_leave_the_measures_alone() {
    Random random = new Random(11);
    for (int i = 0; i < 20; i++) {
      Milled job = new Milled();
      job.radii = new double[] {2.97 + 0.08 * random.nextDouble()};
      Measures here = job.only().finished().orElseThrow();
      job.axes =
          List.of(new Point(200 * random.nextDouble() - 100, 200 * random.nextDouble() - 100, 0));
      job.arcs = 1 + random.nextInt(5);
      job.unit = random.nextBoolean() ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
      if (random.nextBoolean()) {
        job.thread = "M20x1.5-6H-LH";
        job.anticlockwise = false;
      }
      Measures there = job.only().finished().orElseThrow();
      assertThat(there.pitchSimple()).isCloseTo(here.pitchSimple(), within(1e-6));
      assertThat(there.functional()).isCloseTo(here.functional(), within(1e-6));
      assertThat(there.functionalFlank()).isCloseTo(here.functionalFlank(), within(1e-6));
      assertThat(there.decidedBy()).isEqualTo(here.decidedBy());
    }
  }

  @Test
  void a_larger_path_never_makes_a_smaller_thread() {
    Milled job = new Milled();
    double simple = 0;
    double functional = 0;
    for (double e = 2.9; e < 3.1; e += 0.013) {
      job.radii = new double[] {e};
      Measures measured = job.only().finished().orElseThrow();
      assertThat(measured.pitchSimple()).isGreaterThan(simple);
      assertThat(measured.functional()).isGreaterThan(functional);
      assertThat(measured.functional()).isLessThanOrEqualTo(measured.functionalFlank());
      assertThat(measured.functionalFlank()).isLessThanOrEqualTo(measured.pitchSimple());
      simple = measured.pitchSimple();
      functional = measured.functional();
    }
  }

  @Test
  void gauging_twice_gives_the_same() {
    Milled job = new Milled();
    assertThat(job.only().finished()).isEqualTo(job.only().finished());
    assertThat(job.only().offset()).isEqualTo(job.only().offset());
    assertThat(job.gauge().findings()).isEqualTo(job.gauge().findings());
  }
}
