package flankfit.odds;

/**
 * A figure that is believed.
 *
 * @param value expected value
 * @param deviation standard deviation
 */
public record Estimate(double value, double deviation) {
  /** The estimate of figures with weights, which need not sum to 1. */
  static Estimate of(double[] values, double[] weights) {
    double sum = 0;
    double mean = 0;
    for (int i = 0; i < values.length; i++) {
      sum += weights[i];
      mean += weights[i] * values[i];
    }
    mean /= sum;
    double square = 0;
    for (int i = 0; i < values.length; i++) {
      square += weights[i] * (values[i] - mean) * (values[i] - mean);
    }
    return new Estimate(mean, Math.sqrt(square / sum));
  }
}
