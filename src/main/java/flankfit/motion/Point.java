package flankfit.motion;

import flankfit.unit.Require;

/**
 * A point in the part frame.
 *
 * @param x first coordinate (mm)
 * @param y second coordinate (mm)
 * @param z third coordinate, along the tool (mm)
 */
public record Point(double x, double y, double z) {
  /** The part frame's zero. */
  public static final Point ZERO = new Point(0, 0, 0);

  public Point {
    Require.finite("x", x);
    Require.finite("y", y);
    Require.finite("z", z);
  }

  /** The coordinate on axis 0 (X), 1 (Y) or 2 (Z) (mm). */
  public double axis(int axis) {
    return switch (axis) {
      case 0 -> x;
      case 1 -> y;
      case 2 -> z;
      default -> throw new IllegalArgumentException("axis must be 0, 1 or 2: " + axis);
    };
  }

  /** The straight distance to another point (mm). */
  public double distance(Point other) {
    double dx = x - other.x;
    double dy = y - other.y;
    double dz = z - other.z;
    return Math.sqrt(dx * dx + dy * dy + dz * dz);
  }
}
