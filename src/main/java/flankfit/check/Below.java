package flankfit.check;

/**
 * The part of a straight line that lies below a height, as shares of the line.
 *
 * @param from share at which it begins (1)
 * @param to share at which it ends (1); below {@code from} when no part does
 */
record Below(double from, double to) {
  /** The part of a line from height z0 to z1 that lies below another height (mm). */
  static Below of(double z0, double z1, double height) {
    if (z0 < height && z1 < height) {
      return new Below(0, 1);
    }
    if (!(Math.min(z0, z1) < height)) {
      return new Below(1, 0);
    }
    double crossing = (height - z0) / (z1 - z0);
    return z0 < height ? new Below(0, crossing) : new Below(crossing, 1);
  }

  boolean isEmpty() {
    return from > to;
  }

  /** How much of the line it is (1). */
  double share() {
    return isEmpty() ? 0 : to - from;
  }
}
