package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.setup.Tool.CutterForm;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** A deviation measures what a job with that very mill, hole or register measures. */
class ThreadVariationTest {
  private static final double SAME = 1e-9;

  private static ThreadVariation variation(ThreadAnswer thread) {
    return thread.variation().orElseThrow();
  }

  private static void same(Formed formed, ThreadAnswer wanted) {
    Measures m = wanted.finished().orElseThrow();
    assertThat(formed.simple()).isCloseTo(m.pitchSimple(), within(SAME));
    assertThat(formed.functional(wanted.spec())).isCloseTo(m.functional(), within(SAME));
    double ridge = wanted.internal() ? m.minor() : m.major();
    assertThat(formed.ridge()).isCloseTo(ridge, within(SAME));
  }

  @Test
  void without_a_deviation_it_is_the_thread_as_gauged() {
    for (ThreadAnswer thread :
        List.of(
            VariedThreads.straight(0),
            VariedThreads.straight(0.03),
            VariedThreads.groundAndBent(-0.045),
            VariedThreads.straightAndBent(-0.03),
            VariedThreads.boss(-0.1))) {
      Formed formed = variation(thread).formed(Deviation.none()).orElseThrow();
      same(formed, thread);
      Verdict verdict =
          variation(thread)
              .verdict(formed.functional(thread.spec()), formed.felt(), formed.ridge());
      assertThat(verdict).isEqualTo(thread.verdict());
    }
  }

  private static ThreadAnswer job(Consumer<Milled> changes) {
    Milled job = new Milled();
    job.radii = new double[] {2.7, 3, 3};
    changes.accept(job);
    return job.endless();
  }

  @Test
  void a_larger_mill_a_wider_crest_another_hole_are_those_of_another_sheet() {
    ThreadVariation usual = variation(job(j -> {}));
    same(usual.formed(new Deviation(0, 0.01, 0, 1, 0)).orElseThrow(), job(j -> j.mill = 14.02));
    same(
        usual.formed(new Deviation(0, 0, 0.012, 1, 0)).orElseThrow(),
        job(j -> j.crest = 0.1875 + 0.012));
    same(usual.formed(new Deviation(0, 0, 0, 1, -0.02)).orElseThrow(), job(j -> j.hole = 18.46));
    // more wear draws this path inwards by as much
    same(usual.formed(new Deviation(0.017, 0, 0, 1, 0)).orElseThrow(), job(j -> j.wear = -0.017));
  }

  @Test
  void a_mill_ground_for_the_thread_is_larger_in_the_same_way() {
    CutterForm ground = new CutterForm.GroundFor("M20x1.5-6H", false);
    ThreadVariation usual = variation(job(j -> j.form = ground));
    ThreadAnswer larger =
        job(
            j -> {
              j.form = ground;
              j.mill = 14.02;
            });
    same(usual.formed(new Deviation(0, 0.01, 0, 1, 0)).orElseThrow(), larger);
    same(usual.withStraightFlanks().formed(Deviation.none()).orElseThrow(), job(j -> {}));
  }

  @Test
  void bending_a_half_more_takes_about_a_half_more_off_the_thread() {
    ThreadAnswer bent = VariedThreads.straightAndBent(-0.03);
    double stiff = bent.bending().orElseThrow().rigidPitch();
    ThreadVariation variation = variation(bent);
    double usual = variation.formed(Deviation.none()).orElseThrow().simple();
    double more = variation.formed(new Deviation(0, 0, 0, 1.5, 0)).orElseThrow().simple();
    double none = variation.formed(new Deviation(0, 0, 0, 1e-9, 0)).orElseThrow().simple();
    assertThat(none).isCloseTo(stiff, within(1e-6));
    // the spring pass cuts part of it away again, so not quite in proportion
    assertThat((stiff - more) / (stiff - usual)).isBetween(1.2, 2.5);
  }

  @Test
  void a_path_that_leaves_nothing_to_measure_has_no_diameters() {
    assertThat(variation(VariedThreads.straight(0)).formed(new Deviation(-1.2, 0, 0, 1, 0)))
        .isEmpty();
  }
}
