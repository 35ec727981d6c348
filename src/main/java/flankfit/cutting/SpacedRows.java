package flankfit.cutting;

/**
 * A few rows of a comb, evenly spaced, that stand for all: bending is smooth along the mill, so
 * what the others feel follows from these by a parabola.
 */
final class SpacedRows {
  private static final int MOST = 3;

  private final int[] row;

  SpacedRows(int all) {
    int count = Math.min(all, MOST);
    row = new int[count];
    for (int k = 0; k < count; k++) {
      row[k] = count > 1 ? (int) Math.round((double) k * (all - 1) / (count - 1)) : 0;
    }
  }

  int count() {
    return row.length;
  }

  /** Which row the k-th one is. */
  int row(int k) {
    return row[k];
  }

  /** Share of a spaced row in what any row feels (1); the shares of a row sum to 1. */
  double share(int any, int k) {
    double share = 1;
    for (int m = 0; m < row.length; m++) {
      if (m != k) {
        share *= (double) (any - row[m]) / (row[k] - row[m]);
      }
    }
    return share;
  }

  /** A value of any row from those of the spaced ones. */
  double at(int any, double[] values) {
    double sum = 0;
    for (int k = 0; k < row.length; k++) {
      sum += share(any, k) * values[k];
    }
    return sum;
  }
}
