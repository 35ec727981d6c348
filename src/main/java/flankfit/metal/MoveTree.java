package flankfit.metal;

/**
 * A hierarchy of boxes over the moves that take metal away, in the order of time: what may cut in a
 * region is found in that order without looking at the rest.
 */
final class MoveTree {
  /** Moves under one lowest box. */
  private static final int GROUP = 8;

  private static final int SIDES = 6;

  private final int[] all;
  private final int[] moves;
  private final int leaves;
  private final double[] boxes;

  private MoveTree(int[] all, int[] moves, int leaves, double[] boxes) {
    this.all = all;
    this.moves = moves;
    this.leaves = leaves;
    this.boxes = boxes;
  }

  /** The tree of all moves that take metal away. */
  static MoveTree of(Cuts cuts) {
    int size = cuts.tape().size();
    MoveList all = new MoveList();
    MoveList distinct = new MoveList();
    Repeats repeats = new Repeats(cuts);
    for (int move = 0; move < size; move++) {
      if (cuts.removes(move)) {
        all.add(move);
        if (!repeats.isRepeated(move)) {
          distinct.add(move);
        }
      }
    }
    int[] moves = distinct.toArray();
    int count = moves.length;
    int leaves = Math.max(1, Integer.highestOneBit(Math.max(1, (count - 1) / GROUP)) << 1);
    double[] boxes = new double[2 * leaves * SIDES];
    for (int i = 0; i < 2 * leaves; i++) {
      for (int axis = 0; axis < 3; axis++) {
        boxes[SIDES * i + axis] = Double.POSITIVE_INFINITY;
        boxes[SIDES * i + 3 + axis] = Double.NEGATIVE_INFINITY;
      }
    }
    SweptCut cut = new SweptCut();
    for (int i = 0; i < count; i++) {
      cuts.load(moves[i], cut);
      cut.include(boxes, SIDES * (leaves + i / GROUP));
    }
    for (int i = leaves - 1; i > 0; i--) {
      join(boxes, i, 2 * i);
      join(boxes, i, 2 * i + 1);
    }
    return new MoveTree(all.toArray(), moves, leaves, boxes);
  }

  private static void join(double[] boxes, int into, int from) {
    for (int axis = 0; axis < 3; axis++) {
      int low = SIDES * into + axis;
      boxes[low] = Math.min(boxes[low], boxes[SIDES * from + axis]);
      boxes[low + 3] = Math.max(boxes[low + 3], boxes[SIDES * from + axis + 3]);
    }
  }

  /** All moves, by rising index. */
  int[] moves() {
    return all;
  }

  /**
   * The moves that sweep what none before them has swept, by rising index; only these are found.
   */
  int[] distinct() {
    return moves;
  }

  /**
   * Adds the moves that may come within a box, by rising index.
   *
   * @param half half the box's side (mm)
   * @param before only moves with an index below this
   */
  void collect(double x, double y, double z, double half, int before, MoveList target) {
    collect(1, x, y, z, half, before, target);
  }

  private void collect(
      int node, double x, double y, double z, double half, int before, MoveList target) {
    int at = SIDES * node;
    if (boxes[at] > x + half
        || boxes[at + 1] > y + half
        || boxes[at + 2] > z + half
        || boxes[at + 3] < x - half
        || boxes[at + 4] < y - half
        || boxes[at + 5] < z - half) {
      return;
    }
    if (node < leaves) {
      collect(2 * node, x, y, z, half, before, target);
      collect(2 * node + 1, x, y, z, half, before, target);
      return;
    }
    int from = (node - leaves) * GROUP;
    for (int i = from; i < Math.min(from + GROUP, moves.length) && moves[i] < before; i++) {
      target.add(moves[i]);
    }
  }
}
