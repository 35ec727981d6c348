package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import flankfit.motion.Point;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Trials of wear entries against gauging the program with that entry in the sheet. */
class WearTrialTest {
  private static ThreadAnswer gauged(double wear) {
    Milled job = new Milled();
    job.wear = wear;
    return job.only();
  }

  private static final WearTrial TRIAL = trial();

  private static WearTrial trial() {
    Milled job = new Milled();
    return WearTrial.of(job.request(), job.only()).orElseThrow();
  }

  @Test
  void a_whole_trial_is_the_answer_with_that_entry_in_the_sheet() {
    ThreadAnswer tried = TRIAL.whole(-0.03).orElseThrow();
    ThreadAnswer wanted = gauged(-0.03);
    assertThat(tried.finished()).isEqualTo(wanted.finished());
    assertThat(tried.passes()).isEqualTo(wanted.passes());
    assertThat(tried.verdict()).isEqualTo(wanted.verdict());
    assertThat(tried.reason()).isEqualTo(wanted.reason());
    assertThat(tried.offset()).isEqualTo(wanted.offset());
    assertThat(tried.real().orElseThrow().words()).isEqualTo(wanted.real().orElseThrow().words());
  }

  @Test
  void a_trial_of_an_endless_helix_measures_the_same_without_advice() {
    ThreadAnswer tried = TRIAL.endless(-0.03).orElseThrow();
    Milled job = new Milled();
    job.wear = -0.03;
    ThreadAnswer wanted = ThreadGauging.gauge(job.request().withoutRealPath()).threads().get(0);
    assertThat(tried.finished()).isEqualTo(wanted.finished());
    assertThat(tried.offset()).isEmpty();
    assertThat(tried.real()).isEmpty();
  }

  @Test
  void of_several_holes_the_one_in_hand_is_tried() {
    Milled job = new Milled();
    job.axes = List.of(new Point(0, 0, 0), new Point(40, 0, 0));
    GaugeRequest request = job.request();
    ThreadAnswer second = ThreadGauging.gauge(request.withoutRealPath()).threads().get(1);
    ThreadAnswer tried = WearTrial.of(request, second).orElseThrow().endless(-0.02).orElseThrow();
    assertThat(tried.hole()).isEqualTo(second.hole());
    assertThat(tried.x()).isEqualTo(40);
  }

  @Test
  void an_entry_with_which_the_program_stops_gives_no_thread() {
    assertThat(TRIAL.endless(5)).isEqualTo(Optional.empty());
    assertThatThrownBy(() -> TRIAL.endless(Double.NaN)).hasMessageContaining("wear");
  }
}
