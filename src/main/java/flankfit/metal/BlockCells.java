package flankfit.metal;

import java.util.ArrayList;
import java.util.List;

/**
 * The cells that hold the surface of one block of the octree at one moment, with as many around it
 * as its vertices need. In the same order as in the list of the whole body.
 */
final class BlockCells extends CellList {
  private final Node block;

  /** The corners of each cell that are metal, a bit each. */
  private final byte[] metal;

  private BlockCells(Lattice lattice, Corners corners, Node block, int most) {
    super(lattice, corners, most);
    this.block = block;
    this.metal = new byte[most];
  }

  /** The cells of a block after so many moves. */
  static BlockCells of(Skeleton skeleton, Bricks bricks, Node block, int after) {
    List<Node> near = new ArrayList<>();
    collect(skeleton.root(), block, 1, near);
    int widest = 1;
    for (Node leaf : near) {
      widest = Math.max(widest, leaf.cell());
    }
    near.clear();
    collect(skeleton.root(), block, 4 * widest, near);
    CellMarks marks = new CellMarks(skeleton.root());
    CellCursor cursor = new CellCursor();
    for (Node leaf : near) {
      if (leaf.mayHoldSurface(after) && touches(leaf, block, widest)) {
        long[] bits = CellMarks.surface(bricks.of(leaf), after);
        if (keep(leaf, block, widest, bits, cursor)) {
          marks.mark(leaf, bits);
        }
      }
    }
    int count = 0;
    for (Node leaf : near) {
      count += marks.count(leaf);
    }
    Corners corners = new Corners(skeleton.root(), bricks, after);
    BlockCells cells = new BlockCells(skeleton.lattice(), corners, block, count);
    for (Node leaf : near) {
      cursor.begin(marks.marked(leaf));
      while (cursor.next()) {
        cells.metal[cells.count()] = (byte) corners.of(leaf, cursor.i, cursor.j, cursor.k);
        cells.add(leaf, cursor);
      }
    }
    return cells;
  }

  /** Whether a cube lies within a distance of a block, in finest cells. */
  static boolean touches(Node node, Node block, int reach) {
    return touches(node.x, node.y, node.z, node.size, block, reach);
  }

  private static boolean touches(int x, int y, int z, int size, Node block, int reach) {
    return x <= block.x + block.size + reach
        && y <= block.y + block.size + reach
        && z <= block.z + block.size + reach
        && x + size >= block.x - reach
        && y + size >= block.y - reach
        && z + size >= block.z - reach;
  }

  /** The leaves within a distance of a block, in the octree's order. */
  private static void collect(Node node, Node block, int reach, List<Node> to) {
    if (!touches(node, block, reach)) {
      return;
    }
    if (node.isLeaf()) {
      to.add(node);
    }
    for (Node child : node.children) {
      collect(child, block, reach, to);
    }
  }

  /** Drops cells that are too far from a block; whether any is left. */
  private static boolean keep(Node leaf, Node block, int reach, long[] bits, CellCursor cursor) {
    int cell = leaf.cell();
    boolean any = false;
    cursor.begin(bits);
    while (cursor.next()) {
      int x = leaf.x + cursor.i * cell;
      int y = leaf.y + cursor.j * cell;
      int z = leaf.z + cursor.k * cell;
      if (touches(x, y, z, cell, block, reach)) {
        any = true;
      } else {
        cursor.drop();
      }
    }
    return any;
  }

  @Override
  public int corners(int leaf) {
    return metal[leaf] & 0xFF;
  }

  @Override
  public boolean isPiece() {
    return true;
  }

  @Override
  public boolean owns(int x, int y, int z) {
    return x >= block.x
        && y >= block.y
        && z >= block.z
        && x < block.x + block.size
        && y < block.y + block.size
        && z < block.z + block.size;
  }
}
