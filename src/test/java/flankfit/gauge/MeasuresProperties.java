package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.finding.Code;
import flankfit.motion.Point;
import flankfit.setup.Tool.CutterForm;
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
      Measures here = job.endless().finished().orElseThrow();
      job.axes =
          List.of(new Point(200 * random.nextDouble() - 100, 200 * random.nextDouble() - 100, 0));
      job.arcs = 1 + random.nextInt(5);
      job.unit = random.nextBoolean() ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
      if (random.nextBoolean()) {
        job.thread = "M20x1.5-6H-LH";
        job.anticlockwise = false;
      }
      Measures there = job.endless().finished().orElseThrow();
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
      Measures measured = job.endless().finished().orElseThrow();
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

  @Test
  void where_on_the_circle_a_pass_begins_does_not_matter_when_z_agrees() {
    Milled job = new Milled();
    Measures here = job.endless().finished().orElseThrow();
    Random random = new Random(5);
    for (int i = 0; i < 10; i++) {
      job.radii = new double[] {3, 3, 3};
      job.firstAngle = 6 * random.nextDouble();
      job.stepAngle = 2 * random.nextDouble();
      job.stepZ = 1.5 * job.stepAngle / (2 * Math.PI) + 1.5 * random.nextInt(2);
      Measures there = job.endless().finished().orElseThrow();
      assertThat(there.pitchSimple()).isCloseTo(here.pitchSimple(), within(1e-6));
      assertThat(job.judgedAll().findings()).noneMatch(f -> f.code() == Code.TH14);
    }
  }

  @Test
  void whatever_the_job_the_answer_is_finite_and_agrees_with_itself() {
    Random random = new Random(3);
    for (int i = 0; i < 80; i++) {
      Milled job = anyJob(random);
      boolean asMoved = i % 4 == 0;
      GaugeAnswer answer =
          asMoved ? job.judgedAll() : ThreadGauging.gauge(job.request().withoutRealPath());
      for (ThreadAnswer thread : answer.threads()) {
        assertThat(thread.go().isPresent()).isEqualTo(thread.verdict() != Verdict.NOT_A_THREAD);
        thread.finished().ifPresent(MeasuresProperties::isFinite);
        if (thread.verdict() == Verdict.GAUGES_GOOD) {
          assertThat(thread.go().orElseThrow().enters()).isTrue();
          assertThat(thread.noGo().orElseThrow().stops()).isTrue();
        }
        assertThat(thread.reason()).isNotEmpty().doesNotContain("unknown");
      }
    }
  }

  private static Milled anyJob(Random random) {
    Milled job = new Milled();
    job.mill = 4 + 15 * random.nextDouble();
    job.hole = 16 + 4.5 * random.nextDouble();
    job.radii = new double[1 + random.nextInt(3)];
    for (int i = 0; i < job.radii.length; i++) {
      double path = (20 - job.mill) / 2 + 0.6 * random.nextGaussian();
      job.radii[i] = Math.max(0.02, path);
    }
    job.lead = random.nextInt(3) == 0 ? 3 * random.nextDouble() : 1.5;
    job.rows = random.nextBoolean() ? 1 : 12;
    job.turns = 0.6 + 4 * random.nextDouble();
    job.crest = 0.4 * random.nextDouble();
    job.stepZ = random.nextBoolean() ? 0 : random.nextDouble();
    if (random.nextInt(3) == 0) {
      job.form = new CutterForm.GroundFor("M24x1.5-6H", false);
    }
    return job;
  }

  private static void isFinite(Measures m) {
    assertThat(
            List.of(
                m.major(),
                m.minor(),
                m.pitchSimple(),
                m.functional(),
                m.functionalFlank(),
                m.flankAngleUp(),
                m.flankAngleDown(),
                m.leadLoss()))
        .allMatch(Double::isFinite);
    assertThat(m.functional()).isLessThanOrEqualTo(m.functionalFlank() + 1e-9);
  }
}
