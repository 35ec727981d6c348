package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Gauges screwed into the path as moved, from the tape on. */
class RealAnswerTest {
  private final Milled job = new Milled();

  private ThreadAnswer answer() {
    GaugeRequest request = job.request();
    GaugeAnswer answer =
        ThreadGauging.gauge(
            new GaugeRequest(
                request.program(),
                request.tape(),
                request.setup(),
                request.radiusSettings(),
                request.replay(),
                true));
    assertThat(answer.threads()).hasSize(1);
    return answer.threads().get(0);
  }

  @Test
  void a_true_thread_measures_and_gauges_as_the_endless_helix_does() {
    job.wear = -0.045;
    ThreadAnswer answer = answer();
    RealAnswer real = answer.real().orElseThrow();
    WallMeasures wall = real.measures().orElseThrow();
    Measures endless = answer.finished().orElseThrow();
    assertThat(wall.pitch().mean()).isCloseTo(endless.pitchSimple(), within(1e-4));
    // A straight entry leaves the flanks of the first and last row a little short beside it.
    assertThat(wall.functional().central().diameter())
        .isBetween(endless.functional() - 0.005, endless.functional() + 1e-4);
    assertThat(wall.taper()).isCloseTo(0, within(1e-6));
    assertThat(real.reachesWanted()).isTrue();
    assertThat(real.noGo().turns()).isLessThan(1);
    assertThat(answer.verdict()).isEqualTo(Verdict.GAUGES_GOOD);
    assertThat(answer.noGo().orElseThrow().turns()).isEqualTo(real.noGo().turns());
  }

  @Test
  void rising_half_a_pitch_over_half_a_turn_leaves_the_mark_of_the_table() {
    // Computed by direct maximisation for the M20 x 1.5 with a 14 mm mill: 29 micrometres.
    job.entryRiseShare = 0.5;
    double deep = answer().real().orElseThrow().measures().orElseThrow().deepest().depth();
    assertThat(deep).isCloseTo(0.029, within(0.001));
  }

  @Test
  void a_thread_that_ends_too_early_refuses_the_go_plug_whatever_its_profile() {
    job.wear = -0.045;
    job.rows = 6;
    job.zStart = -8;
    ThreadAnswer answer = answer();
    assertThat(answer.real().orElseThrow().reachesWanted()).isFalse();
    assertThat(answer.real().orElseThrow().go().z()).isBetween(-9.5, -7.0);
    assertThat(answer.go().orElseThrow().enters()).isFalse();
    assertThat(answer.verdict()).isEqualTo(Verdict.GO_REFUSED);
    assertThat(answer.reason()).contains("on the path as moved GO plug stops after");
  }

  @Test
  void left_hand_and_mirrored_motion_gauge_alike() {
    job.wear = -0.045;
    RealAnswer right = answer().real().orElseThrow();
    job.thread = "M20x1.5-6H-LH";
    job.anticlockwise = false;
    RealAnswer left = answer().real().orElseThrow();
    assertThat(left.go().turns()).isCloseTo(right.go().turns(), within(0.05));
    assertThat(left.noGo().turns()).isCloseTo(right.noGo().turns(), within(0.05));
    assertThat(left.measures().orElseThrow().pitch().mean())
        .isCloseTo(right.measures().orElseThrow().pitch().mean(), within(1e-5));
  }

  @Test
  void it_is_reckoned_only_when_asked_for() {
    assertThat(job.only().real()).isEmpty();
  }
}
