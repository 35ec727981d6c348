package flankfit.metal;

import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import java.util.Arrays;

/**
 * Finds moves that sweep nothing which an earlier move of the same tool has not swept: a spring
 * pass over the very same path, and moves along the tool within what it has plunged through, as in
 * peck drilling. Looks back through tables of fixed size, so that some may be missed.
 */
final class Repeats {
  private static final int SIZE = 1 << 12;
  private static final int NONE = -1;

  private final Cuts cuts;
  private final Tape tape;
  private final int[] last = new int[SIZE];

  /** Of plunges at one place: the move that began them, and the heights they reach (mm). */
  private final int[] plunge = new int[SIZE];

  private final double[] lowest = new double[SIZE];
  private final double[] highest = new double[SIZE];

  Repeats(Cuts cuts) {
    this.cuts = cuts;
    this.tape = cuts.tape();
    Arrays.fill(last, NONE);
    Arrays.fill(plunge, NONE);
  }

  /** Whether a move sweeps nothing new; moves are to be given by rising index. */
  boolean isRepeated(int move) {
    double x = tape.fromX(move);
    double y = tape.fromY(move);
    boolean arc = tape.kind(move) == MoveKind.ARC;
    if (!arc && x == tape.toX(move) && y == tape.toY(move)) {
      return isPlunged(move, slot(hash(x, y)));
    }
    long ends = hash(tape.toX(move), tape.toY(move)) + 17 * hash(tape.fromZ(move), tape.toZ(move));
    int slot = slot(31 * hash(x, y) + ends);
    boolean same = last[slot] != NONE && isSame(last[slot], move, arc);
    last[slot] = move;
    return same;
  }

  private boolean isPlunged(int move, int slot) {
    double low = Math.min(tape.fromZ(move), tape.toZ(move));
    double high = Math.max(tape.fromZ(move), tape.toZ(move));
    int before = plunge[slot];
    boolean beside =
        before != NONE
            && isSameTool(before, move)
            && tape.fromX(before) == tape.fromX(move)
            && tape.fromY(before) == tape.fromY(move)
            && low <= highest[slot]
            && high >= lowest[slot];
    if (beside && low >= lowest[slot] && high <= highest[slot]) {
      return true;
    }
    plunge[slot] = move;
    lowest[slot] = beside ? Math.min(low, lowest[slot]) : low;
    highest[slot] = beside ? Math.max(high, highest[slot]) : high;
    return false;
  }

  private boolean isSameTool(int a, int b) {
    return cuts.cutting(a) == cuts.cutting(b);
  }

  private boolean isSame(int a, int b, boolean arc) {
    if (!isSameTool(a, b) || arc != (tape.kind(a) == MoveKind.ARC)) {
      return false;
    }
    boolean ends =
        tape.fromX(a) == tape.fromX(b)
            && tape.fromY(a) == tape.fromY(b)
            && tape.fromZ(a) == tape.fromZ(b)
            && tape.toX(a) == tape.toX(b)
            && tape.toY(a) == tape.toY(b)
            && tape.toZ(a) == tape.toZ(b);
    return ends && (!arc || isSameArc(a, b));
  }

  private boolean isSameArc(int a, int b) {
    return tape.state(a).plane() == tape.state(b).plane()
        && tape.centreU(a) == tape.centreU(b)
        && tape.centreV(a) == tape.centreV(b)
        && tape.radius(a) == tape.radius(b)
        && tape.endRadius(a) == tape.endRadius(b)
        && tape.startAngle(a) == tape.startAngle(b)
        && tape.sweep(a) == tape.sweep(b);
  }

  private static long hash(double a, double b) {
    // Zeros of both signs are one place.
    return 31 * Double.doubleToLongBits(a + 0.0) + Double.doubleToLongBits(b + 0.0);
  }

  private static int slot(long hash) {
    return (int) ((hash * 0x9E3779B97F4A7C15L) >>> 52);
  }
}
