package flankfit.control;

import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.unit.Tolerance;
import java.util.OptionalInt;

/** Where two tapes part: at the first move that is another, or is there in one only. */
final class TapeDifference {
  private static final double NEAR = Tolerance.MODEL.value();

  private TapeDifference() {}

  /** Index of the first move that differs; the shorter length when one goes on after the other. */
  static OptionalInt between(Tape a, Tape b) {
    int both = Math.min(a.size(), b.size());
    int sameState = -1;
    int otherState = -1;
    for (int move = 0; move < both; move++) {
      if (a.stateIndex(move) != sameState || b.stateIndex(move) != otherState) {
        if (differ(a.state(move), b.state(move))) {
          return OptionalInt.of(move);
        }
        sameState = a.stateIndex(move);
        otherState = b.stateIndex(move);
      }
      if (differ(a, b, move)) {
        return OptionalInt.of(move);
      }
    }
    return a.size() == b.size() ? OptionalInt.empty() : OptionalInt.of(both);
  }

  private static boolean differ(Tape a, Tape b, int move) {
    if (a.kind(move) != b.kind(move)
        || differ(a.toX(move), b.toX(move))
        || differ(a.toY(move), b.toY(move))
        || differ(a.toZ(move), b.toZ(move))) {
      return true;
    }
    if (a.kind(move) == MoveKind.DWELL) {
      return differ(a.seconds(move), b.seconds(move));
    }
    return a.kind(move) == MoveKind.ARC && arcsDiffer(a, b, move);
  }

  private static boolean arcsDiffer(Tape a, Tape b, int move) {
    return differ(a.centreU(move), b.centreU(move))
        || differ(a.centreV(move), b.centreV(move))
        || differ(a.radius(move), b.radius(move))
        || differ(a.endRadius(move), b.endRadius(move))
        || Math.abs(a.sweep(move) - b.sweep(move)) * Math.max(1, a.radius(move)) > NEAR;
  }

  /** What the tool does by the state; how the control came to it is no difference. */
  private static boolean differ(ModalState a, ModalState b) {
    return a.plane() != b.plane()
        || a.compensation() != b.compensation()
        || a.tool() != b.tool()
        || a.spindle() != b.spindle()
        || a.coolant() != b.coolant()
        || differ(a.feed(), b.feed())
        || differ(a.rpm(), b.rpm());
  }

  private static boolean differ(double a, double b) {
    return Math.abs(a - b) > NEAR;
  }
}
