package flankfit.window;

import flankfit.motion.MoveKind;
import flankfit.motion.Tape;

/**
 * Boxes round groups of moves that follow each other, so that a place is found among millions. The
 * box of an arc is that of its whole circle, centre included. Never changes.
 */
final class MoveBoxes {
  /** Moves of a group. */
  static final int GROUP = 256;

  static final MoveBoxes NONE = new MoveBoxes(0);

  private final int moves;
  private final float[] boxes;

  private MoveBoxes(int moves) {
    this.moves = moves;
    boxes = new float[6 * groups()];
  }

  /** The boxes of a tape; takes time in proportion to its moves. */
  static MoveBoxes of(Tape tape) {
    MoveBoxes made = new MoveBoxes(tape.size());
    double[] box = new double[6];
    for (int group = 0; group < made.groups(); group++) {
      for (int axis = 0; axis < 3; axis++) {
        box[axis] = Double.MAX_VALUE;
        box[axis + 3] = -Double.MAX_VALUE;
      }
      for (int move = made.first(group); move < made.end(group); move++) {
        include(tape, move, box);
      }
      for (int axis = 0; axis < 3; axis++) {
        made.boxes[6 * group + axis] = Math.nextDown((float) box[axis]);
        made.boxes[6 * group + axis + 3] = Math.nextUp((float) box[axis + 3]);
      }
    }
    return made;
  }

  private static void include(Tape tape, int move, double[] box) {
    point(box, tape.fromX(move), tape.fromY(move), tape.fromZ(move), 0, 0, 0);
    point(box, tape.toX(move), tape.toY(move), tape.toZ(move), 0, 0, 0);
    if (tape.kind(move) == MoveKind.ARC) {
      int u = tape.state(move).plane().u();
      int v = tape.state(move).plane().v();
      double r = Math.max(tape.radius(move), tape.endRadius(move));
      double x = u == 0 ? tape.centreU(move) : v == 0 ? tape.centreV(move) : tape.toX(move);
      double y = u == 1 ? tape.centreU(move) : v == 1 ? tape.centreV(move) : tape.toY(move);
      double z = u == 2 ? tape.centreU(move) : v == 2 ? tape.centreV(move) : tape.toZ(move);
      point(
          box,
          x,
          y,
          z,
          u == 0 || v == 0 ? r : 0,
          u == 1 || v == 1 ? r : 0,
          u == 2 || v == 2 ? r : 0);
    }
  }

  private static void point(
      double[] box, double x, double y, double z, double rx, double ry, double rz) {
    box[0] = Math.min(box[0], x - rx);
    box[1] = Math.min(box[1], y - ry);
    box[2] = Math.min(box[2], z - rz);
    box[3] = Math.max(box[3], x + rx);
    box[4] = Math.max(box[4], y + ry);
    box[5] = Math.max(box[5], z + rz);
  }

  /** Number of groups. */
  int groups() {
    return (moves + GROUP - 1) / GROUP;
  }

  /** First move of a group. */
  int first(int group) {
    return group * GROUP;
  }

  /** The move behind the last one of a group. */
  int end(int group) {
    return Math.min(moves, (group + 1) * GROUP);
  }

  /** The middle of a group's box on an axis (mm). */
  double middle(int group, int axis) {
    return ((double) boxes[6 * group + axis] + boxes[6 * group + axis + 3]) / 2;
  }

  /** Half the size of a group's box on an axis (mm). */
  double half(int group, int axis) {
    return ((double) boxes[6 * group + axis + 3] - boxes[6 * group + axis]) / 2;
  }
}
