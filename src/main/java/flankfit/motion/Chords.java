package flankfit.motion;

import flankfit.unit.Require;

/** Turns moves into chords that stay within a tolerance of the true path. */
public final class Chords {
  private Chords() {}

  /**
   * The least number of chords that keeps an arc within the tolerance: {@code ceil(|sweep| / (2
   * acos(1 - tolerance / radius)))}, at least 1. No chord spans more than half a turn, so that a
   * turn smaller than the tolerance is still seen.
   *
   * @param radius greatest radius of the arc (mm), not below 0
   * @param sweep signed sweep (rad)
   * @param tolerance greatest distance of chord from arc (mm), above 0
   */
  public static int count(double radius, double sweep, double tolerance) {
    Require.positive("tolerance", tolerance);
    // 2 acos(1 - x) = 4 asin(sqrt(x / 2)), which keeps its digits where x is tiny.
    double step = radius <= tolerance ? Math.PI : 4 * Math.asin(Math.sqrt(tolerance / radius / 2));
    return Math.max(1, (int) Math.ceil(Math.abs(sweep) / step - 1e-12));
  }

  /** Number of chords of a move: 0 for a dwell, 1 for a straight move. */
  public static int count(Tape tape, int move, double tolerance) {
    return switch (tape.kind(move)) {
      case DWELL -> 0;
      case RAPID, LINE -> 1;
      case ARC ->
          count(Math.max(tape.radius(move), tape.endRadius(move)), tape.sweep(move), tolerance);
    };
  }

  /**
   * Writes the end points of a move's chords, the last one bit for bit the move's end.
   *
   * @param target takes x, y, z (mm) for each chord, from {@code at} on
   * @param at first index to write
   * @param chords number of chords, as {@link #count} gives
   * @return index after the last number written
   */
  public static int write(Tape tape, int move, int chords, double[] target, int at) {
    double[] p = new double[3];
    int k = at;
    for (int i = 1; i <= chords; i++) {
      tape.pointAt(move, (double) i / chords, p);
      target[k++] = p[0];
      target[k++] = p[1];
      target[k++] = p[2];
    }
    return k;
  }
}
