package flankfit.metal;

import flankfit.motion.MoveKind;
import flankfit.motion.Tape;

/**
 * Moves that only go back over places where the same tool has just been: what touched there has
 * been told, and what it cut is gone. A retract from a drilled hole is one.
 */
final class Revisits {
  /** Moves that are looked back over. */
  private static final int MOST = 256;

  /** Distance within which two places are one (mm). */
  private static final double SAME = 1e-9;

  private Revisits() {}

  /** Whether the same tool, cutting, has been wherever a straight move goes, without a break. */
  static boolean isBack(Cuts cuts, int move) {
    Tape tape = cuts.tape();
    if (tape.kind(move) == MoveKind.ARC || tape.kind(move) == MoveKind.DWELL) {
      return false;
    }
    double low = Math.min(tape.fromZ(move), tape.toZ(move));
    double high = Math.max(tape.fromZ(move), tape.toZ(move));
    boolean upright = isUpright(tape, move);
    double from = tape.fromZ(move);
    double to = from;
    for (int before = move - 1; before >= Math.max(0, move - MOST); before--) {
      if (tape.kind(before) == MoveKind.DWELL) {
        continue;
      }
      boolean same =
          tape.kind(before) != MoveKind.ARC
              && tape.state(before).tool() == tape.state(move).tool()
              && cuts.removes(before);
      if (!same) {
        return false;
      }
      if (!upright) {
        return isOn(tape, before, move);
      }
      if (!isUpright(tape, before)) {
        return false;
      }
      from = Math.min(from, tape.fromZ(before));
      to = Math.max(to, tape.fromZ(before));
      if (from <= low + SAME && to >= high - SAME) {
        return true;
      }
    }
    return false;
  }

  private static boolean isUpright(Tape tape, int move) {
    return Math.abs(tape.toX(move) - tape.fromX(move)) <= SAME
        && Math.abs(tape.toY(move) - tape.fromY(move)) <= SAME;
  }

  /** Whether the end of a move lies on the straight move that led to its start. */
  private static boolean isOn(Tape tape, int before, int move) {
    double dx = tape.fromX(before) - tape.toX(before);
    double dy = tape.fromY(before) - tape.toY(before);
    double dz = tape.fromZ(before) - tape.toZ(before);
    double ex = tape.toX(move) - tape.fromX(move);
    double ey = tape.toY(move) - tape.fromY(move);
    double ez = tape.toZ(move) - tape.fromZ(move);
    double square = dx * dx + dy * dy + dz * dz;
    double share = square > 0 ? (ex * dx + ey * dy + ez * dz) / square : -1;
    double off =
        Math.sqrt(
            (ex - share * dx) * (ex - share * dx)
                + (ey - share * dy) * (ey - share * dy)
                + (ez - share * dz) * (ez - share * dz));
    return share >= 0 && share <= 1 && off <= SAME;
  }
}
