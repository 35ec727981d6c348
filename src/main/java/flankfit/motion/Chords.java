package flankfit.motion;

import flankfit.unit.Require;

/** Turns moves into chords that stay within a tolerance of the true path. */
public final class Chords {
  /** Chords after which the direction of a radius is computed anew. */
  private static final int ANEW = 32;

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
    int end = at + 3 * chords;
    if (tape.kind(move) == MoveKind.ARC) {
      writeArc(tape, move, chords, target, at);
    } else {
      writeLine(tape, move, chords, target, at);
    }
    if (chords > 0) {
      target[end - 3] = tape.toX(move);
      target[end - 2] = tape.toY(move);
      target[end - 1] = tape.toZ(move);
    }
    return end;
  }

  private static void writeLine(Tape tape, int move, int chords, double[] target, int at) {
    for (int i = 1; i < chords; i++) {
      double share = (double) i / chords;
      int k = at + 3 * (i - 1);
      target[k] = tape.fromX(move) + share * (tape.toX(move) - tape.fromX(move));
      target[k + 1] = tape.fromY(move) + share * (tape.toY(move) - tape.fromY(move));
      target[k + 2] = tape.fromZ(move) + share * (tape.toZ(move) - tape.fromZ(move));
    }
  }

  /**
   * All end points but the last. The direction of the radius is turned from chord to chord, and
   * computed anew every so often, so that it stays within some 1e-15 of its own.
   */
  private static void writeArc(Tape tape, int move, int chords, double[] target, int at) {
    Plane plane = tape.state(move).plane();
    int n = plane.n();
    double fromN = n == 0 ? tape.fromX(move) : n == 1 ? tape.fromY(move) : tape.fromZ(move);
    double toN = n == 0 ? tape.toX(move) : n == 1 ? tape.toY(move) : tape.toZ(move);
    double centreU = tape.centreU(move);
    double centreV = tape.centreV(move);
    double radius = tape.radius(move);
    double widening = tape.endRadius(move) - radius;
    double start = tape.startAngle(move);
    double sweep = tape.sweep(move);
    double cosStep = Math.cos(sweep / chords);
    double sinStep = Math.sin(sweep / chords);
    double each = 1.0 / chords;
    int u = at + plane.u();
    int v = at + plane.v();
    int w = at + n;
    for (int first = 1; first < chords; first += ANEW) {
      double cos = Math.cos(start + first * each * sweep);
      double sin = Math.sin(start + first * each * sweep);
      int end = Math.min(first + ANEW, chords);
      for (int i = first; i < end; i++) {
        double share = i * each;
        double r = radius + share * widening;
        int k = 3 * (i - 1);
        target[k + u] = centreU + r * cos;
        target[k + v] = centreV + r * sin;
        target[k + w] = fromN + share * (toN - fromN);
        double turned = cos * cosStep - sin * sinStep;
        sin = sin * cosStep + cos * sinStep;
        cos = turned;
      }
    }
  }
}
