package flankfit.metal;

/**
 * The lattice points of a leaf: for each the first move that makes it air, {@link #NEVER} or {@link
 * #OUTSIDE}.
 */
final class Brick {
  /** Outside the stock from the start. */
  static final int OUTSIDE = -1;

  /** Metal to the end. */
  static final int NEVER = Integer.MAX_VALUE;

  /** Memory of a brick (bytes): its points, its own fields, two headers. */
  static final long BYTES = 4L * Node.POINTS * Node.POINTS * Node.POINTS + 64;

  final int[] time;

  /** Round of use in which it was last asked for; the coldest goes first. */
  volatile long used;

  Brick(int[] time) {
    this.time = time;
  }

  static int index(int i, int j, int k) {
    return (k * Node.POINTS + j) * Node.POINTS + i;
  }

  /**
   * The points that are metal after so many moves, row by row.
   *
   * @param rows takes a bit for each point along X, by Y and then by Z
   */
  void rows(int after, int[] rows) {
    for (int row = 0; row < rows.length; row++) {
      int bits = 0;
      for (int i = 0; i < Node.POINTS; i++) {
        bits |= time[row * Node.POINTS + i] >= after ? 1 << i : 0;
      }
      rows[row] = bits;
    }
  }

  /**
   * The cells between four rows that have metal and air at their corners, a bit each along X.
   *
   * @param any the points that are metal in any of the rows
   * @param all those in all of them
   */
  static int mixed(int any, int all) {
    return (any | any >> 1) & ~(all & all >> 1) & 0xff;
  }

  boolean isMetal(int i, int j, int k, int after) {
    return time[index(i, j, k)] >= after;
  }
}
