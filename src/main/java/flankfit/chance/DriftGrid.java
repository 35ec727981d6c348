package flankfit.chance;

import flankfit.unit.Require;
import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * What is believed of a size that drifts evenly from one part to the next, and wanders a little: a
 * weight for each size at part 0 and each rate of drift. Bayes' rule by plain multiplication, so
 * any likelihood will do; the answer is as fine as the grid.
 */
public final class DriftGrid {
  /** Standard deviations to which a normal step is followed. */
  private static final int REACH = 4;

  private final double low;
  private final double step;
  private final double[] rates;
  private final double[][] weight;

  /**
   * A belief.
   *
   * @param low size of the first cell
   * @param step distance of sizes, above 0
   * @param prior weight of each size, not below 0
   * @param rates drifts for one part
   * @param rateWeights weight of each drift, not below 0
   */
  public DriftGrid(double low, double step, double[] prior, double[] rates, double[] rateWeights) {
    this.low = Require.finite("low", low);
    this.step = Require.positive("step", step);
    this.rates = rates.clone();
    this.weight = new double[rates.length][prior.length];
    for (int v = 0; v < rates.length; v++) {
      for (int i = 0; i < prior.length; i++) {
        weight[v][i] = prior[i] * rateWeights[v];
      }
    }
    normalize();
  }

  /**
   * Learns from an observation.
   *
   * @param likelihood probability of the observation for a size when it was made
   * @param parts parts since part 0 (1)
   * @return probability of the observation before it was made; the belief stays when that is 0
   */
  public double learn(DoubleUnaryOperator likelihood, double parts) {
    double[][] before = new double[weight.length][];
    double sum = 0;
    for (int v = 0; v < rates.length; v++) {
      before[v] = weight[v].clone();
      for (int i = 0; i < weight[v].length; i++) {
        double w = weight[v][i];
        weight[v][i] = w == 0 ? 0 : w * likelihood.applyAsDouble(low + i * step + rates[v] * parts);
        sum += weight[v][i];
      }
    }
    if (!(sum > 0)) {
      System.arraycopy(before, 0, weight, 0, weight.length);
      return 0;
    }
    normalize();
    return sum;
  }

  /**
   * Lets the size wander.
   *
   * @param deviation standard deviation of its step, not below 0
   */
  public void wander(double deviation) {
    if (deviation > 0) {
      for (int v = 0; v < rates.length; v++) {
        weight[v] = blurred(weight[v], deviation / step);
      }
      normalize();
    }
  }

  /**
   * A row of figures, each spread over its neighbours by a normal step; what would leave the row
   * stays in its last cells.
   *
   * @param deviation standard deviation of the step, in cells
   */
  public static double[] blurred(double[] row, double deviation) {
    if (deviation <= 0) {
      return row.clone();
    }
    double[] kernel = kernel(deviation);
    double[] out = new double[row.length];
    for (int i = 0; i < row.length; i++) {
      double w = row[i];
      if (w == 0) {
        continue;
      }
      out[i] += w * kernel[0];
      for (int k = 1; k < kernel.length; k++) {
        out[Math.max(0, i - k)] += w * kernel[k];
        out[Math.min(row.length - 1, i + k)] += w * kernel[k];
      }
    }
    return out;
  }

  /**
   * The expected value of a function, given by a row of figures, when its place is off by a normal
   * step; beyond its ends the function stays as it is there.
   *
   * @param deviation standard deviation of the step, in cells
   */
  public static double[] smoothed(double[] row, double deviation) {
    if (deviation <= 0) {
      return row.clone();
    }
    double[] kernel = kernel(deviation);
    double[] out = new double[row.length];
    int last = row.length - 1;
    for (int i = 0; i <= last; i++) {
      double sum = kernel[0] * row[i];
      for (int k = 1; k < kernel.length; k++) {
        sum += kernel[k] * (row[Math.max(0, i - k)] + row[Math.min(last, i + k)]);
      }
      out[i] = sum;
    }
    return out;
  }

  /** Half a normal step's weights; the whole sums to 1. */
  private static double[] kernel(double deviation) {
    double[] kernel = new double[(int) Math.ceil(REACH * deviation) + 1];
    double sum = 0;
    for (int k = 0; k < kernel.length; k++) {
      kernel[k] = StrictMath.exp(-0.5 * (k / deviation) * (k / deviation));
      sum += k == 0 ? kernel[k] : 2 * kernel[k];
    }
    for (int k = 0; k < kernel.length; k++) {
      kernel[k] /= sum;
    }
    return kernel;
  }

  /**
   * The weights of the sizes at a part, whatever the drift; they sum to 1.
   *
   * @param parts parts since part 0 (1)
   */
  public double[] sizes(double parts) {
    int n = weight[0].length;
    double[] sizes = new double[n];
    for (int v = 0; v < rates.length; v++) {
      double shift = rates[v] * parts / step;
      int whole = (int) Math.floor(shift);
      double share = shift - whole;
      for (int i = 0; i < n; i++) {
        double w = weight[v][i];
        if (w > 0) {
          sizes[Math.min(n - 1, Math.max(0, i + whole))] += w * (1 - share);
          sizes[Math.min(n - 1, Math.max(0, i + whole + 1))] += w * share;
        }
      }
    }
    return sizes;
  }

  /** The weights of the drifts; they sum to 1. */
  public double[] drifts() {
    double[] sums = new double[rates.length];
    for (int v = 0; v < rates.length; v++) {
      sums[v] = Arrays.stream(weight[v]).sum();
    }
    return sums;
  }

  /** Expected drift for one part. */
  public double meanDrift() {
    double[] sums = drifts();
    double mean = 0;
    for (int v = 0; v < rates.length; v++) {
      mean += sums[v] * rates[v];
    }
    return mean;
  }

  /** Standard deviation of the drift for one part. */
  public double driftDeviation() {
    double[] sums = drifts();
    double mean = meanDrift();
    double square = 0;
    for (int v = 0; v < rates.length; v++) {
      square += sums[v] * (rates[v] - mean) * (rates[v] - mean);
    }
    return Math.sqrt(square);
  }

  private void normalize() {
    double sum = 0;
    for (double[] row : weight) {
      for (double w : row) {
        sum += w;
      }
    }
    Require.positive("sum of weights", sum);
    for (double[] row : weight) {
      for (int i = 0; i < row.length; i++) {
        row[i] /= sum;
      }
    }
  }
}
