package flankfit.odds;

import flankfit.chance.DriftGrid;
import flankfit.gauge.OffsetAdvice;
import flankfit.odds.GaugingAdvice.Chances;
import flankfit.odds.GaugingAdvice.Trend;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Turns a belief into advice. */
final class Advising {
  /** Chance below which an offset is to be entered anew (1). */
  static final double LEVEL = 0.95;

  /**
   * Entries whose chance falls short of the best by no more count as equal (1); the middle of them
   * is advised. So a little doubt about the sheet does not drag the thread to one gauge's edge.
   */
  private static final double EQUAL = 0.01;

  /** Entries from one that is tried first to the next. */
  private static final int COARSE = 8;

  /** Parts that are looked ahead. */
  private static final int FARTHEST = 1000;

  private final OddsModel model;
  private final FeltSizes sizes;
  private final Belief belief;
  private final Optional<OffsetAdvice> offset;
  private final double[] next;
  private final int nextPart;

  /**
   * @param drifts whether the next part is another one than the last seen
   */
  Advising(
      OddsModel model,
      FeltSizes sizes,
      Belief belief,
      Optional<OffsetAdvice> offset,
      boolean drifts) {
    this.model = model;
    this.sizes = sizes;
    this.belief = belief;
    this.offset = offset;
    this.nextPart = belief.last() + (drifts ? 1 : 0);
    this.next = belief.sizes(nextPart);
  }

  GaugingAdvice advise(List<PartObserved> observed, boolean drifts) {
    double now = offset.map(OffsetAdvice::now).orElse(0.0);
    Optional<GaugingAdvice.Key> key = offset.map(o -> key(o));
    double[] weights = drawWeights();
    return new GaugingAdvice(
        observed,
        pitch(now),
        cutter(weights),
        crest(weights),
        straight(weights),
        chances(now),
        key,
        drifts ? Optional.of(trend(now, key)) : Optional.empty(),
        belief.clashes(),
        belief.midway(),
        assumptions(drifts));
  }

  private Chances chances(double wear) {
    double shift = belief.shift(wear);
    double go = 0;
    double noGo = 0;
    double good = 0;
    for (int i = 0; i < next.length; i++) {
      if (next[i] > 0) {
        double size = FeltSizes.size(i) + shift;
        go += next[i] * sizes.goEnters(size);
        noGo += next[i] * sizes.noGoStops(size);
        good += next[i] * sizes.good(size);
      }
    }
    return new Chances(unit(go), unit(noGo), sizes.plain(), unit(good));
  }

  /** Sums of many parts may pass 1 by a last digit. */
  private static double unit(double chance) {
    return Math.min(1, Math.max(0, chance));
  }

  private double good(double wear) {
    double shift = belief.shift(wear);
    double good = 0;
    for (int i = 0; i < next.length; i++) {
      good += next[i] == 0 ? 0 : next[i] * sizes.good(FeltSizes.size(i) + shift);
    }
    return good;
  }

  private Estimate pitch(double wear) {
    double shift = belief.shift(wear);
    double[] pitches = new double[next.length];
    for (int i = 0; i < pitches.length; i++) {
      pitches[i] = sizes.pitch(FeltSizes.size(i) + shift);
    }
    return Estimate.of(pitches, next);
  }

  private GaugingAdvice.Key key(OffsetAdvice o) {
    double best = best(o);
    double wear =
        model.thread().wearLimit().map(limit -> within(best, limit, o.increment())).orElse(best);
    return new GaugingAdvice.Key(o.register(), o.now(), wear, best, pitch(wear), chances(wear));
  }

  /** The entry nearest to another that the control takes (mm): the chance falls evenly from it. */
  private static double within(double best, double limit, double increment) {
    double most = Math.floor(limit / increment + 1e-9) * increment;
    return Math.abs(best) <= most + increment / 2 ? best : Math.copySign(most, best);
  }

  /** The middle of the entries with the greatest chance (mm, as entered). */
  private double best(OffsetAdvice o) {
    double range = (FeltSizes.WIDEST - FeltSizes.MOST) / Math.abs(belief.shift(o.now() + 1));
    long first = (long) Math.ceil((o.now() - range) / o.increment());
    long last = (long) Math.floor((o.now() + range) / o.increment());
    double[] chance = new double[(int) (last - first + 1)];
    double greatest = 0;
    for (int i = 0; i < chance.length; i += COARSE) {
      chance[i] = good((first + i) * o.increment());
      greatest = Math.max(greatest, chance[i]);
    }
    // Only about the best of these the others are worth a sum.
    double worth = greatest - 10 * EQUAL;
    for (int i = 0; i < chance.length; i++) {
      int before = i / COARSE * COARSE;
      int after = Math.min(before + COARSE, (chance.length - 1) / COARSE * COARSE);
      if (i != before && Math.max(chance[before], chance[after]) >= worth) {
        chance[i] = good((first + i) * o.increment());
        greatest = Math.max(greatest, chance[i]);
      }
    }
    if (greatest < EQUAL) {
      return nearest(o, first, last);
    }
    int from = chance.length;
    int to = 0;
    for (int i = 0; i < chance.length; i++) {
      if (chance[i] >= greatest - EQUAL) {
        from = Math.min(from, i);
        to = i;
      }
    }
    return (first + Math.floorDiv(from + to, 2)) * o.increment();
  }

  /** No entry has a chance: the one that comes nearest to the middle of the limits. */
  private double nearest(OffsetAdvice o, long first, long last) {
    double middle =
        (model.thread().spec().limits().pitchMin() + model.thread().spec().limits().pitchMax()) / 2;
    long best = first;
    double off = Double.POSITIVE_INFINITY;
    for (long i = first; i <= last; i++) {
      double here = Math.abs(pitch(i * o.increment()).value() - middle);
      if (here < off) {
        off = here;
        best = i;
      }
    }
    return best * o.increment();
  }

  private Trend trend(double now, Optional<GaugingAdvice.Key> key) {
    double[] change = {sizes.pitch(0.005), sizes.pitch(-0.005)};
    double perSize = (change[0] - change[1]) / 0.01;
    Estimate perPart =
        new Estimate(
            perSize * belief.grid().meanDrift(),
            Math.abs(perSize) * belief.grid().driftDeviation());
    return new Trend(
        perPart, LEVEL, lasts(now), key.map(k -> lasts(k.wear())).orElse(OptionalInt.empty()));
  }

  /** First part whose chance falls below the level; the search trusts that it goes on falling. */
  private OptionalInt lasts(double wear) {
    if (chanceAt(1, wear) < LEVEL) {
      return OptionalInt.of(belief.last() + 1);
    }
    int good = 1;
    int bad = 2;
    while (chanceAt(bad, wear) >= LEVEL) {
      good = bad;
      bad = 2 * bad;
      if (good >= FARTHEST) {
        return OptionalInt.empty();
      }
    }
    while (bad - good > 1) {
      int middle = (good + bad) / 2;
      if (chanceAt(middle, wear) >= LEVEL) {
        good = middle;
      } else {
        bad = middle;
      }
    }
    return bad <= FARTHEST ? OptionalInt.of(belief.last() + bad) : OptionalInt.empty();
  }

  private double chanceAt(int ahead, double wear) {
    double[] at = belief.sizes(belief.last() + ahead);
    double[] good = sizes.goodWandering(Belief.WANDER * Math.sqrt(ahead));
    double shift = belief.shift(wear);
    double sum = 0;
    for (int i = 0; i < at.length; i++) {
      sum += at[i] == 0 ? 0 : at[i] * FeltSizes.at(good, FeltSizes.size(i) + shift);
    }
    return sum;
  }

  /** The draws weighed anew: how much likelier each one's size has become. */
  private double[] drawWeights() {
    double[] prior = DriftGrid.blurred(belief.bySheet(), 1);
    double[] now = DriftGrid.blurred(belief.sizes(belief.last()), 1);
    double[] weights = new double[sizes.draws()];
    double sum = 0;
    for (int m = 0; m < weights.length; m++) {
      int cell = (int) Math.rint((sizes.sizeOfDraw(m) + FeltSizes.MOST) / FeltSizes.STEP);
      if (cell >= 0 && cell < now.length && prior[cell] > 0) {
        weights[m] = now[cell] / prior[cell];
      }
      sum += weights[m];
    }
    if (!(sum > 0)) {
      // Far from all that the sheet allows: nothing tells the mill's parts from each other.
      Arrays.fill(weights, 1);
    }
    return weights;
  }

  private Estimate cutter(double[] weights) {
    double[] values = new double[weights.length];
    for (int m = 0; m < values.length; m++) {
      double radius = model.thread().cutterRadius() + sizes.made(m).mill().cutter();
      values[m] = 2 * radius;
    }
    return Estimate.of(values, weights);
  }

  private Estimate crest(double[] weights) {
    double[] values = new double[weights.length];
    for (int m = 0; m < values.length; m++) {
      values[m] = sizes.made(m).mill().crest();
    }
    return Estimate.of(values, weights);
  }

  private Optional<Double> straight(double[] weights) {
    if (!model.thread().formAssumed()) {
      return Optional.empty();
    }
    double[] values = new double[weights.length];
    for (int m = 0; m < values.length; m++) {
      values[m] = sizes.made(m).isStraight() ? 1 : 0;
    }
    return Optional.of(Estimate.of(values, weights).value());
  }

  private List<String> assumptions(boolean drifts) {
    List<String> told = new ArrayList<>(model.inputs().assumptions());
    told.add(
        "gauging: one gauge result in two hundred and one measurement in a thousand are taken as"
            + " mistaken, one sheet in fifty as wrong about the mill; gauge and hand are good to"
            + " 0.002 mm (no source)");
    told.add(
        "gauging: what entries have a chance within one in a hundred of the best count as equal;"
            + " their middle is advised");
    told.add(
        "gauging: turns are counted to half a turn, three counts in ten say no more than that the gauge"
            + " stops; one thread in ten narrows by some 0.010 mm for reasons unknown here (no source)");
    told.add(
        "gauging: a size measured without an uncertainty is good to 0.003 mm, ± is taken as two"
            + " standard deviations");
    if (drifts) {
      told.add(
          "trend: even drift of 0.0005 mm a part on the radius either way is usual, and wandering"
              + " of 0.0002 mm (no source); an offset is due below a chance of 95 %");
    }
    return told;
  }
}
