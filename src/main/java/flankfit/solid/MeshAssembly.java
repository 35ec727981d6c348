package flankfit.solid;

import java.util.Arrays;

/** Puts the columns of a mesh together. */
final class MeshAssembly {
  private static final int POINTS_IN_PIECE = 1024;
  private static final int STEPS = 4;

  private final Solid solid;
  private final Polygons.Source source;
  private final Triangles triangles;
  private final double step;
  private final Workers workers;

  MeshAssembly(
      Solid solid, Polygons.Source source, Triangles triangles, double step, Workers workers) {
    this.solid = solid;
    this.source = source;
    this.triangles = triangles;
    this.step = step;
    this.workers = workers;
  }

  Mesh mesh() {
    Vertices vertices = source.vertices();
    int sheets = vertices.count();
    int middles = source.middles().count();
    int centres = triangles.centres.length;
    double[] places = new double[3 * (sheets + middles + centres)];
    System.arraycopy(vertices.places, 0, places, 0, 3 * sheets);
    int sheetPoints = vertices.normals.length / 3;
    int[] pointVertices = new int[sheetPoints + 2 * middles + centres];
    float[] normals = new float[3 * pointVertices.length];
    for (int vertex = 0; vertex < sheets; vertex++) {
      for (int p = vertices.normalStarts[vertex]; p < vertices.normalStarts[vertex + 1]; p++) {
        pointVertices[p] = vertex;
      }
    }
    for (int i = 0; i < 3 * sheetPoints; i++) {
      normals[i] = (float) vertices.normals[i];
    }
    for (int end = 0; end < 2 * middles; end++) {
      pointVertices[sheetPoints + end] = sheets + end / 2;
      for (int axis = 0; axis < 3; axis++) {
        places[3 * (sheets + end / 2) + axis] = PolygonCutter.middlePlace(source, end / 2, axis);
        normals[3 * (sheetPoints + end) + axis] =
            (float) source.hermite().normal(source.middles().edges()[end], axis);
      }
    }
    for (int centre = 0; centre < centres; centre++) {
      int point = sheetPoints + 2 * middles + centre;
      int vertex = sheets + middles + centre;
      pointVertices[point] = vertex;
      for (int axis = 0; axis < 3; axis++) {
        places[3 * vertex + axis] = source.hermite().place(triangles.centres[centre], axis);
        normals[3 * point + axis] =
            (float) source.hermite().normal(triangles.centres[centre], axis);
      }
    }
    Mesh mesh =
        new Mesh(
            places,
            pointVertices,
            normals,
            new byte[pointVertices.length],
            triangles.points,
            triangles.makers,
            creases());
    openness(mesh);
    return source.cells().isPiece() ? mesh.compact() : mesh;
  }

  /** How far the air reaches along each normal, near steps weighing more. */
  private void openness(Mesh mesh) {
    byte[] result = mesh.openness();
    if (!(step > 0)) {
      Arrays.fill(result, (byte) 255);
      return;
    }
    boolean[] used = new boolean[result.length];
    for (int point : triangles.points) {
      used[point] = true;
    }
    workers.run(
        result.length,
        POINTS_IN_PIECE,
        () -> {
          double[] way = new double[3];
          return (piece, from, to) -> {
            for (int point = from; point < to; point++) {
              if (used[point]) {
                way(mesh, point, way);
                result[point] = (byte) open(mesh, point, way);
              }
            }
          };
        });
  }

  /**
   * The mean of all normals of a point's vertex: on one of them a crease would lie in its own
   * shade.
   */
  private void way(Mesh mesh, int point, double[] to) {
    int vertex = mesh.vertexOf(point);
    int first = point;
    int end = point + 1;
    if (vertex < source.vertices().count()) {
      first = source.vertices().normalStarts[vertex];
      end = source.vertices().normalStarts[vertex + 1];
    }
    Arrays.fill(to, 0);
    for (int p = first; p < end; p++) {
      to[0] += mesh.normalX(p);
      to[1] += mesh.normalY(p);
      to[2] += mesh.normalZ(p);
    }
    SheetPlanes.unit(to);
  }

  private int open(Mesh mesh, int point, double[] way) {
    int at = mesh.vertexOf(point);
    double sum = 0;
    double weights = 0;
    double distance = step;
    double weight = 1;
    for (int i = 0; i < STEPS; i++) {
      double value =
          solid.air(
              mesh.x(at) + distance * way[0],
              mesh.y(at) + distance * way[1],
              mesh.z(at) + distance * way[2],
              distance);
      sum += weight * Math.max(0, Math.min(1, value / distance));
      weights += weight;
      distance *= 2;
      weight /= 2;
    }
    return (int) Math.round(255 * sum / weights);
  }

  private int[] creases() {
    IntColumn found = new IntColumn();
    GridEdges edges = source.edges();
    Sheets sheets = source.sheets();
    for (int edge = 0; edge < edges.count(); edge++) {
      int sides = source.share().owns(edge) ? 4 : 0;
      for (int quadrant = 0; quadrant < sides; quadrant++) {
        int leaf = edges.leaf(edge, quadrant);
        int next = edges.leaf(edge, quadrant + 1 & 3);
        if (leaf != next) {
          int a = sheets.vertex(leaf, edge);
          int b = sheets.vertex(next, edge);
          // most vertices have one normal; then there is nothing to ask
          if (hasCrease(a) && hasCrease(b)) {
            int other = Polygons.across(source.cells(), edges, sheets, edge, quadrant);
            if (edge < other && differ(a, edge, other) && differ(b, edge, other)) {
              found.add(a);
              found.add(b);
            }
          }
        }
      }
    }
    return IntColumn.joined(new IntColumn[] {found});
  }

  private boolean hasCrease(int vertex) {
    int[] starts = source.vertices().normalStarts;
    return starts[vertex + 1] - starts[vertex] > 1;
  }

  private boolean differ(int vertex, int edge, int other) {
    return Triangles.point(source, vertex, edge) != Triangles.point(source, vertex, other);
  }
}
