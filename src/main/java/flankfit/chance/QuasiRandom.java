package flankfit.chance;

import flankfit.unit.Require;
import org.hipparchus.random.SobolSequenceGenerator;
import org.hipparchus.random.Well19937c;

/**
 * Points that fill the unit cube more evenly than chance does: Sobol's sequence, moved as a whole
 * by a random step that a seed gives, so that no point lies on an edge and each seed is another
 * sample. The same seed gives the same points.
 *
 * @see "R. Cranley, T. N. L. Patterson, Randomization of number theoretic methods for multiple
 *     integration, SIAM J. Numer. Anal. 13 (1976) 904-914 (from memory)"
 */
public final class QuasiRandom {
  /** Nearest that a coordinate comes to the cube's faces: quantiles stay finite. */
  private static final double EDGE = 1e-12;

  private QuasiRandom() {}

  /**
   * Points inside the unit cube.
   *
   * @param count number of points, from 1
   * @param dimension number of coordinates, from 1
   * @param seed any number
   * @return [count][dimension], each in (0, 1)
   */
  public static double[][] points(int count, int dimension, long seed) {
    Require.within("count", count, 1, Integer.MAX_VALUE);
    Well19937c random = new Well19937c(seed);
    double[] step = new double[dimension];
    for (int k = 0; k < dimension; k++) {
      step[k] = random.nextDouble();
    }
    SobolSequenceGenerator sequence = new SobolSequenceGenerator(dimension);
    double[][] points = new double[count][];
    for (int i = 0; i < count; i++) {
      double[] point = sequence.nextVector();
      for (int k = 0; k < dimension; k++) {
        double moved = point[k] + step[k];
        double inside = moved >= 1 ? moved - 1 : moved;
        point[k] = Math.min(1 - EDGE, Math.max(EDGE, inside));
      }
      points[i] = point;
    }
    return points;
  }
}
