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

  boolean isMetal(int i, int j, int k, int after) {
    return time[index(i, j, k)] >= after;
  }
}
