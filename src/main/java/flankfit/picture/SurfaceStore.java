package flankfit.picture;

import flankfit.motion.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Triangles on their way to the graphics memory, in named groups that are drawn one by one. */
final class SurfaceStore {
  /** What a group of triangles is; each is drawn in its own way. */
  enum Part {
    STOCK_SIDES,
    STOCK_TOP,
    STOCK_BOTTOM,
    HOLE_MOUTH,
    HOLE_EXIT,
    HOLE_WALL,
    HOLE_FLOOR,
    KEEP_OUT,
    CUTTING_PART,
    SHANK
  }

  private static final int FLOATS = 6;

  private final Point origin;
  private final List<Group> groups = new ArrayList<>();
  private float[] data = new float[FLOATS * 256];
  private int vertices;

  /** An empty store of points about an origin. */
  SurfaceStore(Point origin) {
    this.origin = origin;
  }

  /**
   * A run of vertices.
   *
   * @param part what it is
   * @param first first vertex
   * @param count number of vertices
   */
  record Group(Part part, int first, int count) {}

  /** Six floats a vertex: place from the origin (mm), normal (1). */
  float[] data() {
    return data;
  }

  /** Number of vertices. */
  int vertices() {
    return vertices;
  }

  /** The groups, in order. */
  List<Group> groups() {
    return List.copyOf(groups);
  }

  /** Counts the vertices since the last group as one more group. */
  void end(Part part) {
    int first = groups.isEmpty() ? 0 : last().first() + last().count();
    if (vertices > first) {
      groups.add(new Group(part, first, vertices - first));
    }
  }

  private Group last() {
    return groups.get(groups.size() - 1);
  }

  /** A flat quadrilateral, corners anticlockwise seen from outside (mm). */
  void quad(double[] a, double[] b, double[] c, double[] d) {
    double[] n = normal(a, b, c);
    vertex(a, n);
    vertex(b, n);
    vertex(c, n);
    vertex(a, n);
    vertex(c, n);
    vertex(d, n);
  }

  private static double[] normal(double[] a, double[] b, double[] c) {
    double ux = b[0] - a[0];
    double uy = b[1] - a[1];
    double uz = b[2] - a[2];
    double vx = c[0] - a[0];
    double vy = c[1] - a[1];
    double vz = c[2] - a[2];
    double[] n = {uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx};
    double length = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
    for (int k = 0; k < 3; k++) {
      n[k] /= Math.max(length, 1e-300);
    }
    return n;
  }

  /** A disc that faces up or down (mm). */
  void disc(double x, double y, double z, double radius, int sides, boolean up) {
    double[] n = {0, 0, up ? 1 : -1};
    double[] middle = {x, y, z};
    for (int i = 0; i < sides; i++) {
      double[] p = rim(x, y, z, radius, up ? i : i + 1, sides);
      double[] q = rim(x, y, z, radius, up ? i + 1 : i, sides);
      vertex(middle, n);
      vertex(p, n);
      vertex(q, n);
    }
  }

  /** A cone or cylinder about the vertical between two rims, seen from outside (mm). */
  void frustum(double x, double y, double low, double lowRadius, double high, double highRadius) {
    frustum(x, y, low, lowRadius, high, highRadius, sides(Math.max(lowRadius, highRadius)));
  }

  private void frustum(double x, double y, double z0, double r0, double z1, double r1, int sides) {
    double slope = Math.hypot(z1 - z0, r1 - r0);
    double nz = slope == 0 ? 0 : (r0 - r1) / slope;
    double nr = slope == 0 ? 1 : (z1 - z0) / slope;
    for (int i = 0; i < sides; i++) {
      double[] a = rim(x, y, z0, r0, i, sides);
      double[] b = rim(x, y, z0, r0, i + 1, sides);
      double[] c = rim(x, y, z1, r1, i + 1, sides);
      double[] d = rim(x, y, z1, r1, i, sides);
      double[] na = rim(0, 0, nz, nr, i, sides);
      double[] nb = rim(0, 0, nz, nr, i + 1, sides);
      vertex(a, na);
      vertex(b, nb);
      vertex(c, nb);
      vertex(a, na);
      vertex(c, nb);
      vertex(d, na);
    }
  }

  /** Sides of a polygon that passes for a circle (1). */
  static int sides(double radius) {
    return radius > 100 ? 180 : 96;
  }

  private static double[] rim(double x, double y, double z, double radius, int i, int sides) {
    double a = 2 * Math.PI * i / sides;
    return new double[] {x + radius * StrictMath.cos(a), y + radius * StrictMath.sin(a), z};
  }

  private void vertex(double[] place, double[] normal) {
    int at = FLOATS * vertices;
    if (at == data.length) {
      data = Arrays.copyOf(data, data.length * 2);
    }
    data[at] = (float) (place[0] - origin.x());
    data[at + 1] = (float) (place[1] - origin.y());
    data[at + 2] = (float) (place[2] - origin.z());
    data[at + 3] = (float) normal[0];
    data[at + 4] = (float) normal[1];
    data[at + 5] = (float) normal[2];
    vertices++;
  }
}
