package flankfit.odds;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.gauge.MovedThreads;
import flankfit.gauge.MovedThreads.Kind;
import flankfit.gauge.ThreadAnswer;
import flankfit.setup.Scatter;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Bayes' rule against simulated parts: mills are drawn as the sheet says, parts are gauged by what
 * each gauge has to spare on the path as moved, and what is then believed must hold the truth as
 * often as it claims.
 */
class CoverageProperties {
  private static final int RUNS = 320;
  private static final int BATCHES = 40;
  private static final int PARTS = 4;
  private static final double PITCH_DEVIATION = 0.003;

  /** The lead error costs some 0.03 mm, so that GO stops on its way at about this entry. */
  private static final Setting LEAD = new Setting(Kind.LEAD_ERROR, -0.037);

  private final Random random = new Random(20261128);

  /** A thread, its model and what is common to all beliefs about it. */
  private static final class Setting {
    private final OddsModel model;
    private final FeltSizes sizes;
    private final double per;
    private final double wear;

    Setting(Kind kind, double wear) {
      ThreadAnswer thread = MovedThreads.advised(kind, wear);
      this.model =
          OddsModel.of(thread.variation().orElseThrow(), Scatter.unknown(), 0)
              .orElseThrow()
              .forAdvice();
      this.sizes = new FeltSizes(model, 7);
      this.per = thread.variation().orElseThrow().depthPerEntry().orElseThrow();
      this.wear = wear;
    }

    Belief belief(boolean drifts) {
      return new Belief(sizes, per, wear, 2, 1, drifts);
    }
  }

  private OddsModel.Made drawn(OddsModel model) {
    return model.made(random.doubles(model.dimension()).toArray());
  }

  /** What gauging a part shows; the hand is as unsure as the belief takes it to be. */
  private List<Observation> gauged(Setting in, OddsModel.Made part, double deeper) {
    double feel = FeltSizes.FEEL * random.nextGaussian();
    List<Observation> seen = new ArrayList<>();
    boolean enters = part.spare(deeper).go() + feel >= 0;
    OptionalDouble turns = enters ? OptionalDouble.empty() : turns(in, part, deeper, feel);
    seen.add(new Observation.Go(enters, turns));
    double noGo = part.spare(deeper).noGo() + FeltSizes.FEEL * random.nextGaussian();
    seen.add(new Observation.NoGo(noGo >= 0, OptionalDouble.empty()));
    return seen;
  }

  /** Where the GO gauge stops, counted to half a turn either way. */
  private OptionalDouble turns(Setting in, OddsModel.Made part, double deeper, double feel) {
    double lead = in.model.thread().spec().lead();
    double gone = 0;
    while (part.goTo((gone + 0.25) * lead, deeper) + feel >= 0) {
      gone += 0.25;
    }
    double counted = gone + TurnsSeen.HALF * (2 * random.nextDouble() - 1);
    return OptionalDouble.of(Math.max(0, Math.rint(2 * counted) / 2));
  }

  private Observation measured(OddsModel.Made part, double deeper) {
    double pitch = part.at(deeper).simple() + PITCH_DEVIATION * random.nextGaussian();
    return new Observation.Pitch(pitch, OptionalDouble.empty());
  }

  /** Whether a size lies in the middle 90 % of what is believed. */
  private static boolean holds(double[] weights, double size) {
    double below = 0;
    int cell = (int) Math.rint((size + FeltSizes.MOST) / FeltSizes.STEP);
    for (int i = 0; i < cell; i++) {
      below += weights[i];
    }
    double middle = below + weights[cell] / 2;
    return middle >= 0.05 && middle <= 0.95;
  }

  private double coverage(Setting in, boolean measure) {
    int held = 0;
    for (int run = 0; run < RUNS; run++) {
      OddsModel.Made part = drawn(in.model);
      List<Observation> seen = gauged(in, part, 0);
      if (measure) {
        seen.add(measured(part, 0));
      }
      Belief belief = in.belief(false);
      belief.learn(new PartObserved(1, in.wear, seen));
      held += holds(belief.sizes(1), in.sizes.sizeOf(part.ofMill())) ? 1 : 0;
    }
    return (double) held / RUNS;
  }

  @Test
  void nine_intervals_in_ten_hold_the_size_after_gauges_near_their_limit() {
    double goes = LEAD.sizes.goEnters(0);
    assertThat(goes).as("in doubt").isBetween(0.1, 0.9);
    assertThat(coverage(LEAD, false)).as("gauges").isBetween(0.85, 0.95);
    assertThat(coverage(LEAD, true)).as("gauges and a size").isBetween(0.85, 0.95);
  }

  @Test
  void nine_intervals_in_ten_hold_the_size_where_the_mill_drifts() {
    Setting in = new Setting(Kind.ARC_ENTRY, -0.02);
    int held = 0;
    for (int run = 0; run < BATCHES; run++) {
      Belief belief = in.belief(true);
      double drift = Belief.DRIFT * random.nextGaussian();
      double deeper = 0;
      double[] mill = random.doubles(in.model.dimension()).toArray();
      double size = 0;
      for (int part = 1; part <= PARTS; part++) {
        double[] point = mill.clone();
        for (int k = 0; k < point.length; k++) {
          if (!in.model.list().get(k).kind().stays()) {
            point[k] = random.nextDouble();
          }
        }
        OddsModel.Made made = in.model.made(point);
        List<Observation> seen = gauged(in, made, deeper);
        seen.add(measured(made, deeper));
        belief.learn(new PartObserved(part, in.wear, seen));
        size = in.sizes.sizeOf(made.ofMill()) + deeper;
        deeper += drift + Belief.WANDER * random.nextGaussian();
      }
      held += holds(belief.sizes(PARTS), size) ? 1 : 0;
    }
    // 40 batches: two standard deviations are 9 in a hundred
    assertThat((double) held / BATCHES).isBetween(0.8, 1.0);
  }

  @Test
  void advice_does_not_contradict_what_was_seen() {
    Setting in = LEAD;
    double before = in.sizes.goEnters(0);
    for (String turns : List.of("", ":0", ":3", ":8")) {
      Belief belief = in.belief(false);
      belief.learn(
          new PartObserved(
              1, in.wear, List.of(Observation.of("go=stops" + turns, LengthUnit.MILLIMETRE))));
      assertThat(goEnters(in, belief)).as(turns).isLessThan(before);
    }
    Belief enters = in.belief(false);
    enters.learn(
        new PartObserved(1, in.wear, List.of(Observation.of("go=enters", LengthUnit.MILLIMETRE))));
    assertThat(goEnters(in, enters)).isGreaterThan(before);
  }

  private static double goEnters(Setting in, Belief belief) {
    double[] weights = belief.sizes(1);
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i] * in.sizes.goEnters(FeltSizes.size(i));
    }
    return sum;
  }
}
