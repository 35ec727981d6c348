package flankfit.metal;

import java.util.concurrent.atomic.AtomicReferenceFieldUpdater;

/**
 * A cube of the octree with what may happen in it: its moves in order of time, the last of which
 * may empty all of it. A leaf where surface runs at some time has bricks of 8 x 8 x 8 cells.
 */
final class Node {
  /** Cells along a brick's side. */
  static final int CELLS = 8;

  /** Lattice points along a brick's side. */
  static final int POINTS = CELLS + 1;

  /** What the stock is in a cube before the first move. */
  enum Start {
    METAL,
    AIR,
    SKIN
  }

  private static final int[] NONE = {};

  private static final AtomicReferenceFieldUpdater<Node, Brick> BRICK =
      AtomicReferenceFieldUpdater.newUpdater(Node.class, Brick.class, "brick");

  /** Low corner in finest cells. */
  final int x;

  final int y;
  final int z;

  /** Side in finest cells, a power of two. */
  final int size;

  final Start start;

  /** Moves that may cut here, by rising index. */
  final int[] moves;

  /** Whether the last of the moves takes all of the cube away. */
  final boolean emptied;

  /** Eight children, or none of a leaf. */
  Node[] children = {};

  private volatile Brick brick;

  Node(int x, int y, int z, int size, Start start, int[] moves, boolean emptied) {
    this.x = x;
    this.y = y;
    this.z = z;
    this.size = size;
    this.start = start;
    this.moves = start == Start.AIR ? NONE : moves;
    this.emptied = emptied;
  }

  boolean isLeaf() {
    return children.length == 0;
  }

  /** Side of a leaf's cells in finest cells. */
  int cell() {
    return size / CELLS;
  }

  /** Whether the cube is all metal or all air at every time. */
  boolean isUniform() {
    return start == Start.AIR
        || (start == Start.METAL && (moves.length == 0 || (emptied && moves.length == 1)));
  }

  /** Whether surface may run here after some moves. */
  boolean mayHoldSurface(int after) {
    if (isUniform() || (emptied && moves[moves.length - 1] < after)) {
      return false;
    }
    return start == Start.SKIN || moves[0] < after;
  }

  /** Whether a cube that holds no surface after some moves is metal. */
  boolean isMetal(int after) {
    return start == Start.METAL && (moves.length == 0 || moves[0] >= after);
  }

  Brick brick() {
    return brick;
  }

  /** Keeps a brick unless another thread was faster; gives the one that is kept. */
  Brick keep(Brick made) {
    return BRICK.compareAndSet(this, null, made) ? made : brick;
  }

  /** Forgets a brick, which can be made again; says whether it was the one kept. */
  boolean forget(Brick made) {
    return BRICK.compareAndSet(this, made, null);
  }

  /** Leaf that holds a place within this cube, given in finest cells. */
  Node leafAt(int px, int py, int pz) {
    Node node = this;
    while (!node.isLeaf()) {
      node = node.child(px, py, pz);
    }
    return node;
  }

  /** Child that holds a place given in finest cells. */
  Node child(int px, int py, int pz) {
    int half = size / 2;
    return children[(px >= x + half ? 1 : 0) + (py >= y + half ? 2 : 0) + (pz >= z + half ? 4 : 0)];
  }
}
