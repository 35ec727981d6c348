package flankfit.metal;

import flankfit.solid.SurfaceCells;
import java.util.Arrays;

/** The cells that hold surface at one moment, and their neighbours. */
final class CellList implements SurfaceCells {
  private final Lattice lattice;
  private final Node root;
  private final Bricks bricks;
  private final int after;
  private final int[] cells;
  private final int count;

  private CellList(Skeleton skeleton, Bricks bricks, int after, int[] cells, int count) {
    this.lattice = skeleton.lattice();
    this.root = skeleton.root();
    this.bricks = bricks;
    this.after = after;
    this.cells = cells;
    this.count = count;
  }

  /** Collects cells; their order is that of the octree. */
  static final class Collector {
    private static final int NUMBERS = 4;

    private int[] cells = new int[1 << 12];
    private int size;

    void add(int x, int y, int z, int side) {
      if (size == cells.length) {
        cells = Arrays.copyOf(cells, 2 * size);
      }
      cells[size] = x;
      cells[size + 1] = y;
      cells[size + 2] = z;
      cells[size + 3] = side;
      size += NUMBERS;
    }

    CellList list(Skeleton skeleton, Bricks bricks, int after) {
      return new CellList(skeleton, bricks, after, Arrays.copyOf(cells, size), size / NUMBERS);
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
    return count;
  }

  @Override
  public int x(int leaf) {
    return cells[4 * leaf];
  }

  @Override
  public int y(int leaf) {
    return cells[4 * leaf + 1];
  }

  @Override
  public int z(int leaf) {
    return cells[4 * leaf + 2];
  }

  @Override
  public int size(int leaf) {
    return cells[4 * leaf + 3];
  }

  /** A lattice point belongs to up to eight leaves; the finest of them knows it. */
  @Override
  public boolean metal(int x, int y, int z) {
    for (int d = 0; d < 8; d++) {
      int px = x - (d & 1);
      int py = y - (d >> 1 & 1);
      int pz = z - (d >> 2 & 1);
      boolean there =
          Math.min(px, Math.min(py, pz)) >= 0 && Math.max(px, Math.max(py, pz)) < root.size;
      if (there) {
        Node leaf = root.leafAt(px, py, pz);
        if (!leaf.mayHoldSurface(after)) {
          return leaf.isMetal(after);
        }
        int cell = leaf.cell();
        int i = x - leaf.x;
        int j = y - leaf.y;
        int k = z - leaf.z;
        if ((i | j | k) % cell == 0) {
          return bricks.of(leaf).isMetal(i / cell, j / cell, k / cell, after);
        }
      }
    }
    throw new IllegalArgumentException("no leaf has a corner at " + x + ", " + y + ", " + z);
  }
}
