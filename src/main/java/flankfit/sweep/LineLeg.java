package flankfit.sweep;

/**
 * A straight leg.
 *
 * @param x first point, from the wall's axis (mm)
 * @param y first point
 * @param z height of the tip there (mm)
 * @param ux direction across (1); 0 with uy for a leg along the axis
 * @param uy direction across (1)
 * @param length length across (mm)
 * @param rise travel along the axis (mm)
 */
record LineLeg(double x, double y, double z, double ux, double uy, double length, double rise)
    implements Leg {
  static LineLeg of(double x, double y, double z, double toX, double toY, double toZ) {
    double length = Math.hypot(toX - x, toY - y);
    boolean along = length < NONE;
    return new LineLeg(
        x,
        y,
        z,
        along ? 0 : (toX - x) / length,
        along ? 0 : (toY - y) / length,
        along ? 0 : length,
        toZ - z);
  }

  @Override
  public double zLow() {
    return Math.min(z, z + rise);
  }

  @Override
  public double zHigh() {
    return Math.max(z, z + rise);
  }

  @Override
  public double farthest() {
    return Math.max(Math.hypot(x, y), Math.hypot(x + ux * length, y + uy * length));
  }

  @Override
  public double nearest() {
    double way = Math.max(0, Math.min(length, -x * ux - y * uy));
    return Math.hypot(x + ux * way, y + uy * way);
  }

  @Override
  public double[] disc() {
    return new double[] {x + ux * length / 2, y + uy * length / 2, length / 2};
  }

  @Override
  public void open(double px, double py, Swath swath, Openings out) {
    double dx = px - x;
    double dy = py - y;
    double outside = swath.outside();
    if (length == 0) {
      double distance = Math.hypot(dx, dy);
      if (distance <= outside + ON) {
        swath.open(Math.min(distance, outside), zLow(), zHigh(), out);
      }
      return;
    }
    double way = dx * ux + dy * uy;
    double across = Math.abs(dx * uy - dy * ux);
    if (across > outside + ON) {
      return;
    }
    double half = Math.sqrt(Math.max(0, (outside - across) * (outside + across)));
    double from = Math.max(-way, -half);
    double to = Math.min(length - way, half);
    if (from > to) {
      return;
    }
    double slope = rise / length;
    Span span =
        new Span(
            new Crossing(across, Math.abs(slope)),
            Math.min(across, outside),
            from,
            to,
            Math.min(outside, Math.hypot(across, from)),
            Math.min(outside, Math.hypot(across, to)),
            rise >= 0);
    swath.open(span, z + slope * way, out);
  }
}
