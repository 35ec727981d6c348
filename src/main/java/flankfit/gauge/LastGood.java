package flankfit.gauge;

import flankfit.gauge.Trials.Reading;
import java.util.function.LongFunction;

/**
 * Finds the last step at which something is good before it is not: margins tell how far to go, the
 * readings themselves decide.
 */
final class LastGood {
  /** Trials at most; a search that doubles its stride and then halves needs fewer. */
  private static final int MOST_TRIALS = 40;

  private final LongFunction<Reading> at;
  private final int towardsBad;
  private final double perStep;
  private final long most;
  private long good;
  private long bad;
  private double goodMargin = Double.NaN;
  private double badMargin = Double.NaN;
  private boolean isGoodKnown;
  private boolean isBadKnown;

  /**
   * @param at reading at a step
   * @param towardsBad 1 when steps above are worse, -1 when those below are
   * @param perStep change of the margin in a step, above 0
   * @param most steps from the first that are looked at
   */
  LastGood(LongFunction<Reading> at, int towardsBad, double perStep, long most) {
    this.at = at;
    this.towardsBad = towardsBad;
    this.perStep = perStep;
    this.most = most;
  }

  /** Searches about a first step. */
  LastGood from(long first) {
    take(first);
    for (int trial = 1; trial < MOST_TRIALS && !isFound(); trial++) {
      long next = next(trial);
      if (Math.abs(next - first) > most) {
        return this;
      }
      take(next);
    }
    return this;
  }

  /** Whether there is a last good step, and the next one was seen to be bad. */
  boolean isFound() {
    return isGoodKnown && isBadKnown && Math.abs(good - bad) == 1;
  }

  /** The last good step. */
  long good() {
    return good;
  }

  /** Where between the last good step and the next the margin is used up (steps). */
  double limit() {
    double share = goodMargin / (goodMargin - badMargin);
    return good + towardsBad * (share >= 0 && share <= 1 ? share : 0);
  }

  private void take(long step) {
    Reading reading = at.apply(step);
    if (reading.passed()) {
      good = step;
      goodMargin = reading.margin();
      isGoodKnown = true;
    } else {
      bad = step;
      badMargin = reading.margin();
      isBadKnown = true;
    }
  }

  private long next(int trial) {
    // doubles from trial to trial where no margin tells how far it is
    long stride = 1L << Math.min(trial - 1, 40);
    if (!isBadKnown) {
      return good + towardsBad * Math.max(stride, (long) (goodMargin / perStep));
    }
    if (!isGoodKnown) {
      return bad - towardsBad * Math.max(stride, (long) Math.ceil(-badMargin / perStep));
    }
    long apart = Math.abs(bad - good);
    double share = goodMargin / (goodMargin - badMargin);
    boolean halve = trial % 4 == 3 || !(share >= 0 && share <= 1);
    long inside = halve ? apart / 2 : (long) Math.floor(share * apart);
    return good + towardsBad * Math.max(1, Math.min(apart - 1, inside));
  }
}
