package flankfit.odds;

import flankfit.chance.DriftGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.special.Erf;

/**
 * What is believed of a mill: its size as cut, and how that drifts from part to part. Each
 * observation is weighed by Bayes' rule; none is trusted wholly, nor is the sheet, so that an
 * answer exists also when they clash.
 */
final class Belief {
  /**
   * Chance that the sheet is wrong about the mill (1): another mill, another register; no source.
   */
  static final double WRONG_SHEET = 0.02;

  /**
   * Standard deviation of the size as cut when the sheet is wrong (mm on the radius): no source.
   */
  private static final double WRONG_BY = 0.05;

  /** Share of wrong sheets that say nothing at all about the size (1). */
  private static final double WHOLLY_WRONG = 0.1;

  /** Standard deviation of the drift for one part (mm on the radius): no source. */
  static final double DRIFT = 5e-4;

  /** Standard deviation of the size's wandering from part to part (mm on the radius): no source. */
  static final double WANDER = 2e-4;

  /** Chance below which an observation is said to clash (1). */
  private static final double CLASH = 0.01;

  private static final int DRIFTS = 61;

  private static final double MOST_DRIFT = 0.003;

  private final FeltSizes sizes;
  private final double depthPerEntry;
  private final double now;
  private final double turnsAllowed;
  private final Likelihoods likelihoods;
  private final List<Clash> clashes = new ArrayList<>();
  private final List<Midway> midway = new ArrayList<>();
  private final DriftGrid grid;
  private final double[] prior;
  private final int first;
  private int last;

  /**
   * The belief before any observation.
   *
   * @param depthPerEntry depth for one length of the register's entry (1); 0 without a register
   * @param now wear entry that the sizes are counted from (mm)
   * @param turnsAllowed turns that the rule allows a NO-GO gauge (1)
   * @param first number of the first part
   * @param drifts whether several parts follow each other, so that the size may drift
   */
  Belief(
      FeltSizes sizes,
      double depthPerEntry,
      double now,
      double turnsAllowed,
      int first,
      boolean drifts) {
    this.sizes = sizes;
    this.depthPerEntry = depthPerEntry;
    this.now = now;
    this.turnsAllowed = turnsAllowed;
    this.likelihoods = new Likelihoods(sizes, turnsAllowed);
    this.first = first;
    this.last = first;
    this.prior = sizes.prior();
    double[] rates = drifts ? rates() : new double[] {0};
    this.grid =
        new DriftGrid(-FeltSizes.MOST, FeltSizes.STEP, doubted(prior), rates, rateWeights(rates));
  }

  /** The sheet's sizes with the doubt that any sheet deserves. */
  private static double[] doubted(double[] prior) {
    double[] wrong = DriftGrid.blurred(prior, WRONG_BY / FeltSizes.STEP);
    double[] doubted = new double[prior.length];
    for (int i = 0; i < prior.length; i++) {
      double any = (1 - WHOLLY_WRONG) * wrong[i] + WHOLLY_WRONG / prior.length;
      doubted[i] = (1 - WRONG_SHEET) * prior[i] + WRONG_SHEET * any;
    }
    return doubted;
  }

  /** Drifts that lie closer where they are likelier. */
  private static double[] rates() {
    double[] rates = new double[DRIFTS];
    int half = DRIFTS / 2;
    for (int i = 0; i < DRIFTS; i++) {
      double t = (double) (i - half) / half;
      rates[i] = MOST_DRIFT * t * Math.abs(t);
    }
    return rates;
  }

  private static double[] rateWeights(double[] rates) {
    double[] weights = new double[rates.length];
    for (int i = 0; i < rates.length; i++) {
      double z = rates[i] / DRIFT;
      double below = i > 0 ? rates[i] - rates[i - 1] : 0;
      double above = i < rates.length - 1 ? rates[i + 1] - rates[i] : 0;
      double width = rates.length == 1 ? 1 : (below + above) / 2;
      weights[i] = StrictMath.exp(-z * z / 2) * width;
    }
    return weights;
  }

  /** Learns from a part; parts must come by rising number. */
  void learn(PartObserved part) {
    learn(part, true);
  }

  /**
   * Learns from a part; parts must not come by falling number.
   *
   * @param own whether it was seen in this very thread: clashes of others are told with theirs
   */
  void learn(PartObserved part, boolean own) {
    grid.wander(WANDER * Math.sqrt(part.part() - last));
    last = part.part();
    if (own) {
      clashes.addAll(clashes(part));
    }
    if (own) {
      part.observations().forEach(observation -> midway(part, observation));
    }
    grid.learn(likelihood(part.observations(), part.wear()), last - first);
  }

  /** Notes a gauge that stopped where it could hardly do so by all that is known. */
  private void midway(PartObserved part, Observation observation) {
    Optional<TurnsSeen> seen = likelihoods.turns(observation).filter(TurnsSeen::isMidway);
    if (seen.isEmpty()) {
      return;
    }
    double[] weights = grid.sizes(part.part() - first);
    double shift = shift(part.wear());
    double all = 0;
    double other = 0;
    for (int i = 0; i < weights.length; i++) {
      if (weights[i] > 0) {
        double size = FeltSizes.size(i) + shift;
        all += weights[i] * seen.get().at(size);
        other += weights[i] * seen.get().unexplained(size);
      }
    }
    if (other > all / 2) {
      boolean go = observation instanceof Observation.Go;
      double whole = go ? sizes.wantedTurns() : turnsAllowed;
      midway.add(new Midway(part.part(), observation, whole, other / all));
    }
  }

  /** Depth that a register entry adds to what sizes are counted from (mm on the radius). */
  double shift(double wear) {
    return depthPerEntry * (wear - now);
  }

  /** Likelihood, for a size as cut, of all that was seen on a part; never 0. */
  DoubleUnaryOperator likelihood(List<Observation> seen, double wear) {
    double[] table = likelihoods.of(seen);
    double shift = shift(wear);
    return size -> FeltSizes.at(table, size + shift);
  }

  private List<Clash> clashes(PartObserved part) {
    List<Clash> found = new ArrayList<>();
    double[] before = grid.sizes(part.part() - first);
    List<Observation> all = part.observations();
    for (int i = 0; i < all.size(); i++) {
      List<Observation> others = new ArrayList<>(all);
      others.remove(i);
      double[] rest = before.clone();
      weigh(rest, likelihood(others, part.wear()));
      double chance = chance(all.get(i), part.wear(), rest);
      if (chance < CLASH) {
        found.add(new Clash(part.part(), all.get(i), with(part, i, before), chance));
      }
    }
    return found;
  }

  /** Finds what an observation clashes with: what was believed before, or one other. */
  private String with(PartObserved part, int i, double[] before) {
    Observation observation = part.observations().get(i);
    if (chance(observation, part.wear(), before) < CLASH) {
      return part.part() == first ? "what the sheet says of the mill" : "the parts before";
    }
    for (int k = 0; k < part.observations().size(); k++) {
      double[] one = before.clone();
      if (k != i) {
        weigh(one, likelihood(List.of(part.observations().get(k)), part.wear()));
        if (chance(observation, part.wear(), one) < CLASH) {
          return part.observations().get(k).text();
        }
      }
    }
    return "the other observations together";
  }

  private static void weigh(double[] sizes, DoubleUnaryOperator likelihood) {
    double sum = 0;
    for (int i = 0; i < sizes.length; i++) {
      sizes[i] *= likelihood.applyAsDouble(FeltSizes.size(i));
      sum += sizes[i];
    }
    for (int i = 0; i < sizes.length && sum > 0; i++) {
      sizes[i] /= sum;
    }
  }

  /** Chance of an observation, or of a measured size as far off or farther. */
  private double chance(Observation observation, double wear, double[] weights) {
    if (observation instanceof Observation.Pitch pitch) {
      double centre = sizes.sizeOf(pitch.diameter()) - shift(wear);
      double deviation = likelihoods.deviation(pitch, centre + shift(wear));
      double above = 0;
      for (int i = 0; i < weights.length; i++) {
        if (weights[i] > 0) {
          double z = (FeltSizes.size(i) - centre) / deviation;
          above += weights[i] * Erf.erfc(-z / Math.sqrt(2)) / 2;
        }
      }
      return 2 * Math.min(above, 1 - above);
    }
    double[] passes = likelihoods.passes(observation);
    double shift = shift(wear);
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i] == 0 ? 0 : weights[i] * FeltSizes.at(passes, FeltSizes.size(i) + shift);
    }
    return sum;
  }

  /** Weights of the sizes at a part. */
  double[] sizes(int part) {
    return grid.sizes(part - first);
  }

  /** Weights of the sizes by the sheet alone, which is not doubted here. */
  double[] bySheet() {
    return prior.clone();
  }

  DriftGrid grid() {
    return grid;
  }

  List<Clash> clashes() {
    return List.copyOf(clashes);
  }

  /** Gauges that stopped on their way for no reason that is known. */
  List<Midway> midway() {
    return List.copyOf(midway);
  }

  int last() {
    return last;
  }

  int first() {
    return first;
  }
}
