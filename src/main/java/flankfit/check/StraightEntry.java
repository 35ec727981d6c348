package flankfit.check;

import flankfit.finding.Code;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Tape;
import flankfit.setup.Hole;
import flankfit.setup.Tool;

/**
 * HZ06: a straight feed of a thread mill runs square into the wall of a declared hole or boss, and
 * an arc follows the wall at that depth. A straight feed that only touches the wall before an entry
 * arc is not meant, nor another mill that makes a pocket round a hole.
 */
final class StraightEntry implements Rule {
  /** Depth in the wall from which it counts, and by which a following arc may differ (mm). */
  private static final double DEEP = 0.1;

  /** Cosine of the angle to the wall's normal within which it counts: 20 degrees. */
  private static final double SQUARE = Math.cos(Math.PI / 9);

  private static final double LEVEL = 1e-6;
  private static final int PLACES = 8;

  private final Scene scene;
  private final Tape tape;
  private final double[] at = new double[3];

  StraightEntry(Scene scene) {
    this.scene = scene;
    this.tape = scene.tape();
  }

  @Override
  public void look(int move) {
    if (scene.sheet().holes().isEmpty() || !scene.isLine(move) || !isThreadMill(move)) {
      return;
    }
    if (Math.abs(scene.climb(move)) > LEVEL || scene.inPlane(move) <= LEVEL) {
      return;
    }
    for (Hole hole : scene.sheet().holes()) {
      if (isBeside(hole, tape.toZ(move)) && isSquare(hole, move) && isFollowed(hole, move)) {
        tell(hole, move);
        return;
      }
    }
  }

  private boolean isThreadMill(int move) {
    return scene.tool(move).filter(t -> t.kind() == Tool.Kind.THREAD_MILL).isPresent();
  }

  /** Whether a tip at a height has the wall at its side. */
  private static boolean isBeside(Hole hole, double z) {
    return z < hole.top() && hole.depth().map(d -> z >= hole.top() - d).orElse(true);
  }

  /** How deep the tool stands in the wall (mm); negative when it does not. */
  private double depth(Hole hole, int move, double x, double y) {
    double distance = Math.hypot(x - hole.x(), y - hole.y());
    double wall = hole.diameter() / 2;
    double radius = scene.radius(move);
    return hole.boss() ? wall - distance + radius : distance + radius - wall;
  }

  private boolean isSquare(Hole hole, int move) {
    double x = tape.toX(move);
    double y = tape.toY(move);
    double distance = Math.hypot(x - hole.x(), y - hole.y());
    double deep = depth(hole, move, x, y);
    boolean enters = depth(hole, move, tape.fromX(move), tape.fromY(move)) <= 0 && deep > DEEP;
    if (!enters || distance <= LEVEL) {
      return false;
    }
    double along =
        (x - tape.fromX(move)) * (x - hole.x()) + (y - tape.fromY(move)) * (y - hole.y());
    double outwards = along / distance / scene.inPlane(move);
    return (hole.boss() ? -outwards : outwards) >= SQUARE;
  }

  /** Whether the next motion is an arc that keeps the depth in the wall. */
  private boolean isFollowed(Hole hole, int move) {
    int next = move + 1;
    while (next < tape.size() && tape.kind(next) == MoveKind.DWELL) {
      next++;
    }
    if (next >= tape.size()
        || tape.kind(next) != MoveKind.ARC
        || tape.state(next).plane() != Plane.XY) {
      return false;
    }
    double deep = depth(hole, move, tape.toX(move), tape.toY(move));
    for (int i = 1; i <= PLACES; i++) {
      tape.pointAt(next, (double) i / PLACES, at);
      if (Math.abs(depth(hole, move, at[0], at[1]) - deep) > DEEP) {
        return false;
      }
    }
    return true;
  }

  private void tell(Hole hole, int move) {
    double deep = depth(hole, move, tape.toX(move), tape.toY(move));
    scene.report(
        Code.HZ06,
        move,
        "enters the wall of "
            + hole.name()
            + " straight, "
            + scene.text().length(deep)
            + " deep, "
            + scene.text().length(DEEP)
            + " is allowed",
        "full engagement at once, and a mark in the wall",
        "enter on an arc");
  }
}
