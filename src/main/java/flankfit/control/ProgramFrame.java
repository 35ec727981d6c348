package flankfit.control;

import flankfit.motion.Point;
import java.util.Objects;

/**
 * Where the coordinates of a program lie in the part frame while a block is executed: offsets,
 * shifts, tool length, and mirror, scale and rotation.
 *
 * @param origin program coordinates of the part frame's zero (mm)
 * @param x by how much program coordinates change for 1 mm along the part's X
 * @param y the same along Y
 * @param z the same along Z
 * @param transformed whether mirror, scale or rotation is on; otherwise x, y, z are unit vectors
 */
public record ProgramFrame(Point origin, Point x, Point y, Point z, boolean transformed) {
  public ProgramFrame {
    Objects.requireNonNull(origin, "origin");
    Objects.requireNonNull(x, "x");
    Objects.requireNonNull(y, "y");
    Objects.requireNonNull(z, "z");
  }

  /** A frame whose zero lies at a point of the part frame (mm), not turned. */
  static ProgramFrame shifted(double zeroX, double zeroY, double zeroZ) {
    // 0 - a, for -0 is no coordinate that anybody wants to compare or read.
    return new ProgramFrame(
        new Point(0 - zeroX, 0 - zeroY, 0 - zeroZ),
        new Point(1, 0, 0),
        new Point(0, 1, 0),
        new Point(0, 0, 1),
        false);
  }

  /** Program coordinates of a point of the part frame (mm). */
  public Point coordinates(Point part) {
    Point turned = distances(part);
    return new Point(origin.x() + turned.x(), origin.y() + turned.y(), origin.z() + turned.z());
  }

  /** Program distances of a way in the part frame (mm). */
  public Point distances(Point way) {
    if (!transformed) {
      return way;
    }
    return new Point(
        way.x() * x.x() + way.y() * y.x() + way.z() * z.x(),
        way.x() * x.y() + way.y() * y.y() + way.z() * z.y(),
        way.x() * x.z() + way.y() * y.z() + way.z() * z.z());
  }

  /**
   * Whether a program coordinate means the same place in another frame.
   *
   * @param axis 0 (X), 1 (Y) or 2 (Z)
   */
  public boolean placesAlike(int axis, ProgramFrame other) {
    if (transformed || other.transformed) {
      return equals(other);
    }
    return origin.axis(axis) == other.origin.axis(axis);
  }
}
