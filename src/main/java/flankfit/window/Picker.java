package flankfit.window;

import flankfit.motion.Chords;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.picture.Camera;
import java.util.Arrays;
import java.util.Optional;

/**
 * Finds what lies under the pointer: groups of moves whose box is near, then the moves in them,
 * then of all places within reach the one nearest to the eye. Knows the path itself, so that what
 * it gives is exact however coarsely the path is drawn.
 */
final class Picker {
  /** How far from the pointer a place may lie (logical px). */
  static final double REACH = 6;

  /** Moves looked at for one pick; more would hold up the frame. */
  static final int MOST_MOVES = 40_000;

  private static final int MOST_CHORDS = 1000;

  private final Tape tape;
  private final MoveBoxes boxes;
  private final Camera camera;
  private final double reach;
  private final boolean centres;
  private final double[] p = new double[3];
  private double column;
  private double row;
  private double bestDepth;
  private double bestDistance;
  private Optional<Pick> best = Optional.empty();

  /**
   * Picks on a path.
   *
   * @param reach how far from the pointer a place may lie (px), above 0
   * @param centres whether centres of arcs count, and exact places come first: to measure
   */
  Picker(Tape tape, MoveBoxes boxes, Camera camera, double reach, boolean centres) {
    this.tape = tape;
    this.boxes = boxes;
    this.camera = camera;
    this.reach = reach;
    this.centres = centres;
  }

  /** What lies under a place in the scene (px, rows upwards). */
  Optional<Pick> at(double atColumn, double atRow) {
    column = atColumn;
    row = atRow;
    best = Optional.empty();
    long[] near = new long[boxes.groups()];
    int count = 0;
    for (int group = 0; group < boxes.groups(); group++) {
      if (isNear(group)) {
        near[count++] = key(group);
      }
    }
    Arrays.sort(near, 0, count);
    int seen = 0;
    for (int i = 0; i < count && seen < MOST_MOVES; i++) {
      int group = (int) near[i];
      if (!centres && best.isPresent() && nearDepth(group) < bestDepth - depthRoom()) {
        break;
      }
      for (int move = boxes.first(group); move < boxes.end(group); move++) {
        test(move);
      }
      seen += MoveBoxes.GROUP;
    }
    return best;
  }

  /** Orders groups by how near they come to the eye, the nearest first; holds the group below. */
  private long key(int group) {
    int bits = Float.floatToIntBits((float) -nearDepth(group));
    int order = bits ^ (bits >> 31 & 0x7FFFFFFF); // as whole numbers in the order of the floats
    return (long) order << 32 | group;
  }

  /** Places whose depths differ by less count as equally near (mm). */
  private double depthRoom() {
    return 1.5 * reach * camera.millimetresPerPixel();
  }

  private boolean isNear(int group) {
    double x = boxes.middle(group, 0);
    double y = boxes.middle(group, 1);
    double z = boxes.middle(group, 2);
    double across = reach;
    double upright = reach;
    for (int axis = 0; axis < 3; axis++) {
      double half = boxes.half(group, axis) / camera.millimetresPerPixel();
      across += Math.abs(camera.right(axis)) * half;
      upright += Math.abs(camera.up(axis)) * half;
    }
    return Math.abs(camera.column(x, y, z) - column) <= across
        && Math.abs(camera.row(x, y, z) - row) <= upright;
  }

  private double nearDepth(int group) {
    double depth = 0;
    for (int axis = 0; axis < 3; axis++) {
      depth +=
          camera.eye(axis) * boxes.middle(group, axis)
              + Math.abs(camera.eye(axis)) * boxes.half(group, axis);
    }
    return depth;
  }

  private void test(int move) {
    MoveKind kind = tape.kind(move);
    if (kind == MoveKind.DWELL) {
      return;
    }
    int chords =
        kind == MoveKind.ARC
            ? Math.min(MOST_CHORDS, Chords.count(tape, move, 0.5 * camera.millimetresPerPixel()))
            : 1;
    p[0] = tape.fromX(move);
    p[1] = tape.fromY(move);
    p[2] = tape.fromZ(move);
    double c0 = camera.column(p[0], p[1], p[2]);
    double r0 = camera.row(p[0], p[1], p[2]);
    end(move, 0, c0, r0);
    double nearest = Double.MAX_VALUE; // of the stretch of chords within reach
    double share = 0;
    for (int i = 1; i <= chords; i++) {
      tape.pointAt(move, (double) i / chords, p);
      double c1 = camera.column(p[0], p[1], p[2]);
      double r1 = camera.row(p[0], p[1], p[2]);
      double dc = c1 - c0;
      double dr = r1 - r0;
      double square = dc * dc + dr * dr;
      double t = square > 0 ? ((column - c0) * dc + (row - r0) * dr) / square : 0;
      t = Math.max(0, Math.min(1, t));
      double distance = Math.hypot(c0 + t * dc - column, r0 + t * dr - row);
      if (distance <= reach && distance < nearest) {
        nearest = distance;
        share = (i - 1 + t) / chords;
      }
      if (nearest <= reach && (distance > reach || i == chords)) {
        // An end is meant where it is near: the line itself counts as a little farther.
        offer(Pick.Kind.LINE, move, share, reach + nearest);
        nearest = Double.MAX_VALUE;
      }
      c0 = c1;
      r0 = r1;
    }
    end(move, 1, c0, r0);
    if (centres && kind == MoveKind.ARC) {
      centre(move);
    }
  }

  private void end(int move, double share, double c, double r) {
    double distance = Math.hypot(c - column, r - row);
    if (distance <= reach) {
      offer(Pick.Kind.END, move, share, distance);
    }
  }

  private void centre(int move) {
    Point at = ArcVectors.of(tape, move).centre();
    double distance =
        Math.hypot(
            camera.column(at.x(), at.y(), at.z()) - column,
            camera.row(at.x(), at.y(), at.z()) - row);
    if (distance <= reach) {
      take(Pick.Kind.CENTRE, move, 0, at, distance);
    }
  }

  private void offer(Pick.Kind kind, int move, double share, double distance) {
    tape.pointAt(move, share, p);
    double depth = camera.eye(0) * p[0] + camera.eye(1) * p[1] + camera.eye(2) * p[2];
    if (isBetter(kind, depth, distance)) {
      keep(new Pick(kind, move, share, new Point(p[0], p[1], p[2])), depth, distance);
    }
  }

  private void take(Pick.Kind kind, int move, double share, Point at, double distance) {
    double depth = camera.eye(0) * at.x() + camera.eye(1) * at.y() + camera.eye(2) * at.z();
    if (isBetter(kind, depth, distance)) {
      keep(new Pick(kind, move, share, at), depth, distance);
    }
  }

  /**
   * To measure, centres before ends before lines; then nearer to the eye; where that is equal,
   * nearer to the pointer, ends before lines.
   */
  private boolean isBetter(Pick.Kind kind, double depth, double distance) {
    if (best.isEmpty()) {
      return true;
    }
    int exactness = best.get().kind().compareTo(kind);
    if (centres && exactness != 0) {
      return exactness > 0;
    }
    double room = depthRoom();
    return depth > bestDepth + room || (depth > bestDepth - room && distance < bestDistance - 1e-9);
  }

  private void keep(Pick pick, double depth, double distance) {
    best = Optional.of(pick);
    bestDepth = depth;
    bestDistance = distance;
  }
}
