package flankfit.solid;

/**
 * Leaves of an octree in which neighbours, across faces, edges and corners, differ by one level at
 * most. Places are lattice points of the finest level: {@code origin + index * cell}. Every leaf
 * with metal at one corner and air at another is listed, and every neighbour of such a leaf; the
 * order is fixed. Low corners are multiples of the leaf's size, and lie within ±2^20 cells.
 */
public interface SurfaceCells {
  /** Place of the lattice's point 0 0 0 (mm). */
  double originX();

  /** Place of the lattice's point 0 0 0 (mm). */
  double originY();

  /** Place of the lattice's point 0 0 0 (mm). */
  double originZ();

  /** Side of the finest cell (mm). */
  double cell();

  /** Number of leaves. */
  int count();

  /** Lattice index of a leaf's low corner. */
  int x(int leaf);

  /** Lattice index of a leaf's low corner. */
  int y(int leaf);

  /** Lattice index of a leaf's low corner. */
  int z(int leaf);

  /** Side of a leaf in finest cells, a power of two. */
  int size(int leaf);

  /** Whether a lattice point is metal; asked at corners of listed leaves. */
  boolean metal(int x, int y, int z);

  /** The corners of a leaf that are metal: bit 0 the low one, 1 that with X high, 2 Y, 4 Z. */
  default int corners(int leaf) {
    int size = size(leaf);
    int bits = 0;
    for (int corner = 0; corner < 8; corner++) {
      boolean metal =
          metal(
              x(leaf) + (corner & 1) * size,
              y(leaf) + (corner >> 1 & 1) * size,
              z(leaf) + (corner >> 2) * size);
      bits |= metal ? 1 << corner : 0;
    }
    return bits;
  }

  /**
   * Whether these are the cells of a piece of the surface alone, with some around it. Then what
   * lies at the rim of the list is not looked at.
   */
  default boolean isPiece() {
    return false;
  }

  /** Of a piece: whether surface that crosses the edge from a lattice point upwards is its own. */
  default boolean owns(int x, int y, int z) {
    return true;
  }
}
