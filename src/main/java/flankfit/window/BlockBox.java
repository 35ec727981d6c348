package flankfit.window;

import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import java.util.Optional;

/** The box round the moves of one block, with some room about it. */
final class BlockBox {
  /** Room on each side (1). */
  private static final double ROOM = 0.15;

  /** The least that is shown of the part (mm). */
  private static final double LEAST = 0.2;

  private static final int POINTS = 24;

  private BlockBox() {}

  /**
   * The box of the block of a move.
   *
   * @param wall the wall that is shown flat, for the box there; empty for the part
   */
  static Extents of(Tape tape, int move, Optional<WallFrame> wall) {
    int first = move;
    while (first > 0 && tape.block(first - 1) == tape.block(move)) {
      first--;
    }
    int last = move;
    while (last + 1 < tape.size() && tape.block(last + 1) == tape.block(move)) {
      last++;
    }
    Extents box = at(tape, first, 0, wall);
    for (int m = first; m <= last; m++) {
      for (int i = 1; i <= POINTS; i++) {
        box = box.union(at(tape, m, (double) i / POINTS, wall));
      }
    }
    double room = Math.max(LEAST, ROOM * box.diagonal());
    Point a = box.min();
    Point b = box.max();
    return new Extents(
        new Point(a.x() - room, a.y() - room, a.z() - room),
        new Point(b.x() + room, b.y() + room, b.z() + room));
  }

  private static Extents at(Tape tape, int move, double share, Optional<WallFrame> wall) {
    double[] p = new double[3];
    tape.pointAt(move, share, p);
    Point point =
        wall.map(w -> w.flat(p[0], p[1], p[2])).orElseGet(() -> new Point(p[0], p[1], p[2]));
    return new Extents(point, point);
  }
}
