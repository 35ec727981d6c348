package flankfit.metal;

/**
 * The slow and plain witness of touches: one move of a tip, along a line or an arc about Z, and
 * upright cylinders about it.
 */
final class SweptCylinder {
  private final double[] from;
  private final double[] to;
  private final boolean turns;
  private final double centreX;
  private final double centreY;
  private final double radius;
  private final double start;
  private final double sweep;

  private SweptCylinder(
      double[] from, double[] to, boolean turns, double cx, double cy, double sweep) {
    this.from = from;
    this.to = to;
    this.turns = turns;
    this.centreX = cx;
    this.centreY = cy;
    this.radius = Math.hypot(from[0] - cx, from[1] - cy);
    this.start = Math.atan2(from[1] - cy, from[0] - cx);
    this.sweep = sweep;
  }

  static SweptCylinder line(double[] from, double[] to) {
    return new SweptCylinder(from.clone(), to.clone(), false, 0, 0, 0);
  }

  static SweptCylinder arc(double[] from, double[] to, double cx, double cy, double sweep) {
    return new SweptCylinder(from.clone(), to.clone(), true, cx, cy, sweep);
  }

  /** The tip at a share. */
  double[] at(double t) {
    double z = from[2] + t * (to[2] - from[2]);
    if (!turns) {
      return new double[] {from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1]), z};
    }
    double a = start + t * sweep;
    return new double[] {centreX + radius * Math.cos(a), centreY + radius * Math.sin(a), z};
  }

  /**
   * Whether a cylinder of heights low to high above the tip passes over a point between the start
   * and a share.
   */
  boolean passes(double[] p, double r, double low, double high, double until) {
    double rise = to[2] - from[2];
    double a = 0;
    double b = until;
    if (rise == 0) {
      if (p[2] < from[2] + low || p[2] > from[2] + high) {
        return false;
      }
    } else {
      double s = (p[2] - high - from[2]) / rise;
      double t = (p[2] - low - from[2]) / rise;
      a = Math.max(a, Math.min(s, t));
      b = Math.min(b, Math.max(s, t));
    }
    return a <= b && nearest(p, a, b) <= r;
  }

  private double nearest(double[] p, double a, double b) {
    double[] first = at(a);
    double[] last = at(b);
    double least =
        Math.min(
            Math.hypot(p[0] - first[0], p[1] - first[1]),
            Math.hypot(p[0] - last[0], p[1] - last[1]));
    if (!turns) {
      double dx = last[0] - first[0];
      double dy = last[1] - first[1];
      double along = (p[0] - first[0]) * dx + (p[1] - first[1]) * dy;
      double square = dx * dx + dy * dy;
      return along > 0 && along < square
          ? Math.abs((p[0] - first[0]) * dy - (p[1] - first[1]) * dx) / Math.sqrt(square)
          : least;
    }
    double angle = Math.atan2(p[1] - centreY, p[0] - centreX);
    double low = Math.min(start + a * sweep, start + b * sweep);
    double high = Math.max(start + a * sweep, start + b * sweep);
    for (int turn = -3; turn <= 3; turn++) {
      double here = angle + 2 * Math.PI * turn;
      if (here >= low && here <= high) {
        return Math.min(least, Math.abs(Math.hypot(p[0] - centreX, p[1] - centreY) - radius));
      }
    }
    return least;
  }
}
