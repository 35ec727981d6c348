package flankfit.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.gauge.Deviation;
import flankfit.gauge.MovedThreads;
import flankfit.gauge.MovedThreads.Kind;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.ThreadVariation;
import flankfit.gauge.ThreadVariation.Spare;
import flankfit.gauge.Verdict;
import flankfit.setup.Scatter;
import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The odds' gauges against threads that are made and gauged anew, on their paths as moved. */
class MovedResponseProperties {
  private static final int DRAWS = 4;

  /** Each so many-th draw is made anew as a whole, hole and width of the teeth included. */
  private static final int ANEW = 4;

  /** A micrometre, a twentieth of what the plug itself may be off (mm). */
  private static final double NEAR = 1e-3;

  /** A gauge refused by more only has to be refused: its crest may meet the face first (mm). */
  private static final double FAR = 0.05;

  private static OddsModel model(ThreadAnswer thread) {
    ThreadVariation variation = thread.variation().orElseThrow();
    return OddsModel.of(variation, Scatter.unknown(), 0).orElseThrow();
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void without_deviations_it_is_the_verdict(Kind kind) {
    ThreadAnswer thread = MovedThreads.of(kind);
    Spare spare = model(thread).gauges().spare(Deviation.none(), 0);
    assertThat(thread.real()).isPresent();
    assertThat(spare.go() >= 0).isEqualTo(thread.go().orElseThrow().enters());
    assertThat(spare.noGo() >= 0).isEqualTo(thread.noGo().orElseThrow().stops());
    assertThat(spare.least() >= 0).isEqualTo(thread.verdict() == Verdict.GAUGES_GOOD);
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void draws_are_within_a_micrometre_of_threads_gauged_anew(Kind kind) {
    ThreadAnswer thread = MovedThreads.of(kind);
    OddsModel model = model(thread);
    double[][] points = ThreadOdds.points(model, DRAWS, 5);
    double[] off = new double[DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      OddsModel.Made made = model.made(points[i]);
      boolean anew = i % ANEW == 0 && !model.thread().bends();
      Deviation d =
          new Deviation(
              made.path(),
              made.mill().cutter(),
              anew ? made.mill().crest() : 0,
              made.mill().bending(),
              anew ? made.hole() : 0);
      Spare fast = model.gauges().spare(d, 0);
      Spare exact =
          anew
              ? MovedThreads.exact(variation(MovedThreads.of(kind, d)), Deviation.none())
              : MovedThreads.exact(variation(thread), d);
      off[i] = Math.max(off(fast.go(), exact.go()), off(fast.noGo(), exact.noGo()));
      assertThat(fast.plain()).as("%s", d).isCloseTo(exact.plain(), within(NEAR));
    }
    Arrays.sort(off);
    assertThat(off[(int) (0.95 * (DRAWS - 1))]).isLessThan(NEAR);
    assertThat(off[DRAWS - 1]).isLessThan(2 * NEAR);
  }

  private static ThreadVariation variation(ThreadAnswer thread) {
    return thread.variation().orElseThrow();
  }

  private static double off(double fast, double exact) {
    return exact < -FAR && fast < 0 ? 0 : Math.abs(fast - exact);
  }
}
