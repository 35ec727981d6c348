package flankfit.window;

import flankfit.motion.Extents;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import java.util.List;
import java.util.Optional;

/**
 * What the Lesson sheet looks at by itself: what is cut by the operation that the position is in,
 * for in the whole part the vectors of one block are lost.
 */
final class LessonBox {
  /** Room on each side (1), and the least of it (mm). */
  private static final double ROOM = 0.08;

  private static final double LEAST = 0.5;

  /** Points of an arc that count, and moves above which what is cut is looked up coarsely. */
  private static final int POINTS = 16;

  private static final int MOST = 5_000;

  private Optional<Operation> shown = Optional.empty();
  private long beginning = -1;
  private Optional<Extents> box = Optional.empty();

  /** The box for the position; empty where nothing is cut, or that is not known yet. */
  Optional<Extents> at(Course course) {
    Loaded loaded = course.loaded();
    Optional<Operation> now = operation(loaded.survey().operations().all(), course.move());
    if (!now.equals(shown) || beginning != loaded.beginning()) {
      shown = now;
      beginning = loaded.beginning();
      box = now.map(o -> of(o, course.tape()).orElseGet(() -> loaded.scene().subject()));
    }
    return box;
  }

  /** The operation of a move, or the next one that cuts. */
  private static Optional<Operation> operation(List<Operation> all, int move) {
    return all.stream()
        .filter(o -> o.last() >= move && o.kind() != Operation.Kind.TRAVEL)
        .findFirst()
        .or(() -> all.stream().filter(o -> o.last() >= move).findFirst());
  }

  private static Optional<Extents> of(Operation operation, Tape tape) {
    if (operation.last() - operation.first() > MOST) {
      return Optional.empty();
    }
    Optional<Extents> cut = Optional.empty();
    double[] p = new double[3];
    for (int move = operation.first(); move <= operation.last(); move++) {
      MoveKind kind = tape.kind(move);
      int points = kind == MoveKind.ARC ? POINTS : kind == MoveKind.LINE ? 1 : -1;
      for (int i = 0; i <= points; i++) {
        tape.pointAt(move, (double) i / points, p);
        Point at = new Point(p[0], p[1], p[2]);
        Extents one = new Extents(at, at);
        cut = Optional.of(cut.map(c -> c.union(one)).orElse(one));
      }
    }
    return cut.map(LessonBox::roomy);
  }

  private static Extents roomy(Extents cut) {
    double room = Math.max(LEAST, ROOM * cut.diagonal());
    Point a = cut.min();
    Point b = cut.max();
    return new Extents(
        new Point(a.x() - room, a.y() - room, a.z() - room),
        new Point(b.x() + room, b.y() + room, b.z() + room));
  }
}
