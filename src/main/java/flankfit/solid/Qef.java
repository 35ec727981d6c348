package flankfit.solid;

/**
 * Least squares of distances to planes: the place nearest to a base whose squared distances to all
 * added planes are least. Directions in which the planes say little are left at the base. Solving
 * uses the planes up: {@link #clear} begins anew.
 */
public final class Qef {
  private static final int SWEEPS = 12;

  /** A direction of which planes say less than this share of the most is unknown (1). */
  private static final double NOTHING = 1e-9;

  private final double[][] a = new double[3][3];
  private final double[][] vectors = new double[3][3];
  private final double[] b = new double[3];
  private final double[] base = new double[3];
  private final double[] answer = new double[3];

  /** Forgets all planes and takes a base (mm). */
  public void clear(double x, double y, double z) {
    base[0] = x;
    base[1] = y;
    base[2] = z;
    for (int i = 0; i < 3; i++) {
      b[i] = 0;
      for (int j = 0; j < 3; j++) {
        a[i][j] = 0;
      }
    }
  }

  /** Adds the plane through a place (mm) with a unit normal. */
  public void add(double px, double py, double pz, double nx, double ny, double nz) {
    double along = nx * (px - base[0]) + ny * (py - base[1]) + nz * (pz - base[2]);
    a[0][0] += nx * nx;
    a[0][1] += nx * ny;
    a[0][2] += nx * nz;
    a[1][1] += ny * ny;
    a[1][2] += ny * nz;
    a[2][2] += nz * nz;
    b[0] += nx * along;
    b[1] += ny * along;
    b[2] += nz * along;
  }

  /**
   * Solves; the place is then in {@link #answer}.
   *
   * @param truncation directions whose eigenvalue is below this share of the largest are left (1)
   * @return number of directions that were not left
   */
  public int solve(double truncation) {
    diagonalise();
    double largest = Math.max(a[0][0], Math.max(a[1][1], a[2][2]));
    return above(truncation * largest);
  }

  /**
   * Solves where two faces or three may meet: the weakest direction is left where it says little
   * beside the second, as along the edge between two faces, one of them slightly curved.
   *
   * @param truncation the weakest is left if its eigenvalue is below this share of the second (1)
   * @return number of directions that were not left
   */
  public int solveMeeting(double truncation) {
    diagonalise();
    double largest = Math.max(a[0][0], Math.max(a[1][1], a[2][2]));
    double least = Math.min(a[0][0], Math.min(a[1][1], a[2][2]));
    double second = a[0][0] + a[1][1] + a[2][2] - largest - least;
    return above(Math.max(truncation * second, NOTHING * largest));
  }

  private int above(double bound) {
    int rank = 0;
    answer[0] = base[0];
    answer[1] = base[1];
    answer[2] = base[2];
    for (int k = 0; k < 3; k++) {
      if (a[k][k] > bound && a[k][k] > 0) {
        rank++;
        double share =
            (vectors[0][k] * b[0] + vectors[1][k] * b[1] + vectors[2][k] * b[2]) / a[k][k];
        for (int i = 0; i < 3; i++) {
          answer[i] += share * vectors[i][k];
        }
      }
    }
    return rank;
  }

  /** A coordinate of the place last found (mm). */
  public double answer(int axis) {
    return answer[axis];
  }

  /** Jacobi's method: turns of two axes at a time until the rest of the matrix is zero. */
  private void diagonalise() {
    a[1][0] = a[0][1];
    a[2][0] = a[0][2];
    a[2][1] = a[1][2];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        vectors[i][j] = i == j ? 1 : 0;
      }
    }
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      double off = Math.abs(a[0][1]) + Math.abs(a[0][2]) + Math.abs(a[1][2]);
      if (off < 1e-18 * (Math.abs(a[0][0]) + Math.abs(a[1][1]) + Math.abs(a[2][2]))) {
        return;
      }
      turn(0, 1);
      turn(0, 2);
      turn(1, 2);
    }
  }

  private void turn(int p, int q) {
    if (a[p][q] == 0) {
      return;
    }
    double theta = (a[q][q] - a[p][p]) / (2 * a[p][q]);
    double t = Math.copySign(1 / (Math.abs(theta) + Math.sqrt(theta * theta + 1)), theta);
    double c = 1 / Math.sqrt(t * t + 1);
    double s = t * c;
    for (int k = 0; k < 3; k++) {
      double kp = a[k][p];
      double kq = a[k][q];
      a[k][p] = c * kp - s * kq;
      a[k][q] = s * kp + c * kq;
    }
    for (int k = 0; k < 3; k++) {
      double pk = a[p][k];
      double qk = a[q][k];
      a[p][k] = c * pk - s * qk;
      a[q][k] = s * pk + c * qk;
      double vp = vectors[k][p];
      double vq = vectors[k][q];
      vectors[k][p] = c * vp - s * vq;
      vectors[k][q] = s * vp + c * vq;
    }
  }
}
