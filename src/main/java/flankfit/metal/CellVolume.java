package flankfit.metal;

import flankfit.solid.Qef;

/**
 * The share of a cell that is metal, from its corners and the places where its edges are crossed:
 * the volume of the body bounded by polygons through those places, each a fan about one point. Over
 * a smooth surface its error falls with the square of the cell's side. Where the surface's
 * directions are known, that point is where the planes there meet, so that edges and corners of
 * flat faces come out exactly. Used again by loops.
 */
final class CellVolume {
  /** Edges of a cell, by axis and then by the corner they start from. */
  static final int EDGES = 12;

  private static final int NONE = -1;

  /** What the surface in a cell is like. */
  enum Surface {
    /** As if plane between crossings; directions are not known. */
    FLAT,
    /** One curved face. */
    SMOOTH,
    /** Faces that meet in an edge or a corner. */
    CREASED,
    /** Faces that may meet in a round: the surface is looked for on the way there. */
    ROUNDED
  }

  /** A polygon so far towards its tangents' meeting holds the area of an arc (1). */
  private static final double ARC = 2.0 / 3;

  /** At the end of that way faces meet (1). */
  private static final double MEETING = 1;

  /** Finds the surface on the way from a place between crossings to where their planes meet. */
  interface Bulge {
    /**
     * Share of the way at which the surface lies, in the cell's coordinates.
     *
     * @return 0 to 1; 1 if it lies no nearer than the end
     */
    double share(double ax, double ay, double az, double bx, double by, double bz);
  }

  /** Weight of the middle against the planes: what they leave open lies there (1). */
  private static final double MIDDLE = 1e-6;

  /** Planes that turn less along an edge than this share of across it make no corner (1). */
  private static final double EDGE = 0.1;

  /** On a way so short no surface is looked for (1). */
  private static final double SHORT = 0.01;

  /** Corners of each face in turn, anticlockwise seen from outside; a bit each for x, y, z. */
  private static final int[][] FACES = {
    {0, 4, 6, 2}, {1, 3, 7, 5}, {0, 1, 5, 4}, {2, 6, 7, 3}, {0, 2, 3, 1}, {4, 5, 7, 6}
  };

  /** Bits of a face's corners when all are metal. */
  private static final int WHOLE = 15;

  /** The edge from each corner of a face to the next. */
  private static final int[][] RIMS = rims();

  private final double[] px = new double[EDGES];
  private final double[] py = new double[EDGES];
  private final double[] pz = new double[EDGES];
  private final double[] nx = new double[EDGES];
  private final double[] ny = new double[EDGES];
  private final double[] nz = new double[EDGES];
  private final double[] qx = new double[EDGES];
  private final double[] qy = new double[EDGES];
  private final double[] qz = new double[EDGES];
  private final int[] next = new int[EDGES];
  private final Qef faces = new Qef();
  private final Bulge bulge;
  private double sum;
  private Surface surface = Surface.FLAT;

  CellVolume(Bulge bulge) {
    this.bulge = bulge;
  }

  /** The corner that an edge starts from; its axis is the edge's index over four. */
  static int from(int edge) {
    int axis = edge >> 2;
    int u = edge & 1;
    int v = edge >> 1 & 1;
    return u << (axis + 1) % 3 | v << (axis + 2) % 3;
  }

  /** Index of the edge from a corner along an axis; the corner is its lower end. */
  private static int edge(int corner, int axis) {
    int u = corner >> (axis + 1) % 3 & 1;
    int v = corner >> (axis + 2) % 3 & 1;
    return axis * 4 + u + 2 * v;
  }

  private static int[][] rims() {
    int[][] rims = new int[FACES.length][4];
    for (int f = 0; f < FACES.length; f++) {
      for (int i = 0; i < 4; i++) {
        int corner = FACES[f][i];
        int next = FACES[f][(i + 1) % 4];
        rims[f][i] = edge(Math.min(corner, next), Integer.numberOfTrailingZeros(corner ^ next));
      }
    }
    return rims;
  }

  /** Notes where an edge is crossed: share of the way from its lower end (1). */
  void cross(int e, double share) {
    int corner = from(e);
    int axis = e >> 2;
    px[e] = (corner & 1) + (axis == 0 ? share : 0);
    py[e] = (corner >> 1 & 1) + (axis == 1 ? share : 0);
    pz[e] = (corner >> 2) + (axis == 2 ? share : 0);
  }

  /** Notes the surface's direction where an edge is crossed, from three numbers on. */
  void direct(int e, double[] normals, int at) {
    nx[e] = normals[at];
    ny[e] = normals[at + 1];
    nz[e] = normals[at + 2];
  }

  /**
   * The share of the cell that is metal (1).
   *
   * @param metal a bit for each corner that is metal; edges between unlike corners have been noted
   * @param like what the surface is like; directions have been noted unless it is flat
   */
  double share(int metal, Surface like) {
    sum = 0;
    surface = like;
    for (int e = 0; e < EDGES; e++) {
      next[e] = NONE;
    }
    for (int f = 0; f < FACES.length; f++) {
      face(f, metal);
    }
    for (int e = 0; e < EDGES; e++) {
      if (next[e] != NONE) {
        loop(e);
      }
    }
    return Math.min(1, Math.max(0, sum / 6));
  }

  /** Adds the metal of a face, run by run of its corners; each run's end joins to its beginning. */
  private void face(int f, int metal) {
    int[] c = FACES[f];
    int bits = 0;
    for (int i = 0; i < 4; i++) {
      bits |= ((metal >> c[i]) & 1) << i;
    }
    if (bits == WHOLE) {
      // Faces through the origin add nothing; the others lie one away.
      sum += f % 2 == 0 ? 0 : 2;
      return;
    }
    int begins = bits & ~((bits << 1) | (bits >> 3));
    for (; begins != 0; begins &= begins - 1) {
      run(f, bits, Integer.numberOfTrailingZeros(begins));
    }
  }

  /** Adds the metal of a face from one of its corners on, behind which there is air. */
  private void run(int f, int bits, int first) {
    int[] c = FACES[f];
    int entry = RIMS[f][(first + 3) & 3];
    int last = first;
    while (((bits >> ((last + 1) & 3)) & 1) != 0) {
      corner(entry, c[last], c[(last + 1) & 3]);
      last = (last + 1) & 3;
    }
    int exit = RIMS[f][last];
    next[entry] = exit;
    cornerToEdge(entry, c[last], exit);
    if (surface != Surface.FLAT) {
      meetOnFace(f / 2, entry, exit);
      triple(
          px[entry], py[entry], pz[entry], px[exit], py[exit], pz[exit], qx[entry], qy[entry],
          qz[entry]);
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
    triple(px[edge], py[edge], pz[edge], x(a), y(a), z(a), px[other], py[other], pz[other]);
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
    sum += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
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
    if (surface == Surface.FLAT) {
      fan(begin, mx / n, my / n, mz / n);
      return;
    }
    if (surface == Surface.SMOOTH) {
      meet(begin, mx / n, my / n, mz / n);
    } else {
      meetFaces(begin, mx / n, my / n, mz / n);
    }
    do {
      int f = next[e];
      next[e] = NONE;
      triple(fx, fy, fz, px[e], py[e], pz[e], qx[e], qy[e], qz[e]);
      triple(fx, fy, fz, qx[e], qy[e], qz[e], px[f], py[f], pz[f]);
      e = f;
    } while (e != begin);
  }

  private void fan(int begin, double mx, double my, double mz) {
    int e = begin;
    do {
      int f = next[e];
      next[e] = NONE;
      triple(mx, my, mz, px[e], py[e], pz[e], px[f], py[f], pz[f]);
      e = f;
    } while (e != begin);
  }

  /** Where the planes of a face's two crossings meet on it, nearest to their middle. */
  private void meetOnFace(int axis, int a, int b) {
    double mx = (px[a] + px[b]) / 2;
    double my = (py[a] + py[b]) / 2;
    double mz = (pz[a] + pz[b]) / 2;
    double au = axis == 0 ? ny[a] : nx[a];
    double av = axis == 2 ? ny[a] : nz[a];
    double bu = axis == 0 ? ny[b] : nx[b];
    double bv = axis == 2 ? ny[b] : nz[b];
    double offA = off(a, mx, my, mz);
    double offB = off(b, mx, my, mz);
    double uu = MIDDLE + au * au + bu * bu;
    double vv = MIDDLE + av * av + bv * bv;
    double uv = au * av + bu * bv;
    double ru = au * offA + bu * offB;
    double rv = av * offA + bv * offB;
    double determinant = uu * vv - uv * uv;
    double u = (vv * ru - uv * rv) / determinant;
    double v = (uu * rv - uv * ru) / determinant;
    double dx = axis == 0 ? 0 : u;
    double dy = axis == 1 ? 0 : axis == 0 ? u : v;
    double dz = axis == 2 ? 0 : v;
    double far = outwards(mx, my, mz, dx, dy, dz);
    qx[a] = axis == 0 ? mx : within(mx + far * dx);
    qy[a] = axis == 1 ? my : within(my + far * dy);
    qz[a] = axis == 2 ? mz : within(mz + far * dz);
  }

  /** How far the plane of a crossing lies from a place (1). */
  private double off(int e, double x, double y, double z) {
    return nx[e] * (px[e] - x) + ny[e] * (py[e] - y) + nz[e] * (pz[e] - z);
  }

  private double fx;
  private double fy;
  private double fz;

  /** Where the planes of a loop meet, nearest to its middle, kept within the cell. */
  private void meet(int begin, double mx, double my, double mz) {
    double xx = MIDDLE;
    double yy = MIDDLE;
    double zz = MIDDLE;
    double xy = 0;
    double yz = 0;
    double zx = 0;
    double bx = 0;
    double by = 0;
    double bz = 0;
    int e = begin;
    do {
      double off = off(e, mx, my, mz);
      xx += nx[e] * nx[e];
      yy += ny[e] * ny[e];
      zz += nz[e] * nz[e];
      xy += nx[e] * ny[e];
      yz += ny[e] * nz[e];
      zx += nz[e] * nx[e];
      bx += nx[e] * off;
      by += ny[e] * off;
      bz += nz[e] * off;
      e = next[e];
    } while (e != begin);
    double cxx = yy * zz - yz * yz;
    double cxy = yz * zx - xy * zz;
    double czx = xy * yz - yy * zx;
    double cyy = xx * zz - zx * zx;
    double cyz = xy * zx - xx * yz;
    double czz = xx * yy - xy * xy;
    double determinant = xx * cxx + xy * cxy + zx * czx;
    fx = within(mx + ARC * (cxx * bx + cxy * by + czx * bz) / determinant);
    fy = within(my + ARC * (cxy * bx + cyy * by + cyz * bz) / determinant);
    fz = within(mz + ARC * (czx * bx + cyz * by + czz * bz) / determinant);
  }

  /** The same for faces that meet in an edge or a corner. */
  private void meetFaces(int begin, double mx, double my, double mz) {
    faces.clear(mx, my, mz);
    int e = begin;
    do {
      faces.add(px[e], py[e], pz[e], nx[e], ny[e], nz[e]);
      e = next[e];
    } while (e != begin);
    faces.solveMeeting(EDGE);
    double dx = faces.answer(0) - mx;
    double dy = faces.answer(1) - my;
    double dz = faces.answer(2) - mz;
    double far = outwards(mx, my, mz, dx, dy, dz);
    fx = within(mx + far * dx);
    fy = within(my + far * dy);
    fz = within(mz + far * dz);
  }

  /**
   * How far on the way from the middle to where planes meet a polygon's corner holds the surface's
   * area. A curve through both crossings with their tangents passes the way at some share of it: a
   * parabola half-way, with {@link #ARC}, a corner at its end, with {@link #MEETING}; between these
   * lies a short arc between two straight flanks, whose missing area goes with the square of what
   * is left of the way.
   */
  private double outwards(double mx, double my, double mz, double dx, double dy, double dz) {
    if (surface == Surface.SMOOTH) {
      return ARC;
    }
    if (surface == Surface.CREASED || dx * dx + dy * dy + dz * dz < SHORT * SHORT) {
      return MEETING;
    }
    double found = bulge.share(mx, my, mz, within(mx + dx), within(my + dy), within(mz + dz));
    double left = 1 - found;
    return found < 0.5 ? 2 * ARC * found : MEETING - 4 * (MEETING - ARC) * left * left;
  }

  private static double within(double place) {
    return Math.min(1, Math.max(0, place));
  }
}
