package flankfit.check;

import flankfit.metal.Metal;

/** Goes along upright lines through the metal of a moment. */
final class Descent {
  /** What is thinner may be passed over (mm). */
  private static final double STEP = 0.02;

  private static final double EXACT = 1e-6;

  private Descent() {}

  /**
   * The highest metal on an upright line (mm); below any height when there is none.
   *
   * @param moves number of moves that have been made
   * @param from height at which to begin (mm)
   * @param to height at which to end, not above (mm)
   */
  static double toMetal(Metal metal, int moves, double x, double y, double from, double to) {
    double found = change(metal, moves, x, y, from, to, true);
    return Double.isNaN(found) ? Double.NEGATIVE_INFINITY : found;
  }

  /** The lowest air on an upright line from below (mm); above any height when there is none. */
  static double toAir(Metal metal, int moves, double x, double y, double from, double to) {
    double found = change(metal, moves, x, y, from, to, false);
    return Double.isNaN(found) ? Double.POSITIVE_INFINITY : found;
  }

  /** The first place where it is as wanted; not a number when there is none. */
  private static double change(
      Metal metal, int moves, double x, double y, double from, double to, boolean wanted) {
    int steps = (int) Math.max(1, Math.ceil(Math.abs(to - from) / STEP));
    double before = from;
    for (int i = 0; i <= steps; i++) {
      double z = from + (to - from) * i / steps;
      if (metal.isMetal(x, y, z, moves) == wanted) {
        double there = z;
        while (i > 0 && Math.abs(there - before) > EXACT) {
          double middle = (there + before) / 2;
          if (metal.isMetal(x, y, middle, moves) == wanted) {
            there = middle;
          } else {
            before = middle;
          }
        }
        return there;
      }
      before = z;
    }
    return Double.NaN;
  }
}
