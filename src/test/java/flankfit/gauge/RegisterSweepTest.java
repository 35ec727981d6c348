package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A sweep of a register against the advice, which is worked out another way. */
class RegisterSweepTest {
  private final Milled job = new Milled();

  private RegisterSweep sweep(double from, double to, double by) {
    return RegisterSweep.of(job.request(), job.register, RegisterSweep.entries(from, to, by));
  }

  private static Verdict verdict(RegisterSweep.Step step) {
    return step.threads().get(0).verdict();
  }

  @Test
  void gauges_are_good_exactly_between_the_entries_that_the_advice_keys_in() {
    OffsetAdvice advice = job.only().offset().orElseThrow();
    double step = advice.increment();
    double[] entries = RegisterSweep.entries(-0.12, 0.02, 0.005);
    int all = entries.length;
    entries = Arrays.copyOf(entries, all + 4);
    entries[all] = advice.keyToNoGoLimit() - step;
    entries[all + 1] = advice.keyToNoGoLimit();
    entries[all + 2] = advice.keyToGoLimit();
    entries[all + 3] = advice.keyToGoLimit() + step;
    RegisterSweep sweep = RegisterSweep.of(job.request(), job.register, entries);
    int good = 0;
    for (RegisterSweep.Step tried : sweep.steps()) {
      boolean inside =
          tried.wear() >= advice.keyToNoGoLimit() - 1e-9
              && tried.wear() <= advice.keyToGoLimit() + 1e-9;
      assertThat(verdict(tried) == Verdict.GAUGES_GOOD).as("%s", tried.wear()).isEqualTo(inside);
      good += inside ? 1 : 0;
    }
    assertThat(good).isPositive();
  }

  @Test
  void the_pitch_diameter_runs_with_the_sensitivity_of_the_motion_in_both_directions() {
    for (boolean outwards : new boolean[] {false, true}) {
      job.inwards = total -> outwards ? total : -total;
      double slope = job.only().offset().orElseThrow().sensitivity();
      RegisterSweep sweep = sweep(-0.01, 0.01, 0.01);
      double first = sweep.steps().get(0).threads().get(0).finished().orElseThrow().pitchSimple();
      double last = sweep.steps().get(2).threads().get(0).finished().orElseThrow().pitchSimple();
      assertThat((last - first) / 0.02).isCloseTo(slope, within(2e-3));
      assertThat(slope > 0).isEqualTo(outwards);
    }
  }

  @Test
  void an_entry_with_which_the_program_stops_gives_no_thread() {
    GaugeRequest stops =
        new GaugeRequest(
            "job.nc", job.request().tape(), job.request().setup(), any -> Optional.empty());
    RegisterSweep sweep = RegisterSweep.of(stops, 4, RegisterSweep.entries(0, 0, 1));
    assertThat(sweep.steps()).hasSize(1);
    assertThat(sweep.steps().get(0).threads()).isEmpty();
  }

  @Test
  void entries_reach_both_ends_and_are_not_too_many() {
    double[] entries = RegisterSweep.entries(-0.05, 0.05, 0.005);
    assertThat(entries).hasSize(21);
    assertThat(entries[20]).isCloseTo(0.05, within(1e-12));
    assertThat(RegisterSweep.entries(0.3, 0.3, 0.1)).containsExactly(0.3);
    assertThatThrownBy(() -> RegisterSweep.entries(0, 1, 0)).hasMessageContaining("by");
    assertThatThrownBy(() -> RegisterSweep.entries(1, 0, 0.1)).hasMessageContaining("to");
    assertThatThrownBy(() -> RegisterSweep.entries(0, 10, 0.001)).hasMessageContaining("entries");
  }
}
