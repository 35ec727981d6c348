package flankfit.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.gauge.Deviation;
import flankfit.gauge.Formed;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.ThreadVariation;
import flankfit.gauge.VariedThreads;
import flankfit.gauge.Verdict;
import flankfit.setup.Scatter;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ThreadOddsTest {
  private static ThreadOdds odds(ThreadAnswer thread, Scatter scatter, long seed) {
    return Odds.of(thread, scatter, seed).orElseThrow().reckoned(ThreadOdds.DRAWS);
  }

  private static Scatter scatter(double circle, double roundness) {
    return new Scatter(Optional.of(circle), Optional.of(roundness), Optional.of(0.3));
  }

  @Test
  void the_same_seed_gives_the_same_odds_and_another_nearly_so() {
    ThreadAnswer thread = VariedThreads.straight(0);
    ThreadOdds one = odds(thread, Scatter.unknown(), 1);
    assertThat(odds(thread, Scatter.unknown(), 1)).isEqualTo(one);
    ThreadOdds other = odds(thread, Scatter.unknown(), 2);
    assertThat(other.good()).isCloseTo(one.good(), within(0.01));
    assertThat(other.contributors().get(0).name()).isEqualTo(one.contributors().get(0).name());
  }

  /**
   * Against plain Monte-Carlo on the exact measures, inputs drawn here by their definition anew:
   * 2000 draws, so 0.009 is one standard deviation of the count at 0.8.
   */
  @Test
  void they_agree_with_plain_draws_of_exactly_measured_threads() {
    ThreadAnswer thread = VariedThreads.straight(0);
    ThreadVariation variation = thread.variation().orElseThrow();
    Random random = new Random(4);
    int n = 2000;
    int good = 0;
    int go = 0;
    for (int i = 0; i < n; i++) {
      // the usual deviations: 0.02 on the diameter, run-out 0.01 with four flutes, crest 0.01
      double runout = 0.005 * Math.cos(Math.PI / 4 * (2 * random.nextDouble() - 1));
      double cutter = 0.005 * (2 * random.nextDouble() - 1) + runout;
      double crest = 0.005 * (2 * random.nextDouble() - 1);
      double path = 0.0005 * (2 * random.nextDouble() - 1) + 0.003 * (2 * random.nextDouble() - 1);
      double oval = 0.006 * random.nextDouble();
      double hole = 0.01 * (2 * random.nextDouble() - 1);
      Formed formed = variation.formed(new Deviation(path, cutter, crest, 1, hole)).orElseThrow();
      double functional = formed.functional(variation.spec()) - oval;
      go += functional >= 19.038 ? 1 : 0;
      Verdict verdict = variation.verdict(functional, formed.felt(), formed.ridge());
      good += verdict == Verdict.GAUGES_GOOD ? 1 : 0;
    }
    ThreadOdds odds = odds(thread, Scatter.unknown(), 1);
    assertThat(thread.go().orElseThrow().pitch()).isCloseTo(19.038, within(1e-4));
    assertThat(odds.good()).isCloseTo((double) good / n, within(0.03));
    assertThat(odds.goEnters()).isCloseTo((double) go / n, within(0.03));
    assertThat(odds.good()).isBetween(0.6, 0.95);
  }

  @Test
  void without_scatter_the_odds_are_the_verdict() {
    for (double wear : new double[] {-0.045, 0.02, -0.12}) {
      ThreadAnswer thread = VariedThreads.exact(wear);
      ThreadOdds odds = odds(thread, scatter(0, 0), 1);
      // half a micrometre of the control's rounding is left
      double wanted = thread.verdict() == Verdict.GAUGES_GOOD ? 1 : 0;
      assertThat(odds.good()).as("%s", thread.verdict()).isEqualTo(wanted);
      assertThat(odds.goEnters()).isEqualTo(thread.go().orElseThrow().enters() ? 1 : 0);
      assertThat(odds.noGoStops()).isEqualTo(thread.noGo().orElseThrow().stops() ? 1 : 0);
    }
  }

  @Test
  void plain_plugs_pass_in_the_part_of_the_hole_that_lies_within_their_limits() {
    // 18.37 within 0.04: 18.35 to 18.39, of which the part above the GO plug's 18.376 counts.
    ThreadAnswer thread = VariedThreads.holeOf(18.37, 0.04);
    double plainGo = thread.spec().gauges().orElseThrow().plainGo();
    ThreadOdds odds = odds(thread, Scatter.unknown(), 1);
    assertThat(odds.plainGood()).isCloseTo((18.39 - plainGo) / 0.04, within(2e-3));
    assertThat(odds.good()).isLessThanOrEqualTo(odds.plainGood());
  }

  @Test
  void shares_sum_to_one_and_fall() {
    List<Contributor> list =
        odds(VariedThreads.groundAndBent(-0.045), scatter(0.004, 0.004), 1).contributors();
    double sum = 0;
    double before = 1;
    for (Contributor contributor : list) {
      assertThat(contributor.share()).isBetween(0.0, before);
      before = contributor.share();
      sum += contributor.share();
    }
    assertThat(sum).isCloseTo(1, within(1e-9));
    assertThat(list).extracting(Contributor::name).contains("deflection", "run-out");
  }

  /**
   * Nearly a sum: the spare follows the radius by the closed form 1.983 and the crest by cot 30°.
   */
  @Test
  void far_from_the_other_gauges_shares_are_those_of_a_sum() {
    ThreadAnswer thread = VariedThreads.straight(-0.02);
    List<Contributor> list = odds(thread, scatter(0.006, 0), 1).contributors();
    double[] squares = {
      Math.pow(1.983 * 0.005, 2) / 3, // diameter within 0.02
      Math.pow(1.983 * 0.003, 2) / 3, // circle
      Math.pow(1.732 * 0.005, 2) / 3, // crest
      Math.pow(1.983 * 0.0005, 2) / 3, // resolution
      Math.pow(1.983 * 0.005, 2) * (0.5 + 1 / Math.PI - 8 / (Math.PI * Math.PI)) // run-out
    };
    double all = 0;
    for (double square : squares) {
      all += square;
    }
    assertThat(share(list, "cutter diameter")).isCloseTo(squares[0] / all, within(0.02));
    assertThat(share(list, "machine, radius of circles")).isCloseTo(squares[1] / all, within(0.02));
    assertThat(share(list, "crest width")).isCloseTo(squares[2] / all, within(0.02));
    assertThat(share(list, "run-out")).isCloseTo(squares[4] / all, within(0.01));
  }

  private static double share(List<Contributor> list, String name) {
    return list.stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow().share();
  }

  @Test
  void a_form_left_open_is_the_greatest_contributor() {
    ThreadOdds odds = odds(VariedThreads.formAssumed(-0.01), Scatter.unknown(), 1);
    assertThat(odds.contributors().get(0).name()).isEqualTo("cutter form");
    assertThat(odds.assumptions()).anyMatch(a -> a.contains("form of the teeth open"));
  }

  @Test
  void what_the_sheet_states_is_not_assumed() {
    ThreadOdds odds = odds(VariedThreads.straight(0), scatter(0.004, 0.004), 1);
    assertThat(odds.assumptions()).noneMatch(a -> a.contains("radius of circles within"));
    assertThat(odds.assumptions()).anyMatch(a -> a.contains("cutter diameter within"));
  }

  @Test
  void a_thread_that_no_gauge_starts_in_has_none() {
    assertThat(Odds.of(VariedThreads.wrongHand(), Scatter.unknown(), 1)).isEmpty();
  }
}
