package flankfit.sweep;

import flankfit.unit.Angles;

/**
 * An arc of one radius with a steady rise.
 *
 * @param x centre, from the wall's axis (mm)
 * @param y centre
 * @param radius radius (mm), above 0
 * @param low lesser of the polar angles of its ends about the centre (rad)
 * @param high greater of them
 * @param z height of the tip at angle 0 (mm)
 * @param perRadian signed rise for one radian anticlockwise (mm)
 */
record ArcLeg(
    double x, double y, double radius, double low, double high, double z, double perRadian)
    implements Leg {
  static ArcLeg of(double x, double y, PathPiece.Arc arc, double radius) {
    double end = arc.startAngle() + arc.sweep();
    double perRadian = arc.perRadian();
    return new ArcLeg(
        x,
        y,
        radius,
        Math.min(arc.startAngle(), end),
        Math.max(arc.startAngle(), end),
        arc.zStart() - perRadian * arc.startAngle(),
        perRadian);
  }

  /** The arc carried on by a turn (rad, above 0) at its last point. */
  ArcLeg longer(double turn, boolean anticlockwise) {
    double from = anticlockwise ? low : low - turn;
    double to = anticlockwise ? high + turn : high;
    return new ArcLeg(x, y, radius, from, to, z, perRadian);
  }

  private double height(double angle) {
    return z + perRadian * angle;
  }

  @Override
  public double zLow() {
    return Math.min(height(low), height(high));
  }

  @Override
  public double zHigh() {
    return Math.max(height(low), height(high));
  }

  @Override
  public double farthest() {
    return Math.hypot(x, y) + radius;
  }

  @Override
  public double nearest() {
    return Math.abs(Math.hypot(x, y) - radius);
  }

  @Override
  public double[] disc() {
    double half = (high - low) / 2;
    if (half >= Math.PI / 2) {
      return new double[] {x, y, radius};
    }
    double across = radius * Math.cos(half);
    double middle = low + half;
    return new double[] {
      x + across * Math.cos(middle), y + across * Math.sin(middle), radius * Math.sin(half)
    };
  }

  @Override
  public void open(double px, double py, Swath swath, Openings out) {
    double dx = px - x;
    double dy = py - y;
    double apart = Math.sqrt(dx * dx + dy * dy);
    double outside = swath.outside();
    double nearest = Math.abs(apart - radius);
    if (nearest > outside + ON) {
      return;
    }
    if (apart < NONE * NONE) {
      swath.open(Math.min(radius, outside), zLow(), zHigh(), out);
      return;
    }
    double reach = within(apart, nearest, outside);
    double angle = Math.atan2(dy, dx);
    Meeting meeting = new Station(apart, radius, Math.abs(perRadian) * Angles.TURN);
    // Whole passages are alike but for their heights: search once.
    double whole = Double.NaN;
    double wholeDown = Double.NaN;
    double first = angle + Angles.TURN * Math.ceil((low - reach - angle) / Angles.TURN);
    for (double a = first; a - reach <= high; a += Angles.TURN) {
      if (a - reach >= low && a + reach <= high) {
        if (Double.isNaN(whole)) {
          Span span = span(meeting, apart, outside, -reach, reach);
          whole = span.up(swath.up());
          wholeDown = span.down(swath.down());
        }
        out.add(height(a) - wholeDown, height(a) + whole);
      } else {
        double from = Math.max(low - a, -reach);
        double to = Math.min(high - a, reach);
        if (from <= to) {
          swath.open(span(meeting, apart, outside, from, to), height(a), out);
        }
      }
    }
  }

  /** Angle from the line within which the cutter holds the line (rad), up to half a turn. */
  private double within(double apart, double nearest, double outside) {
    if (apart + radius <= outside) {
      return Math.PI;
    }
    double square = (outside - nearest) * (outside + nearest) / (4 * apart * radius);
    return 2 * ArcSine.of(Math.sqrt(Math.max(0, Math.min(1, square))));
  }

  private Span span(Meeting meeting, double apart, double outside, double from, double to) {
    return new Span(
        meeting,
        Math.min(outside, Math.abs(apart - radius)),
        from,
        to,
        distance(apart, outside, from),
        distance(apart, outside, to),
        perRadian >= 0);
  }

  private double distance(double apart, double outside, double angle) {
    double half = Math.sin(angle / 2);
    double between = apart - radius;
    return Math.min(outside, Math.sqrt(between * between + 4 * apart * radius * half * half));
  }
}
