package flankfit.gauge;

/** The inverse of a small square matrix, by elimination with row exchange. */
final class Inverse {
  private Inverse() {}

  /**
   * The inverse of a matrix, which is overwritten.
   *
   * @throws IllegalArgumentException if the rows do not span the space
   */
  static double[][] of(double[][] a) {
    int n = a.length;
    double[][] inverse = new double[n][n];
    for (int i = 0; i < n; i++) {
      inverse[i][i] = 1;
    }
    for (int column = 0; column < n; column++) {
      int pivot = column;
      for (int i = column + 1; i < n; i++) {
        if (Math.abs(a[i][column]) > Math.abs(a[pivot][column])) {
          pivot = i;
        }
      }
      if (a[pivot][column] == 0) {
        throw new IllegalArgumentException("the rows are not independent");
      }
      exchange(a, column, pivot);
      exchange(inverse, column, pivot);
      double by = a[column][column];
      for (int k = 0; k < n; k++) {
        a[column][k] /= by;
        inverse[column][k] /= by;
      }
      for (int i = 0; i < n; i++) {
        double times = i == column ? 0 : a[i][column];
        for (int k = 0; k < n && times != 0; k++) {
          a[i][k] -= times * a[column][k];
          inverse[i][k] -= times * inverse[column][k];
        }
      }
    }
    return inverse;
  }

  private static void exchange(double[][] rows, int i, int k) {
    double[] kept = rows[i];
    rows[i] = rows[k];
    rows[k] = kept;
  }
}
