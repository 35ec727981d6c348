package flankfit.cutting;

/** Places and weights of Gauss and Legendre's rule on [0, 1]. */
final class GaussPoints {
  private static final int NEWTON_STEPS = 60;
  private static final int MOST = 12;
  private static final double[][] PLACES = new double[MOST + 1][];
  private static final double[][] WEIGHTS = new double[MOST + 1][];

  static {
    for (int n = 1; n <= MOST; n++) {
      PLACES[n] = new double[n];
      WEIGHTS[n] = new double[n];
      for (int i = 0; i < n; i++) {
        fill(n, i);
      }
    }
  }

  private GaussPoints() {}

  static double place(int points, int i) {
    return PLACES[points][i];
  }

  static double weight(int points, int i) {
    return WEIGHTS[points][i];
  }

  /** A root of the Legendre polynomial by Newton's steps from the usual estimate. */
  private static void fill(int n, int i) {
    double x = StrictMath.cos(Math.PI * (i + 0.75) / (n + 0.5));
    double slope = 1;
    for (int step = 0; step < NEWTON_STEPS; step++) {
      double before = 0;
      double value = 1;
      for (int k = 1; k <= n; k++) {
        double next = ((2 * k - 1) * x * value - (k - 1) * before) / k;
        before = value;
        value = next;
      }
      slope = n * (x * value - before) / (x * x - 1);
      x -= value / slope;
    }
    PLACES[n][i] = (1 - x) / 2;
    WEIGHTS[n][i] = 1 / ((1 - x * x) * slope * slope);
  }
}
