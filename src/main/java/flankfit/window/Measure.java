package flankfit.window;

import flankfit.motion.Point;
import java.util.Objects;

/**
 * From one point to another.
 *
 * @param from the first point
 * @param to the second point
 */
record Measure(Point from, Point to) {
  Measure {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
  }

  double dx() {
    return to.x() - from.x();
  }

  double dy() {
    return to.y() - from.y();
  }

  double dz() {
    return to.z() - from.z();
  }

  /** Straight distance (mm). */
  double distance() {
    return from.distance(to);
  }

  /** Distance seen along Z (mm). */
  double inPlan() {
    return Math.hypot(dx(), dy());
  }

  /** Direction in the plane XY from +X, anticlockwise (rad), in [0, 2π); 0 where there is none. */
  double angle() {
    double a = Math.atan2(dy(), dx());
    return a < 0 ? a + 2 * Math.PI : a + 0.0;
  }

  /** Rise above the plane XY (rad), in [-π/2, π/2]. */
  double rise() {
    return Math.atan2(dz(), inPlan());
  }
}
