package flankfit.metal;

/**
 * The share of a cell that is metal, from its corners and the places where its edges are crossed:
 * the volume of the body bounded by polygons through those places. Over a smooth surface its error
 * falls with the square of the cell's side. Used again by loops.
 */
final class CellVolume {
  private static final int EDGES = 12;
  private static final int NONE = -1;

  /** Corners of each face in turn, anticlockwise seen from outside; a bit each for x, y, z. */
  private static final int[][] FACES = {
    {0, 4, 6, 2}, {1, 3, 7, 5}, {0, 1, 5, 4}, {2, 6, 7, 3}, {0, 2, 3, 1}, {4, 5, 7, 6}
  };

  private final double[] px = new double[EDGES];
  private final double[] py = new double[EDGES];
  private final double[] pz = new double[EDGES];
  private final int[] next = new int[EDGES];
  private double sum;

  /** Index of the edge from a corner along an axis; the corner is its lower end. */
  static int edge(int corner, int axis) {
    int u = corner >> (axis + 1) % 3 & 1;
    int v = corner >> (axis + 2) % 3 & 1;
    return axis * 4 + u + 2 * v;
  }

  private static int between(int a, int b) {
    int axis = Integer.numberOfTrailingZeros(a ^ b);
    return edge(Math.min(a, b), axis);
  }

  /** Notes where an edge is crossed: share of the way from its lower end (1). */
  void cross(int corner, int axis, double share) {
    int e = edge(corner, axis);
    px[e] = (corner & 1) + (axis == 0 ? share : 0);
    py[e] = (corner >> 1 & 1) + (axis == 1 ? share : 0);
    pz[e] = (corner >> 2) + (axis == 2 ? share : 0);
  }

  /**
   * The share of the cell that is metal (1).
   *
   * @param metal a bit for each corner that is metal; edges between unlike corners have been noted
   */
  double share(int metal) {
    sum = 0;
    for (int e = 0; e < EDGES; e++) {
      next[e] = NONE;
    }
    for (int[] face : FACES) {
      face(face, metal);
    }
    for (int e = 0; e < EDGES; e++) {
      if (next[e] != NONE) {
        loop(e);
      }
    }
    return Math.min(1, Math.max(0, sum / 6));
  }

  /** Adds the metal of a face, run by run of its corners; each run's end joins to its beginning. */
  private void face(int[] c, int metal) {
    for (int i = 0; i < 4; i++) {
      boolean here = (metal >> c[i] & 1) != 0;
      boolean before = (metal >> c[(i + 3) % 4] & 1) != 0;
      if (here && !before) {
        int entry = between(c[(i + 3) % 4], c[i]);
        int n = 1;
        while (n < 4 && (metal >> c[(i + n) % 4] & 1) != 0) {
          n++;
        }
        int exit = between(c[(i + n - 1) % 4], c[(i + n) % 4]);
        next[entry] = exit;
        for (int m = 0; m < n - 1; m++) {
          corner(entry, c[(i + m) % 4], c[(i + m + 1) % 4]);
        }
        cornerToEdge(entry, c[(i + n - 1) % 4], exit);
      }
    }
    boolean whole = true;
    for (int corner : c) {
      whole &= (metal >> corner & 1) != 0;
    }
    if (whole) {
      // Faces through the origin add nothing; the others lie one away.
      sum += (c[0] & c[1] & c[2] & c[3]) != 0 ? 2 : 0;
    }
  }

  private static int x(int corner) {
    return corner & 1;
  }

  private static int y(int corner) {
    return corner >> 1 & 1;
  }

  private static int z(int corner) {
    return corner >> 2;
  }

  private void corner(int edge, int a, int b) {
    triple(px[edge], py[edge], pz[edge], x(a), y(a), z(a), x(b), y(b), z(b));
  }

  private void cornerToEdge(int edge, int a, int other) {
    triple(
        px[edge], py[edge], pz[edge], x(a), y(a), z(a), px[other], py[other], pz[other]);
  }

  /** Adds six times the volume between the origin and a triangle. */
  private void triple(
      double ax,
      double ay,
      double az,
      double bx,
      double by,
      double bz,
      double cx,
      double cy,
      double cz) {
    sum +=
        ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
  }

  /** Adds the polygon of surface that begins at an edge, as a fan about its middle. */
  private void loop(int begin) {
    double mx = 0;
    double my = 0;
    double mz = 0;
    int n = 0;
    int e = begin;
    do {
      mx += px[e];
      my += py[e];
      mz += pz[e];
      n++;
      e = next[e];
    } while (e != begin);
    mx /= n;
    my /= n;
    mz /= n;
    do {
      int f = next[e];
      next[e] = NONE;
      triple(mx, my, mz, px[e], py[e], pz[e], px[f], py[f], pz[f]);
      e = f;
    } while (e != begin);
  }
}
