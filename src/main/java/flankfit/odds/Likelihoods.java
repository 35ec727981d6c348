package flankfit.odds;

import flankfit.odds.Input.Kind;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How likely observations are for the size that a part was cut with, its own path included, as
 * tables over all sizes. All that is seen on one part shares its path, which is known no better for
 * being seen twice; so they are multiplied first, and the path's scatter is taken over the product.
 */
final class Likelihoods {
  /** Share of observations that are simply mistaken (1): burr, dirt, misread; no source. */
  static final double MISTAKEN = 0.005;

  /** The same of measured sizes (1); no source. */
  static final double MISMEASURED = 0.001;

  /** Diameters over which a mistaken size may lie anywhere (mm). */
  private static final double ANYWHERE = 2 * FeltSizes.MOST;

  private final FeltSizes sizes;
  private final double turnsAllowed;
  private final double[] goPasses;
  private final double[] noGoRuns;
  private final double[] path;
  private final Map<Observation, Optional<TurnsSeen>> turns = new HashMap<>();

  /**
   * @param turnsAllowed turns that the rule allows a NO-GO gauge (1)
   */
  Likelihoods(FeltSizes sizes, double turnsAllowed) {
    this.sizes = sizes;
    this.turnsAllowed = turnsAllowed;
    this.goPasses = FeltSizes.felt(sizes.goPasses());
    this.noGoRuns = FeltSizes.felt(sizes.noGoRuns());
    this.path = spread(cells(sizes.half(Kind.RESOLUTION)), cells(sizes.half(Kind.CIRCLE)));
  }

  /** Shares of the cells about 0 that an even spread covers. */
  private static double[] cells(double half) {
    double reach = Math.max(half / FeltSizes.STEP, 1e-9);
    int most = (int) Math.ceil(reach + 0.5);
    double[] cells = new double[2 * most + 1];
    for (int k = -most; k <= most; k++) {
      double inside = Math.min(k + 0.5, reach) - Math.max(k - 0.5, -reach);
      cells[k + most] = Math.max(0, inside) / (2 * reach);
    }
    return cells;
  }

  /** The shares of the sum of two spreads. */
  private static double[] spread(double[] a, double[] b) {
    double[] both = new double[a.length + b.length - 1];
    for (int i = 0; i < a.length; i++) {
      for (int k = 0; k < b.length; k++) {
        both[i + k] += a[i] * b[k];
      }
    }
    return both;
  }

  /** Likelihood over sizes of all that was seen on one part, its path being any; never 0. */
  double[] of(List<Observation> seen) {
    double[] all = sizes.each(size -> 1);
    for (Observation observation : seen) {
      double[] one = seen(observation);
      for (int i = 0; i < all.length; i++) {
        all[i] *= one[i];
      }
    }
    return overPath(all);
  }

  /** The expected value over the paths that parts of one register entry have. */
  private double[] overPath(double[] table) {
    int half = path.length / 2;
    int last = table.length - 1;
    double[] out = new double[table.length];
    for (int i = 0; i <= last; i++) {
      for (int k = -half; k <= half; k++) {
        out[i] += path[k + half] * table[Math.min(last, Math.max(0, i + k))];
      }
    }
    return out;
  }

  /** Likelihood of one observation for the size that the part has. */
  private double[] seen(Observation observation) {
    if (observation instanceof Observation.Pitch pitch) {
      double centre = sizes.sizeOf(pitch.diameter());
      double slope = sizes.slope(centre);
      double deviation = Math.max(FeltSizes.STEP, pitch.uncertainty() / slope);
      double height = 1 / (deviation * slope * Math.sqrt(2 * Math.PI));
      return sizes.each(
          size -> {
            double z = (size - centre) / deviation;
            return (1 - MISMEASURED) * height * StrictMath.exp(-z * z / 2) + MISMEASURED / ANYWHERE;
          });
    }
    Optional<TurnsSeen> counted = turns(observation);
    double mistaken = MISTAKEN / 2 * counted.map(TurnsSeen::share).orElse(1.0);
    double[] trusted = counted.map(TurnsSeen::odds).orElseGet(() -> passing(observation));
    return Arrays.stream(trusted).map(odds -> (1 - MISTAKEN) * odds + mistaken).toArray();
  }

  /** Odds over sizes that a gauge passes or not as was seen, whatever its turns. */
  private double[] passing(Observation observation) {
    if (observation instanceof Observation.Go go) {
      return go.enters() ? goPasses.clone() : complement(goPasses);
    }
    if (observation instanceof Observation.NoGo noGo) {
      return noGo.accepted(turnsAllowed) ? complement(noGoRuns) : noGoRuns.clone();
    }
    throw new IllegalArgumentException("observation is not known here: " + observation);
  }

  private static double[] complement(double[] odds) {
    return Arrays.stream(odds).map(o -> Math.max(0, 1 - o)).toArray();
  }

  /** The same with the part's path being any. */
  double[] passes(Observation observation) {
    return overPath(passing(observation));
  }

  /** What the turns of an observation tell, where they do. */
  Optional<TurnsSeen> turns(Observation observation) {
    return turns.computeIfAbsent(observation, o -> TurnsSeen.of(o, sizes, turnsAllowed));
  }

  /** Standard deviation of a measured size about the size as cut (mm on the radius). */
  double deviation(Observation.Pitch pitch, double centre) {
    double measured = pitch.uncertainty() / sizes.slope(centre);
    double scatter = sizes.pathDeviation();
    return Math.max(FeltSizes.STEP, Math.sqrt(measured * measured + scatter * scatter));
  }
}
