package flankfit.metal;

/** A box cut off by a plane, with its corners. Used again by loops. */
final class Clip {
  /** Most corners of a box cut off by a plane, and some more. */
  private static final int MOST = 24;

  final double[] low = new double[3];
  final double[] high = new double[3];

  /** Into what is kept; no plane when all are 0. */
  private double nx;

  private double ny;
  private double nz;
  private double offset;
  private boolean plane;

  /** Corners (mm), 3 numbers each. */
  final double[] corners = new double[3 * MOST];

  int count;

  /** Takes a box (mm), low x, y, z, high x, y, z. */
  void box(double[] sides) {
    System.arraycopy(sides, 0, low, 0, 3);
    System.arraycopy(sides, 3, high, 0, 3);
    plane = false;
  }

  /** Keeps what lies on the side of a plane, {@code n · p >= offset}. */
  void plane(double alongX, double alongY, double alongZ, double least) {
    nx = alongX;
    ny = alongY;
    nz = alongZ;
    offset = least;
    plane = true;
  }

  /** Half the box's diagonal (mm). */
  double half() {
    double dx = high[0] - low[0];
    double dy = high[1] - low[1];
    double dz = high[2] - low[2];
    return Math.sqrt(dx * dx + dy * dy + dz * dz) / 2;
  }

  double middle(int axis) {
    return (low[axis] + high[axis]) / 2;
  }

  /** Finds the corners and narrows the box to them; false when nothing is left. */
  boolean close() {
    count = 0;
    for (int i = 0; i < 8; i++) {
      double at = plane ? side(i) : 1;
      if (at >= 0) {
        add(x(i), y(i), z(i));
      }
      for (int bit = 1; plane && bit < 8; bit <<= 1) {
        if ((i & bit) == 0) {
          crossing(i, i | bit, at);
        }
      }
    }
    if (count == 0) {
      return false;
    }
    for (int axis = 0; axis < 3; axis++) {
      double least = Double.POSITIVE_INFINITY;
      double most = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < count; i++) {
        least = Math.min(least, corners[3 * i + axis]);
        most = Math.max(most, corners[3 * i + axis]);
      }
      low[axis] = least;
      high[axis] = most;
    }
    return true;
  }

  private void crossing(int i, int j, double at) {
    double other = side(j);
    if (at >= 0 == other >= 0) {
      return;
    }
    double s = at / (at - other);
    add(x(i) + s * (x(j) - x(i)), y(i) + s * (y(j) - y(i)), z(i) + s * (z(j) - z(i)));
  }

  private void add(double x, double y, double z) {
    corners[3 * count] = x;
    corners[3 * count + 1] = y;
    corners[3 * count + 2] = z;
    count++;
  }

  private double side(int i) {
    return nx * x(i) + ny * y(i) + nz * z(i) - offset;
  }

  private double x(int i) {
    return (i & 1) == 0 ? low[0] : high[0];
  }

  private double y(int i) {
    return (i & 2) == 0 ? low[1] : high[1];
  }

  private double z(int i) {
    return (i & 4) == 0 ? low[2] : high[2];
  }

  /** Mean of the corners along an axis (mm). */
  double mean(int axis) {
    double sum = 0;
    for (int i = 0; i < count; i++) {
      sum += corners[3 * i + axis];
    }
    return sum / count;
  }
}
