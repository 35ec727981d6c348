package flankfit.solid;

import java.util.Arrays;

/** Finds the leaf that covers a place of the lattice. */
final class LeafIndex {
  private static final int HALF_RANGE = 1 << 20;
  private static final long EMPTY = -1;

  private final SurfaceCells cells;
  private final long[] keys;
  private final int[] leaves;
  private final int shift;

  LeafIndex(SurfaceCells cells) {
    this.cells = cells;
    int bits = 4;
    while ((1L << bits) < 2L * cells.count()) {
      bits++;
    }
    shift = 64 - bits;
    keys = new long[1 << bits];
    Arrays.fill(keys, EMPTY);
    leaves = new int[1 << bits];
    for (int leaf = 0; leaf < cells.count(); leaf++) {
      put(leaf);
    }
  }

  private void put(int leaf) {
    int x = cells.x(leaf);
    int y = cells.y(leaf);
    int z = cells.z(leaf);
    int size = cells.size(leaf);
    if (size < 1 || Integer.bitCount(size) != 1 || ((x | y | z) & (size - 1)) != 0) {
      throw new IllegalArgumentException(
          "leaf "
              + leaf
              + " at "
              + x
              + " "
              + y
              + " "
              + z
              + " of size "
              + size
              + " does not lie on the octree: corners are multiples of the size, a power of two");
    }
    if (Math.min(Math.min(x, y), z) <= -HALF_RANGE
        || Math.max(Math.max(x, y), z) + (long) size >= HALF_RANGE) {
      throw new IllegalArgumentException(
          "leaf "
              + leaf
              + " at "
              + x
              + " "
              + y
              + " "
              + z
              + " lies beyond the lattice of +-"
              + HALF_RANGE
              + " cells");
    }
    long key = key(x, y, z);
    int at = slot(key);
    while (keys[at] != EMPTY) {
      if (keys[at] == key) {
        throw new IllegalArgumentException("leaves " + leaves[at] + " and " + leaf + " overlap");
      }
      at = (at + 1) & (keys.length - 1);
    }
    keys[at] = key;
    leaves[at] = leaf;
  }

  private static long key(int x, int y, int z) {
    return ((long) (x + HALF_RANGE) << 42) | ((long) (y + HALF_RANGE) << 21) | (z + HALF_RANGE);
  }

  private int slot(long key) {
    return (int) ((key * 0x9E3779B97F4A7C15L) >>> shift);
  }

  /**
   * The leaf that covers the finest cell with this low corner and differs by one level at most from
   * a size, or -1 where none is listed.
   */
  int at(int x, int y, int z, int size) {
    int leaf = aligned(x, y, z, size);
    if (leaf < 0) {
      leaf = aligned(x, y, z, 2 * size);
    }
    if (leaf < 0 && size > 1) {
      leaf = aligned(x, y, z, size / 2);
    }
    return leaf;
  }

  private int aligned(int x, int y, int z, int size) {
    long key = key(x & -size, y & -size, z & -size);
    int at = slot(key);
    while (keys[at] != EMPTY) {
      if (keys[at] == key) {
        return cells.size(leaves[at]) == size ? leaves[at] : -1;
      }
      at = (at + 1) & (keys.length - 1);
    }
    return -1;
  }
}
