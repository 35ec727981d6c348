package flankfit.check;

import flankfit.solid.Solid;

/** Goes down through air until there is metal. */
final class Descent {
  /** Steps go no shorter than this (mm). */
  private static final double STEP = 1e-4;

  private Descent() {}

  /**
   * The highest metal on an upright line (mm); below {@code to} when there is none.
   *
   * @param from height at which to begin (mm)
   * @param to height at which to end (mm)
   */
  static double toMetal(Solid solid, double x, double y, double from, double to) {
    double z = from;
    while (z >= to) {
      double value = solid.value(x, y, z);
      if (value <= 0) {
        return z;
      }
      // No metal is nearer than that.
      z -= Math.max(STEP, value);
    }
    return Double.NEGATIVE_INFINITY;
  }

  /** The lowest air on an upright line (mm); above {@code to} when there is none. */
  static double toAir(Solid solid, double x, double y, double from, double to) {
    double z = from;
    while (z <= to) {
      double value = solid.value(x, y, z);
      if (value > 0) {
        return z;
      }
      z += Math.max(STEP, -value);
    }
    return Double.POSITIVE_INFINITY;
  }
}
