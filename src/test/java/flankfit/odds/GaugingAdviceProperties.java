package flankfit.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.gauge.OffsetAdvice;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.VariedThreads;
import flankfit.setup.Scatter;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;

/** What observations make believe, against plain sums, closed forms and the exact solver. */
class GaugingAdviceProperties {
  private static final Scatter EXACT =
      new Scatter(Optional.of(0.0), Optional.of(0.0), Optional.of(0.0));

  private static PartObserved part(int number, ThreadAnswer thread, String... seen) {
    double wear = thread.offset().map(OffsetAdvice::now).orElse(0.0);
    List<Observation> observations =
        Stream.of(seen).map(s -> Observation.of(s, LengthUnit.MILLIMETRE)).toList();
    return new PartObserved(number, wear, observations);
  }

  private static GaugingAdvice advice(ThreadAnswer thread, Scatter scatter, String... seen) {
    return Odds.of(thread, scatter, 1).orElseThrow().advice(List.of(part(1, thread, seen)));
  }

  private static double key(GaugingAdvice advice) {
    return advice.key().orElseThrow().wear();
  }

  /** Middle between the entries at which GO just enters and NO-GO just stops, by the solver. */
  private static double middle(ThreadAnswer thread) {
    OffsetAdvice offset = thread.offset().orElseThrow();
    return (offset.toGoLimit() + offset.toNoGoLimit()) / 2;
  }

  @Test
  void a_size_measured_finely_leads_to_the_solvers_entry_for_that_very_mill() {
    for (double diameter : new double[] {13.97, 14.0, 14.004, 14.05}) {
      ThreadAnswer mill = VariedThreads.ofMill(diameter, 0);
      double pitch = mill.finished().orElseThrow().pitchSimple();
      ThreadAnswer sheet = VariedThreads.diameterOpen(0, 0.15);
      GaugingAdvice advice = advice(sheet, EXACT, "pitch=" + pitch + "±0.0002");
      assertThat(key(advice)).as("%s", diameter).isCloseTo(middle(mill), within(0.0015));
      assertThat(advice.key().orElseThrow().chances().good()).isGreaterThan(0.99);
    }
  }

  /**
   * One input, the diameter: the belief after GO stops or enters, by a plain sum over sizes ten
   * times as fine, with thresholds of the exact solver.
   */
  @Test
  void one_input_agrees_with_a_plain_sum() {
    for (String seen : List.of("go=stops", "go=enters")) {
      // the GO limit lies within what the diameter's tolerance allows
      ThreadAnswer thread = VariedThreads.diameterOpen(0.001, 0.02);
      GaugingAdvice advice = advice(thread, EXACT, seen);
      Plain plain = new Plain(thread, 0, 0.0005);
      plain.learn(seen.equals("go=enters"));
      assertThat(advice.pitch().value()).isCloseTo(plain.mean(), within(3e-4));
      assertThat(advice.pitch().deviation()).isCloseTo(plain.deviation(), within(6e-4));
      assertThat(advice.asItIs().goEnters()).isCloseTo(plain.goEnters(), within(0.01));
    }
  }

  /** Two inputs, the diameter and the machine's circles, which are another on each part. */
  @Test
  void two_inputs_agree_with_a_plain_sum() {
    Scatter circles = new Scatter(Optional.of(0.006), Optional.of(0.0), Optional.of(0.0));
    for (String seen : List.of("go=stops", "go=enters")) {
      ThreadAnswer thread = VariedThreads.diameterOpen(0.001, 0.02);
      GaugingAdvice advice = advice(thread, circles, seen);
      Plain plain = new Plain(thread, 0.003, 0.0005);
      plain.learn(seen.equals("go=enters"));
      assertThat(advice.pitch().value()).isCloseTo(plain.mean(), within(5e-4));
      assertThat(advice.pitch().deviation()).isCloseTo(plain.deviation(), within(5e-4));
      assertThat(advice.asItIs().goEnters()).isCloseTo(plain.goEnters(), within(0.015));
    }
  }

  /** Bayes' rule written down plainly: a sum over sizes; the path by a sum over its own spread. */
  private static final class Plain {
    private static final int N = 30_001;
    private static final double STEP = 2e-5;
    private static final int PATHS = 41;

    private final double threshold;
    private final double slope;
    private final double pitch;
    private final double circle;
    private final double rounding;
    private final double[] weight = new double[N];

    Plain(ThreadAnswer thread, double circle, double rounding) {
      OffsetAdvice offset = thread.offset().orElseThrow();
      // more wear makes this hole smaller by as much on the radius of the path
      this.threshold = offset.now() - offset.toGoLimit();
      this.slope = Math.abs(offset.sensitivity());
      this.pitch = thread.finished().orElseThrow().pitchSimple();
      this.circle = circle;
      this.rounding = rounding;
      double sum = 0;
      for (int i = 0; i < N; i++) {
        double sheet = Math.abs(size(i)) <= 0.005 ? STEP / 0.01 : 0;
        // a normal of 0.05 about an even spread of half width 0.005
        double off =
            (Erf.erf((size(i) + 0.005) / 0.05 / Math.sqrt(2))
                    - Erf.erf((size(i) - 0.005) / 0.05 / Math.sqrt(2)))
                / 2
                / 0.01
                * STEP;
        weight[i] = 0.98 * sheet + 0.02 * (0.9 * off + 0.1 / N);
        sum += weight[i];
      }
      for (int i = 0; i < N; i++) {
        weight[i] /= sum;
      }
    }

    private static double size(int i) {
      return -0.3 + i * STEP;
    }

    /** Odds that GO enters, with a feel of so much on the radius (mm). */
    private double enters(double size, double feel) {
      double sum = 0;
      for (int a = 0; a < PATHS; a++) {
        for (int b = 0; b < PATHS; b++) {
          double path = circle * side(a) + rounding * side(b);
          double beyond = size + path - threshold;
          sum += feel > 0 ? Erf.erfc(-beyond / feel / Math.sqrt(2)) / 2 : beyond >= 0 ? 1 : 0;
        }
      }
      return sum / PATHS / PATHS;
    }

    private static double side(int i) {
      return 2.0 * (i + 0.5) / PATHS - 1;
    }

    void learn(boolean entered) {
      double sum = 0;
      for (int i = 0; i < N; i++) {
        double odds =
            Math.abs(size(i) - threshold) > 0.02
                ? (size(i) > threshold ? 1 : 0)
                : enters(size(i), 0.001);
        weight[i] *= 0.995 * (entered ? odds : 1 - odds) + 0.0025;
        sum += weight[i];
      }
      for (int i = 0; i < N; i++) {
        weight[i] /= sum;
      }
    }

    double mean() {
      double mean = 0;
      for (int i = 0; i < N; i++) {
        mean += weight[i] * (pitch + slope * size(i));
      }
      return mean;
    }

    double deviation() {
      double mean = mean();
      double square = 0;
      for (int i = 0; i < N; i++) {
        double off = pitch + slope * size(i) - mean;
        square += weight[i] * off * off;
      }
      return Math.sqrt(square);
    }

    double goEnters() {
      double sum = 0;
      for (int i = 0; i < N; i++) {
        double odds =
            Math.abs(size(i) - threshold) > 0.02
                ? (size(i) > threshold ? 1 : 0)
                : enters(size(i), 0);
        sum += weight[i] * odds;
      }
      return sum;
    }
  }

  /** By the law of total variance: weighed by how likely each outcome is, no belief gets wider. */
  @Test
  void an_observation_does_not_widen_the_belief_on_average() {
    for (ThreadAnswer thread :
        List.of(
            VariedThreads.straight(0), VariedThreads.boss(-0.08), VariedThreads.formAssumed(0))) {
      OddsModel model =
          OddsModel.of(thread.variation().orElseThrow(), Scatter.unknown(), 0.05).orElseThrow();
      FeltSizes sizes = new FeltSizes(model, 1);
      double before = variance(belief(sizes, thread).sizes(1));
      for (List<String> outcomes :
          List.of(List.of("go=enters", "go=stops"), List.of("no-go=stops", "no-go=enters"))) {
        double after = 0;
        double all = 0;
        for (String seen : outcomes) {
          Belief belief = belief(sizes, thread);
          Observation observation = Observation.of(seen, LengthUnit.MILLIMETRE);
          double wear = thread.offset().orElseThrow().now();
          double chance = belief.grid().learn(belief.likelihood(List.of(observation), wear), 0);
          after += chance * variance(belief.sizes(1));
          all += chance;
        }
        assertThat(all).as("all outcomes").isCloseTo(1, within(1e-9));
        assertThat(after).isLessThanOrEqualTo(before * (1 + 1e-9));
      }
    }
  }

  private static Belief belief(FeltSizes sizes, ThreadAnswer thread) {
    double per = thread.variation().orElseThrow().depthPerEntry().orElseThrow();
    return new Belief(sizes, per, thread.offset().orElseThrow().now(), 2, 1, false);
  }

  private static double variance(double[] weights) {
    double[] values = new double[weights.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = FeltSizes.size(i);
    }
    double deviation = Estimate.of(values, weights).deviation();
    return deviation * deviation;
  }

  @Test
  void to_see_what_was_expected_hardly_moves_the_advice() {
    ThreadAnswer thread = VariedThreads.straightAndBent(-0.04);
    double expected = advice(thread, Scatter.unknown(), "pitch=19.1±1").pitch().value();
    double vague = key(advice(thread, Scatter.unknown(), "pitch=" + expected + "±0.5"));
    double fine = key(advice(thread, Scatter.unknown(), "pitch=" + expected + "±0.002"));
    assertThat(fine).isCloseTo(vague, within(0.0031));
    assertThat(key(advice(thread, Scatter.unknown(), "go=enters", "no-go=stops")))
        .isCloseTo(vague, within(0.0031));
  }

  @Test
  void what_refuses_go_moves_the_surface_into_the_metal_and_no_go_out_of_it() {
    for (ThreadAnswer thread :
        List.of(
            VariedThreads.straight(-0.03),
            VariedThreads.outwards(0.03),
            VariedThreads.boss(-0.09),
            VariedThreads.groundAndBent(-0.04))) {
      double per = thread.variation().orElseThrow().depthPerEntry().orElseThrow();
      double good = per * key(advice(thread, Scatter.unknown(), "go=enters", "no-go=stops"));
      double tight = per * key(advice(thread, Scatter.unknown(), "go=stops:3"));
      double loose = per * key(advice(thread, Scatter.unknown(), "no-go=turns:9"));
      assertThat(tight).as(thread.designation()).isGreaterThan(good + 0.005);
      assertThat(loose).as(thread.designation()).isLessThan(good - 0.005);
    }
  }

  @Test
  void a_register_of_the_other_sign_gets_the_same_with_the_other_sign() {
    for (String seen : List.of("go=stops", "pitch=19.09±0.004", "no-go=enters")) {
      GaugingAdvice inwards = advice(VariedThreads.straight(-0.02), Scatter.unknown(), seen);
      GaugingAdvice outwards = advice(VariedThreads.outwards(0.02), Scatter.unknown(), seen);
      assertThat(key(outwards)).isCloseTo(-key(inwards), within(0.0011));
      assertThat(outwards.pitch().value()).isCloseTo(inwards.pitch().value(), within(1e-6));
    }
  }

  @Test
  void a_mill_left_open_is_told_by_what_it_cuts() {
    ThreadAnswer thread = VariedThreads.formAssumed(0);
    double ground = thread.finished().orElseThrow().pitchSimple();
    // A straight V cuts this thread 0.039 mm large (closed form of the involute helicoid).
    assertThat(advice(thread, Scatter.unknown(), "pitch=" + (ground + 0.045)).straight().get())
        .isGreaterThan(0.95);
    assertThat(advice(thread, Scatter.unknown(), "pitch=" + ground).straight().get())
        .isLessThan(0.05);
  }

  @Test
  void contradictions_name_each_other() {
    ThreadAnswer thread = VariedThreads.straight(-0.03);
    GaugingAdvice both = advice(thread, Scatter.unknown(), "go=stops", "no-go=enters");
    assertThat(both.clashes()).isNotEmpty();
    GaugingAdvice pitches =
        advice(thread, Scatter.unknown(), "pitch=19.125±0.004", "go=enters", "pitch=19.18±0.004");
    assertThat(pitches.clashes())
        .anySatisfy(
            clash -> {
              assertThat(clash.observation().text()).startsWith("pitch=19.18");
              assertThat(clash.with()).isNotBlank();
            });
    GaugingAdvice plain = advice(thread, Scatter.unknown(), "go=enters", "no-go=stops");
    assertThat(plain.clashes()).isEmpty();
    assertThat(plain.asItIs().good()).isGreaterThan(0.98);
  }

  @Test
  void one_that_clashes_with_the_sheet_says_so() {
    GaugingAdvice advice = advice(VariedThreads.straight(-0.04), EXACT, "pitch=19.3±0.004");
    assertThat(advice.clashes()).hasSize(1);
    assertThat(advice.clashes().get(0).with()).contains("the sheet");
    assertThat(advice.pitch().value()).isCloseTo(19.3, within(0.01));
  }

  @Test
  void advice_stays_within_the_controls_limit_and_says_that_it_does() {
    ThreadAnswer thread = VariedThreads.limited(0, 0.02);
    GaugingAdvice.Key key = advice(thread, Scatter.unknown(), "go=stops").key().orElseThrow();
    assertThat(key.limited()).isTrue();
    assertThat(key.wear()).isBetween(-0.02 - 1e-12, -0.019);
    assertThat(Math.abs(key.best())).isGreaterThan(0.03);
  }

  @Test
  void without_a_register_there_is_nothing_to_key_in() {
    GaugingAdvice advice = advice(VariedThreads.noRegister(), Scatter.unknown(), "go=enters");
    assertThat(advice.key()).isEmpty();
    // 0.81 by the sheet alone
    assertThat(advice.asItIs().goEnters()).isGreaterThan(0.84);
  }

  @Test
  void wear_shows_as_a_trend_and_says_when_to_enter_anew() {
    ThreadAnswer thread = VariedThreads.straight(-0.03);
    double start = thread.finished().orElseThrow().pitchSimple();
    Random random = new Random(11);
    List<PartObserved> parts = new ArrayList<>();
    double falls = 0.0008;
    for (int n = 1; n <= 31; n += 3) {
      double pitch = start - falls * (n - 1) + 0.001 * random.nextGaussian();
      parts.add(part(n, thread, "pitch=" + pitch + "±0.004", "go=enters"));
    }
    Odds odds = Odds.of(thread, Scatter.unknown(), 1).orElseThrow();
    GaugingAdvice advice = odds.advice(parts);
    GaugingAdvice.Trend trend = advice.trend().orElseThrow();
    assertThat(trend.perPart().value())
        .isCloseTo(-falls, within(2 * trend.perPart().deviation() + 5e-5));
    assertThat(trend.perPart().deviation()).isBetween(5e-5, 4e-4);
    // Left alone, the pitch diameter comes near the GO plug's 19.038 (straight flanks: its crest
    // decides some micrometres earlier).
    int due = trend.reenterAt().orElseThrow();
    double left = start - falls * (due - 1) - 19.038;
    assertThat(left).isBetween(-0.005, 0.05);
    int later = trend.keyedLasts().orElseThrow();
    assertThat(later).isGreaterThan(due);
    List<PartObserved> otherWay = new ArrayList<>(parts);
    Collections.reverse(otherWay);
    assertThat(odds.advice(otherWay)).isEqualTo(advice);
  }

  @Test
  void a_register_entered_anew_on_the_way_does_not_look_like_wear() {
    ThreadAnswer before = VariedThreads.straight(-0.03);
    ThreadAnswer after = VariedThreads.straight(-0.05);
    List<PartObserved> parts = new ArrayList<>();
    for (int n = 1; n <= 20; n++) {
      ThreadAnswer now = n <= 10 ? before : after;
      double pitch = now.finished().orElseThrow().pitchSimple();
      parts.add(part(n, now, "pitch=" + pitch + "±0.004"));
    }
    GaugingAdvice advice = Odds.of(after, Scatter.unknown(), 1).orElseThrow().advice(parts);
    GaugingAdvice.Trend trend = advice.trend().orElseThrow();
    assertThat(Math.abs(trend.perPart().value())).isLessThan(1e-4);
    assertThat(advice.clashes()).isEmpty();
  }
}
