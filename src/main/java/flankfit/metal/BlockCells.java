package flankfit.metal;

import flankfit.solid.SurfaceCells;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The cells that hold the surface of one block of the octree at one moment, with as many around it
 * as its vertices need. In the same order as in the list of the whole body.
 */
final class BlockCells implements SurfaceCells {
  private static final int NUMBERS = 5;

  private final Lattice lattice;
  private final CellList lookup;
  private final Node block;
  private final int[] cells;

  private BlockCells(Lattice lattice, CellList lookup, Node block, int[] cells) {
    this.lattice = lattice;
    this.lookup = lookup;
    this.block = block;
    this.cells = cells;
  }

  /** The cells of a block after so many moves. */
  static BlockCells of(Skeleton skeleton, Bricks bricks, Node block, int after) {
    CellList lookup = new CellList.Collector().list(skeleton, bricks, after);
    List<Node> near = new ArrayList<>();
    collect(skeleton.root(), block, 1, near);
    int widest = 1;
    for (Node leaf : near) {
      widest = Math.max(widest, leaf.cell());
    }
    near.clear();
    collect(skeleton.root(), block, 4 * widest, near);
    CellMarks marks = new CellMarks(skeleton.root());
    for (Node leaf : near) {
      if (leaf.mayHoldSurface(after) && touches(leaf, block, widest)) {
        long[] bits = CellMarks.surface(bricks.of(leaf), after);
        if (keep(leaf, block, widest, bits)) {
          marks.mark(leaf, bits);
        }
      }
    }
    Rows rows = new Rows();
    for (Node leaf : near) {
      list(leaf, marks.marked(leaf), bricks, after, lookup, rows);
    }
    return new BlockCells(skeleton.lattice(), lookup, block, rows.toArray());
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
  private static boolean keep(Node leaf, Node block, int reach, long[] bits) {
    int cell = leaf.cell();
    long any = 0;
    for (int word = 0; word < bits.length; word++) {
      for (long rest = bits[word]; rest != 0; rest &= rest - 1) {
        int at = 64 * word + Long.numberOfTrailingZeros(rest);
        int i = at % Node.CELLS;
        int j = at / Node.CELLS % Node.CELLS;
        int k = at / (Node.CELLS * Node.CELLS);
        if (!touches(leaf.x + i * cell, leaf.y + j * cell, leaf.z + k * cell, cell, block, reach)) {
          bits[word] &= ~Long.lowestOneBit(rest);
        }
      }
      any |= bits[word];
    }
    return any != 0;
  }

  private static void list(
      Node leaf, long[] bits, Bricks bricks, int after, CellList lookup, Rows rows) {
    boolean holds = leaf.mayHoldSurface(after);
    int cell = leaf.cell();
    for (int word = 0; word < bits.length; word++) {
      for (long rest = bits[word]; rest != 0; rest &= rest - 1) {
        int at = 64 * word + Long.numberOfTrailingZeros(rest);
        int i = at % Node.CELLS;
        int j = at / Node.CELLS % Node.CELLS;
        int k = at / (Node.CELLS * Node.CELLS);
        int x = leaf.x + i * cell;
        int y = leaf.y + j * cell;
        int z = leaf.z + k * cell;
        boolean within = Math.max(i, Math.max(j, k)) < Node.CELLS - 1;
        int corners =
            within
                ? (holds ? corners(bricks.of(leaf), i, j, k, after) : leaf.isMetal(after) ? 255 : 0)
                : corners(lookup, x, y, z, cell);
        rows.add(x, y, z, cell, corners);
      }
    }
  }

  private static int corners(Brick brick, int i, int j, int k, int after) {
    int bits = 0;
    for (int c = 0; c < 8; c++) {
      bits |= brick.isMetal(i + (c & 1), j + (c >> 1 & 1), k + (c >> 2), after) ? 1 << c : 0;
    }
    return bits;
  }

  /** What lies on a leaf's upper faces belongs to its neighbours. */
  private static int corners(CellList lookup, int x, int y, int z, int cell) {
    int bits = 0;
    for (int c = 0; c < 8; c++) {
      boolean metal =
          lookup.metal(x + (c & 1) * cell, y + (c >> 1 & 1) * cell, z + (c >> 2) * cell);
      bits |= metal ? 1 << c : 0;
    }
    return bits;
  }

  /** Rows of numbers that grow. */
  private static final class Rows {
    private int[] numbers = new int[NUMBERS * 512];
    private int size;

    void add(int x, int y, int z, int side, int corners) {
      if (size + NUMBERS > numbers.length) {
        numbers = Arrays.copyOf(numbers, 2 * numbers.length);
      }
      numbers[size] = x;
      numbers[size + 1] = y;
      numbers[size + 2] = z;
      numbers[size + 3] = side;
      numbers[size + 4] = corners;
      size += NUMBERS;
    }

    int[] toArray() {
      return Arrays.copyOf(numbers, size);
    }
  }

  @Override
  public double originX() {
    return lattice.originX();
  }

  @Override
  public double originY() {
    return lattice.originY();
  }

  @Override
  public double originZ() {
    return lattice.originZ();
  }

  @Override
  public double cell() {
    return lattice.cell();
  }

  @Override
  public int count() {
    return cells.length / NUMBERS;
  }

  @Override
  public int x(int leaf) {
    return cells[NUMBERS * leaf];
  }

  @Override
  public int y(int leaf) {
    return cells[NUMBERS * leaf + 1];
  }

  @Override
  public int z(int leaf) {
    return cells[NUMBERS * leaf + 2];
  }

  @Override
  public int size(int leaf) {
    return cells[NUMBERS * leaf + 3];
  }

  @Override
  public int corners(int leaf) {
    return cells[NUMBERS * leaf + 4];
  }

  @Override
  public boolean metal(int x, int y, int z) {
    return lookup.metal(x, y, z);
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
