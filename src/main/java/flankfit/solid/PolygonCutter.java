package flankfit.solid;

/** Cuts the polygon of an edge into triangles that face as the surface does at its crossing. */
final class PolygonCutter {
  private final Polygons.Source source;
  private final Polygons polygon;
  private final double[] centre = new double[3];
  private final double[] normal = new double[3];

  /** Corners of the triangles, three each, as positions in the polygon; -1 is the centre. */
  final int[] cuts = new int[3 * Polygons.MOST];

  int triangles;

  PolygonCutter(Polygons.Source source) {
    this.source = source;
    polygon = new Polygons(source);
  }

  /** Reads and cuts the polygon of an edge. */
  void cut(int edge) {
    polygon.read(edge);
    for (int axis = 0; axis < 3; axis++) {
      centre[axis] = source.hermite().place(edge, axis);
      normal[axis] = source.hermite().normal(edge, axis);
    }
    triangles = 0;
    if (polygon.hasMiddle) {
      fan();
    } else if (polygon.count == 3) {
      add(0, 1, 2);
    } else {
      cutFour();
    }
  }

  private void cutFour() {
    double first = polygon.firstDiagonalBarred ? -2 : Math.min(facing(0, 1, 2), facing(0, 2, 3));
    double second = polygon.secondDiagonalBarred ? -2 : Math.min(facing(1, 2, 3), facing(1, 3, 0));
    double better = Math.max(first, second);
    if (better < 0 && facingOfFan() > better) {
      fan();
      return;
    }
    if (first >= second) {
      add(0, 1, 2);
      add(0, 2, 3);
    } else {
      add(1, 2, 3);
      add(1, 3, 0);
    }
  }

  private void fan() {
    for (int i = 0; i < polygon.count; i++) {
      add(i, (i + 1) % polygon.count, -1);
    }
  }

  private double facingOfFan() {
    double least = 2;
    for (int i = 0; i < polygon.count; i++) {
      least = Math.min(least, facing(i, (i + 1) % polygon.count, -1));
    }
    return least;
  }

  private void add(int a, int b, int c) {
    cuts[3 * triangles] = a;
    cuts[3 * triangles + 1] = b;
    cuts[3 * triangles + 2] = c;
    triangles++;
  }

  /** Cosine between a triangle's normal and that of the crossing; 1 for one without area. */
  private double facing(int a, int b, int c) {
    double ux = at(b, 0) - at(a, 0);
    double uy = at(b, 1) - at(a, 1);
    double uz = at(b, 2) - at(a, 2);
    double vx = at(c, 0) - at(a, 0);
    double vy = at(c, 1) - at(a, 1);
    double vz = at(c, 2) - at(a, 2);
    double nx = uy * vz - uz * vy;
    double ny = uz * vx - ux * vz;
    double nz = ux * vy - uy * vx;
    double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
    double cell = source.cells().cell();
    if (length < 1e-12 * cell * cell) {
      return 1;
    }
    return (nx * normal[0] + ny * normal[1] + nz * normal[2]) / length;
  }

  private double at(int corner, int axis) {
    if (corner < 0) {
      return centre[axis];
    }
    int vertex = polygon.corners[corner];
    int middle = vertex - source.vertices().count();
    if (middle < 0) {
      return source.vertices().places[3 * vertex + axis];
    }
    return middlePlace(source, middle, axis);
  }

  /** Coordinate of a middle: half way between its two crossings (mm). */
  static double middlePlace(Polygons.Source source, int middle, int axis) {
    int[] ends = source.middles().edges();
    return 0.5
        * (source.hermite().place(ends[2 * middle], axis)
            + source.hermite().place(ends[2 * middle + 1], axis));
  }

  /** Vertex at a position of the polygon. */
  int vertex(int corner) {
    return polygon.corners[corner];
  }
}
