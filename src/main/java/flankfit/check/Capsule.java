package flankfit.check;

/**
 * What a disc covers on its way along a straight line in the plane, row by row. One object serves
 * for any number of lines.
 */
final class Capsule {
  private final double[] cornerX = new double[4];
  private final double[] cornerY = new double[4];
  private double x0;
  private double y0;
  private double x1;
  private double y1;
  private double radius;
  private double left;
  private double right;

  /** Takes a line from (x0, y0) to (x1, y1) and the radius of the disc (mm). */
  void set(double x0, double y0, double x1, double y1, double radius) {
    this.x0 = x0;
    this.y0 = y0;
    this.x1 = x1;
    this.y1 = y1;
    this.radius = radius;
    double length = Math.hypot(x1 - x0, y1 - y0);
    double sideX = length > 0 ? -(y1 - y0) / length * radius : 0;
    double sideY = length > 0 ? (x1 - x0) / length * radius : 0;
    corner(0, x0 + sideX, y0 + sideY);
    corner(1, x1 + sideX, y1 + sideY);
    corner(2, x1 - sideX, y1 - sideY);
    corner(3, x0 - sideX, y0 - sideY);
  }

  private void corner(int i, double x, double y) {
    cornerX[i] = x;
    cornerY[i] = y;
  }

  /** Lowest Y that is covered (mm). */
  double low() {
    return Math.min(y0, y1) - radius;
  }

  /** Highest Y that is covered (mm). */
  double high() {
    return Math.max(y0, y1) + radius;
  }

  /** Works out what is covered at a height Y; false when nothing is. */
  boolean cross(double y) {
    left = Double.POSITIVE_INFINITY;
    right = Double.NEGATIVE_INFINITY;
    disc(x0, y - y0);
    disc(x1, y - y1);
    side(0, 1, y);
    side(2, 3, y);
    return left <= right;
  }

  private void disc(double x, double dy) {
    double square = radius * radius - dy * dy;
    if (square >= 0) {
      double half = Math.sqrt(square);
      left = Math.min(left, x - half);
      right = Math.max(right, x + half);
    }
  }

  private void side(int from, int to, double y) {
    double rise = cornerY[to] - cornerY[from];
    double share = (y - cornerY[from]) / rise;
    if (rise != 0 && share >= 0 && share <= 1) {
      double x = cornerX[from] + share * (cornerX[to] - cornerX[from]);
      left = Math.min(left, x);
      right = Math.max(right, x);
    }
  }

  /** Length of the line (mm). */
  double length() {
    return Math.hypot(x1 - x0, y1 - y0);
  }

  /** X of the middle of the disc at a share of the line (mm). */
  double alongX(double share) {
    return x0 + share * (x1 - x0);
  }

  /** Y of the middle of the disc at a share of the line (mm). */
  double alongY(double share) {
    return y0 + share * (y1 - y0);
  }

  /** Least share of the line at which the disc covers a point that it covers somewhere (1). */
  double reaches(double x, double y) {
    double length = length();
    if (length == 0) {
      return 0;
    }
    double ux = (x1 - x0) / length;
    double uy = (y1 - y0) / length;
    double along = (x - x0) * ux + (y - y0) * uy;
    double aside = (x - x0) * uy - (y - y0) * ux;
    double back = Math.sqrt(Math.max(0, radius * radius - aside * aside));
    return Math.max(0, Math.min(1, (along - back) / length));
  }

  /** Least X covered at the height last asked for (mm). */
  double left() {
    return left;
  }

  /** Greatest X covered at the height last asked for (mm). */
  double right() {
    return right;
  }
}
