package flankfit.chance;

import flankfit.unit.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * How much of the variance of a result each input makes: Sobol's indices, estimated on two samples
 * of which columns are exchanged one after the other.
 *
 * @see "A. Saltelli et al., Variance based sensitivity analysis of model output, Comput. Phys.
 *     Commun. 181 (2010) 259-270, table 2: estimators (b) of first order and (f, Jansen 1999) of
 *     total effect (from memory)"
 */
public final class Shares {
  private Shares() {}

  /**
   * One input's share.
   *
   * @param first what the variance loses when this input alone is known (1)
   * @param total what is left of it when all others are known (1)
   */
  public record Share(double first, double total) {}

  /**
   * The shares of all inputs.
   *
   * @param result the result at a point of the unit cube
   * @param dimension number of inputs
   * @param count number of points of each sample; a power of two fills the cube best
   * @param seed any number
   * @return one for each input; all 0 when the result never changes
   */
  public static List<Share> of(
      ToDoubleFunction<double[]> result, int dimension, int count, long seed) {
    Require.within("count", count, 2, Integer.MAX_VALUE);
    double[][] both = QuasiRandom.points(count, 2 * dimension, seed);
    double[] ofA = new double[count];
    double[] ofB = new double[count];
    double mean = 0;
    for (int i = 0; i < count; i++) {
      ofA[i] = result.applyAsDouble(point(both[i], dimension, -1, false));
      ofB[i] = result.applyAsDouble(point(both[i], dimension, -1, true));
      mean += (ofA[i] + ofB[i]) / (2.0 * count);
    }
    double variance = 0;
    for (int i = 0; i < count; i++) {
      double a = ofA[i] - mean;
      double b = ofB[i] - mean;
      variance += (a * a + b * b) / (2.0 * count);
    }
    List<Share> shares = new ArrayList<>();
    for (int k = 0; k < dimension; k++) {
      double first = 0;
      double total = 0;
      for (int i = 0; i < count && variance > 0; i++) {
        double mixed = result.applyAsDouble(point(both[i], dimension, k, false));
        // less the mean: the same value with less noise
        first += (ofB[i] - mean) * (mixed - ofA[i]) / count;
        total += (ofA[i] - mixed) * (ofA[i] - mixed) / (2.0 * count);
      }
      shares.add(variance > 0 ? new Share(first / variance, total / variance) : new Share(0, 0));
    }
    return shares;
  }

  /** A point of the first sample, or the second, with one coordinate taken from the other. */
  private static double[] point(double[] both, int dimension, int exchanged, boolean second) {
    double[] point = new double[dimension];
    for (int k = 0; k < dimension; k++) {
      boolean other = k == exchanged;
      point[k] = both[second != other ? dimension + k : k];
    }
    return point;
  }
}
