package flankfit.odds;

import java.util.Arrays;
import java.util.Optional;

/**
 * What the turns of a gauge that stopped on its way tell of the size as cut. By what is known of
 * the path a gauge of a size stops at one place; but threads may narrow for reasons that stand in
 * neither program nor sheet, and then a gauge that came far is too large by little.
 *
 * <p>Such a hidden taper takes from the room evenly with the way, up to U where the gauge has to
 * arrive, U exponential. A gauge that is too large by y there goes at least the share τ of its way
 * when {@code U (1 - τ) > y}, so with probability {@code exp(-y / (mean (1 - τ)))}.
 */
final class TurnsSeen {
  /** Turns by which a count is uncertain, either way (1): common practice, no source. */
  static final double HALF = 0.5;

  /** Share of threads with a hidden taper (1): no source. */
  static final double TAPERED = 0.1;

  /** Mean of a hidden taper (mm on the diameter): no source. */
  static final double TAPER = 0.010;

  /**
   * Share of counts that tell no more than that the gauge did not pass (1): a chip or a damaged
   * thread stopped it, where it would have stopped anyway; no source.
   */
  static final double OF_NO_ACCOUNT = 0.3;

  /** Shortest way that is told from none (mm on the radius). */
  private static final double NONE = 1e-6;

  private final double from;
  private final double share;
  private final double[] odds;
  private final double[] other;

  private TurnsSeen(double from, double share, double[] odds, double[] other) {
    this.from = from;
    this.share = share;
    this.odds = odds;
    this.other = other;
  }

  /** Odds over the sizes that a gauge goes at least so many turns. */
  private interface Goes {
    double[] atLeast(double turns);
  }

  /**
   * What an observation's turns tell; empty when it tells none, or no more than that a gauge passed
   * or did not.
   *
   * @param allowed turns that the rule allows a NO-GO gauge (1)
   */
  static Optional<TurnsSeen> of(Observation seen, FeltSizes sizes, double allowed) {
    if (seen instanceof Observation.Go go && !go.enters() && go.turns().isPresent()) {
      return of(go.turns().getAsDouble(), sizes.wantedTurns(), sizes.goPasses(), sizes::goTurns);
    }
    // Beyond the turns allowed nobody turns on to see where it stops.
    if (seen instanceof Observation.NoGo noGo
        && noGo.turns().isPresent()
        && noGo.accepted(allowed)) {
      return of(noGo.turns().getAsDouble(), allowed, sizes.noGoRuns(), sizes::noGoTurns);
    }
    return Optional.empty();
  }

  private static Optional<TurnsSeen> of(double turns, double whole, double[] passes, Goes goes) {
    double from = Math.max(0, turns - HALF);
    double to = Math.min(whole, turns + HALF);
    if (from >= to) {
      return Optional.empty();
    }
    double[] known =
        less(
            from == 0 ? ones(passes) : FeltSizes.felt(most(passes, goes.atLeast(from))),
            to == whole ? FeltSizes.felt(passes) : FeltSizes.felt(most(passes, goes.atLeast(to))));
    double[] hidden = less(tapered(passes, from / whole), tapered(passes, to / whole));
    double[] stops = less(ones(passes), FeltSizes.felt(passes));
    double share = (to - from) / whole;
    double[] other = new double[passes.length];
    for (int i = 0; i < other.length; i++) {
      other[i] = TAPERED * hidden[i] + OF_NO_ACCOUNT * share * stops[i];
    }
    double[] odds = new double[passes.length];
    for (int i = 0; i < odds.length; i++) {
      odds[i] = (1 - TAPERED - OF_NO_ACCOUNT) * known[i] + other[i];
    }
    return Optional.of(new TurnsSeen(from, share, odds, other));
  }

  private static double[] ones(double[] like) {
    double[] ones = new double[like.length];
    Arrays.fill(ones, 1);
    return ones;
  }

  private static double[] less(double[] a, double[] b) {
    double[] less = new double[a.length];
    for (int i = 0; i < less.length; i++) {
      less[i] = Math.max(0, a[i] - b[i]);
    }
    return less;
  }

  private static double[] most(double[] a, double[] b) {
    double[] most = new double[a.length];
    for (int i = 0; i < most.length; i++) {
      most[i] = Math.max(a[i], b[i]);
    }
    return most;
  }

  /** Odds that a gauge goes a share of its way under a hidden taper. */
  private static double[] tapered(double[] passes, double share) {
    if (share <= 0) {
      return ones(passes);
    }
    double mean = Math.max(NONE, TAPER / 2 * (1 - share));
    double fall = StrictMath.exp(-FeltSizes.STEP / mean);
    double[] goes = passes.clone();
    double beyond = 0;
    for (int i = goes.length - 2; i >= 0; i--) {
      beyond = (beyond + passes[i + 1] - passes[i]) * fall;
      goes[i] += beyond;
    }
    return FeltSizes.felt(goes);
  }

  /** Probability of the turns over all sizes of a part (1). */
  double[] odds() {
    return odds.clone();
  }

  /** Probability of the turns for a size (1). */
  double at(double size) {
    return FeltSizes.at(odds, size);
  }

  /** The part of it for which nothing in program and sheet is the reason (1). */
  double unexplained(double size) {
    return FeltSizes.at(other, size);
  }

  /** Share of all turns that these are: how likely a mistaken count hits them (1). */
  double share() {
    return share;
  }

  /** Whether the gauge came away from the face. */
  boolean isMidway() {
    return from > 0;
  }
}
