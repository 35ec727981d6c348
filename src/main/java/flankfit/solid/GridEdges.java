package flankfit.solid;

/**
 * The shortest edges of leaves along which metal turns to air, each with the leaves around it. They
 * are in the order of the leaves that own them.
 */
final class GridEdges {
  private static final int STRIDE = 8;
  private static final int LEAVES_IN_PIECE = 4096;

  /** For each edge: low end x, y, z; length, metal bit and axis; the leaves of four quadrants. */
  private final int[] data;

  private GridEdges(int[] data) {
    this.data = data;
  }

  /**
   * Finds the edges.
   *
   * @throws IllegalStateException if a leaf beside such an edge is not listed
   */
  static GridEdges of(SurfaceCells cells, LeafIndex index, Workers workers) {
    IntColumn[] parts = new IntColumn[Workers.pieces(cells.count(), LEAVES_IN_PIECE)];
    workers.run(
        cells.count(),
        LEAVES_IN_PIECE,
        () -> {
          int[] ring = new int[4];
          return (piece, from, to) -> {
            IntColumn found = new IntColumn();
            for (int leaf = from; leaf < to; leaf++) {
              collect(cells, index, leaf, ring, found);
            }
            parts[piece] = found;
          };
        });
    return new GridEdges(IntColumn.joined(parts));
  }

  private static void collect(
      SurfaceCells cells, LeafIndex index, int leaf, int[] ring, IntColumn found) {
    int size = cells.size(leaf);
    int metal = cells.corners(leaf);
    if (metal == 0 || metal == 0xff) {
      return;
    }
    for (int axis = 0; axis < 3; axis++) {
      for (int corner = 0; corner < 8; corner++) {
        int far = corner | 1 << axis;
        if (far != corner && (metal >> corner & 1) != (metal >> far & 1)) {
          int x = cells.x(leaf) + (corner & 1) * size;
          int y = cells.y(leaf) + (corner >> 1 & 1) * size;
          int z = cells.z(leaf) + (corner >> 2) * size;
          if (owned(cells, index, leaf, axis, x, y, z, ring)) {
            found.add(x);
            found.add(y);
            found.add(z);
            found.add(size << 3 | (metal >> corner & 1) << 2 | axis);
            for (int quadrant = 0; quadrant < 4; quadrant++) {
              found.add(ring[quadrant]);
            }
          }
        }
      }
    }
  }

  /**
   * Fills the ring; false if a finer leaf splits the edge or an earlier one of this size has it, or
   * at the rim of a piece.
   */
  private static boolean owned(
      SurfaceCells cells, LeafIndex index, int leaf, int axis, int x, int y, int z, int[] ring) {
    int size = cells.size(leaf);
    int u = (axis + 1) % 3;
    int v = (axis + 2) % 3;
    for (int quadrant = 0; quadrant < 4; quadrant++) {
      int du = quadrant == 0 || quadrant == 3 ? 1 : 0;
      int dv = quadrant < 2 ? 1 : 0;
      int cx = x - (u == 0 ? du : v == 0 ? dv : 0);
      int cy = y - (u == 1 ? du : v == 1 ? dv : 0);
      int cz = z - (u == 2 ? du : v == 2 ? dv : 0);
      int other = index.at(cx, cy, cz, size);
      if (other < 0 && cells.isPiece()) {
        return false;
      }
      if (other < 0) {
        throw new IllegalStateException(
            "the leaf that covers cell "
                + cx
                + " "
                + cy
                + " "
                + cz
                + " is not listed though surface crosses its edge, or is not 2:1 balanced");
      }
      int otherSize = cells.size(other);
      if (otherSize < size || (otherSize == size && other < leaf)) {
        return false;
      }
      ring[quadrant] = other;
    }
    return true;
  }

  int count() {
    return data.length / STRIDE;
  }

  /** Lattice index of the low end. */
  int low(int edge, int axis) {
    return data[edge * STRIDE + axis];
  }

  int axis(int edge) {
    return data[edge * STRIDE + 3] & 3;
  }

  /** Whether the low end is metal; the high end is the other. */
  boolean metalLow(int edge) {
    return (data[edge * STRIDE + 3] & 4) != 0;
  }

  /** Length in finest cells. */
  int length(int edge) {
    return data[edge * STRIDE + 3] >> 3;
  }

  /**
   * The leaf in a quadrant round the edge, counter-clockwise seen from its high end; a leaf twice
   * as large may fill two quadrants. Between quadrants 0 and 1, and 2 and 3, lies a face across the
   * next axis, between the others one across the axis after.
   */
  int leaf(int edge, int quadrant) {
    return data[edge * STRIDE + 4 + quadrant];
  }
}
