package flankfit.picture;

import flankfit.motion.Extents;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;

/** The box of the feed moves of paths: far rapids would leave nothing of them to see. */
final class PathRange {
  private final double[] low = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
  private final double[] high = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};

  /** The box of some paths; that of all moves where none is at feed. */
  static PathRange of(Tape... tapes) {
    PathRange range = new PathRange();
    for (Tape tape : tapes) {
      range.takeFeeds(tape);
    }
    for (Tape tape : tapes) {
      if (range.low[0] > range.high[0]) {
        Extents all = tape.extents();
        range.take(all.min());
        range.take(all.max());
      }
    }
    return range;
  }

  /** Makes room for the ends told at feed, too, which compensation may leave far off the path. */
  PathRange withProgrammed(Tape tape) {
    for (int move = 0; move < tape.size(); move++) {
      if (tape.kind(move) == MoveKind.LINE || tape.kind(move) == MoveKind.ARC) {
        take(tape.programmedTo(move));
      }
    }
    return this;
  }

  private void takeFeeds(Tape tape) {
    double[] p = new double[3];
    for (int move = 0; move < tape.size(); move++) {
      if (tape.kind(move) == MoveKind.LINE || tape.kind(move) == MoveKind.ARC) {
        for (int i = 0; i <= 16; i++) {
          tape.pointAt(move, i / 16.0, p);
          take(new Point(p[0], p[1], p[2]));
        }
      }
    }
  }

  /** Makes room for a point, too. */
  void take(Point p) {
    for (int axis = 0; axis < 3; axis++) {
      low[axis] = Math.min(low[axis], p.axis(axis));
      high[axis] = Math.max(high[axis], p.axis(axis));
    }
  }

  Point low() {
    return new Point(low[0], low[1], low[2]);
  }

  Point high() {
    return new Point(high[0], high[1], high[2]);
  }
}
