package flankfit.gauge;

import flankfit.standard.ThreadSpec;

/** A best-size ball laid into the grooves of a wall, lead angle neglected. */
final class BallInGroove {
  private static final int STEPS = 20;

  private final WallField field;
  private final double radius;
  private final double halfAngle;

  BallInGroove(WallField field) {
    ThreadSpec spec = field.spec();
    this.field = field;
    this.halfAngle = spec.halfAngle();
    this.radius = BallReading.bestSize(spec.pitch(), halfAngle) / 2;
  }

  /**
   * Depth of the ball's centre when it rests on both flanks (mm); not a number where it does not.
   *
   * @param pitchDepth depth at which the groove is half the pitch wide (mm)
   */
  double centre(int e, double pitchDepth) {
    double touch = pitchDepth;
    double centre = Double.NaN;
    for (int i = 0; i < STEPS; i++) {
      double slope = slope(e, touch);
      double width = field.flankAt(e, touch, true) + field.flankAt(e, touch, false);
      double tan = -slope / 2;
      // Two flanks of that slope through the place touched hold the ball symmetrically.
      double next = touch + (width / 2 - radius * Math.hypot(1, tan)) / tan;
      double moved = Math.abs(next - centre);
      centre = next;
      touch = centre + radius * tan / Math.hypot(1, tan);
      if (moved < 1e-12) {
        break;
      }
    }
    boolean onFlanks =
        touch > Math.max(field.ridge(e, true), field.ridge(e, false))
            && centre + radius < field.bottom(e);
    return onFlanks ? centre : Double.NaN;
  }

  /** Growth of the groove's width with depth near a depth (1). */
  private double slope(int e, double depth) {
    double step = field.spec().pitch() / 40;
    double low = field.flankAt(e, depth - step, true) + field.flankAt(e, depth - step, false);
    double high = field.flankAt(e, depth + step, true) + field.flankAt(e, depth + step, false);
    return (high - low) / (2 * step);
  }

  /** Pitch diameter that two balls read whose centres stand a distance apart (mm). */
  double pitchDiameter(double betweenCentres) {
    double pitch = field.spec().pitch();
    return betweenCentres - BallReading.betweenCentres(0, 2 * radius, pitch, halfAngle);
  }
}
