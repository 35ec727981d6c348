package flankfit.metal;

/** Which lattice points are metal after some moves. Safe for many readers. */
final class Corners {
  private final Node root;
  private final Bricks bricks;
  private final int after;

  Corners(Node root, Bricks bricks, int after) {
    this.root = root;
    this.bricks = bricks;
    this.after = after;
  }

  /**
   * Whether a lattice point is metal. It belongs to up to eight leaves; the finest of them knows
   * it.
   *
   * @throws IllegalArgumentException if no leaf has a corner there
   */
  boolean metal(int x, int y, int z) {
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

  /**
   * The corners of a leaf's cell that are metal, as {@link flankfit.solid.SurfaceCells#corners}.
   */
  int of(Node leaf, int i, int j, int k) {
    int bits = 0;
    if (Math.max(i, Math.max(j, k)) == Node.CELLS - 1) {
      // What lies on a leaf's upper faces belongs to its neighbours.
      int cell = leaf.cell();
      for (int c = 0; c < 8; c++) {
        int x = leaf.x + (i + (c & 1)) * cell;
        int y = leaf.y + (j + (c >> 1 & 1)) * cell;
        bits |= metal(x, y, leaf.z + (k + (c >> 2)) * cell) ? 1 << c : 0;
      }
      return bits;
    }
    if (!leaf.mayHoldSurface(after)) {
      return leaf.isMetal(after) ? 255 : 0;
    }
    Brick brick = bricks.of(leaf);
    for (int c = 0; c < 8; c++) {
      bits |= brick.isMetal(i + (c & 1), j + (c >> 1 & 1), k + (c >> 2), after) ? 1 << c : 0;
    }
    return bits;
  }
}
