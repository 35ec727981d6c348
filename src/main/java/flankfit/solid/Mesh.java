package flankfit.solid;

/**
 * A closed surface of triangles, counter-clockwise seen from the air. A vertex is a place; a point
 * is a vertex with one normal, so that a vertex on a crease has several points. Triangles name
 * points.
 */
public final class Mesh {
  private final double[] places;
  private final int[] pointVertices;
  private final float[] normals;
  private final byte[] openness;
  private final int[] triangles;
  private final int[] makers;
  private final int[] creases;

  Mesh(
      double[] places,
      int[] pointVertices,
      float[] normals,
      byte[] openness,
      int[] triangles,
      int[] makers,
      int[] creases) {
    this.places = places;
    this.pointVertices = pointVertices;
    this.normals = normals;
    this.openness = openness;
    this.triangles = triangles;
    this.makers = makers;
    this.creases = creases;
  }

  /** The same less vertices and points that neither a triangle nor a crease names. */
  Mesh compact() {
    int[] point = new int[pointVertices.length];
    int[] vertex = new int[places.length / 3];
    for (int p : triangles) {
      point[p] = 1;
      vertex[pointVertices[p]] = 1;
    }
    for (int v : creases) {
      vertex[v] = 1;
    }
    int points = numbered(point);
    int vertices = numbered(vertex);
    double[] keptPlaces = new double[3 * vertices];
    for (int v = 0; v < vertex.length; v++) {
      if (vertex[v] >= 0) {
        System.arraycopy(places, 3 * v, keptPlaces, 3 * vertex[v], 3);
      }
    }
    int[] keptVertices = new int[points];
    float[] keptNormals = new float[3 * points];
    byte[] keptOpenness = new byte[points];
    for (int p = 0; p < point.length; p++) {
      if (point[p] >= 0) {
        keptVertices[point[p]] = vertex[pointVertices[p]];
        keptOpenness[point[p]] = openness[p];
        System.arraycopy(normals, 3 * p, keptNormals, 3 * point[p], 3);
      }
    }
    return new Mesh(
        keptPlaces,
        keptVertices,
        keptNormals,
        keptOpenness,
        renamed(triangles, point),
        makers,
        renamed(creases, vertex));
  }

  /** Numbers what is marked by 1 one after the other, the others get -1; gives how many. */
  private static int numbered(int[] marks) {
    int count = 0;
    for (int i = 0; i < marks.length; i++) {
      marks[i] = marks[i] == 1 ? count++ : -1;
    }
    return count;
  }

  private static int[] renamed(int[] names, int[] to) {
    int[] result = new int[names.length];
    for (int i = 0; i < names.length; i++) {
      result[i] = to[names[i]];
    }
    return result;
  }

  byte[] openness() {
    return openness;
  }

  /** Number of vertices. */
  public int vertexCount() {
    return places.length / 3;
  }

  /** X of a vertex (mm). */
  public double x(int vertex) {
    return places[3 * vertex];
  }

  /** Y of a vertex (mm). */
  public double y(int vertex) {
    return places[3 * vertex + 1];
  }

  /** Z of a vertex (mm). */
  public double z(int vertex) {
    return places[3 * vertex + 2];
  }

  /** Number of points. */
  public int pointCount() {
    return pointVertices.length;
  }

  /** Vertex of a point. */
  public int vertexOf(int point) {
    return pointVertices[point];
  }

  /** X of a point's unit normal, out of the metal. */
  public float normalX(int point) {
    return normals[3 * point];
  }

  /** Y of a point's unit normal, out of the metal. */
  public float normalY(int point) {
    return normals[3 * point + 1];
  }

  /** Z of a point's unit normal, out of the metal. */
  public float normalZ(int point) {
    return normals[3 * point + 2];
  }

  /** How open the air before a point is: 0 closed in, 255 nothing near. */
  public int openness(int point) {
    return openness[point] & 0xff;
  }

  /** Number of triangles. */
  public int triangleCount() {
    return makers.length;
  }

  /** Point of a triangle's corner 0, 1 or 2. */
  public int point(int triangle, int corner) {
    return triangles[3 * triangle + corner];
  }

  /** Vertex of a triangle's corner 0, 1 or 2. */
  public int vertex(int triangle, int corner) {
    return pointVertices[triangles[3 * triangle + corner]];
  }

  /** Index of the move that made a triangle, or {@link Crossing#STOCK}. */
  public int maker(int triangle) {
    return makers[triangle];
  }

  /** Number of crease lines, each an edge of two triangles whose normals differ at both ends. */
  public int creaseCount() {
    return creases.length / 2;
  }

  /** Vertex at one end, 0 or 1, of a crease line. */
  public int creaseVertex(int crease, int end) {
    return creases[2 * crease + end];
  }

  /** Enclosed volume by the divergence theorem (mm³). */
  public double volume() {
    if (makers.length == 0) {
      return 0;
    }
    double ox = places[0];
    double oy = places[1];
    double oz = places[2];
    double six = 0;
    for (int t = 0; t < makers.length; t++) {
      int a = vertex(t, 0);
      int b = vertex(t, 1);
      int c = vertex(t, 2);
      double ax = x(a) - ox;
      double ay = y(a) - oy;
      double az = z(a) - oz;
      double bx = x(b) - ox;
      double by = y(b) - oy;
      double bz = z(b) - oz;
      double cx = x(c) - ox;
      double cy = y(c) - oy;
      double cz = z(c) - oz;
      six += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    }
    return six / 6;
  }

  /** Area of all triangles (mm²). */
  public double area() {
    double twice = 0;
    for (int t = 0; t < makers.length; t++) {
      int a = vertex(t, 0);
      int b = vertex(t, 1);
      int c = vertex(t, 2);
      double ux = x(b) - x(a);
      double uy = y(b) - y(a);
      double uz = z(b) - z(a);
      double vx = x(c) - x(a);
      double vy = y(c) - y(a);
      double vz = z(c) - z(a);
      double nx = uy * vz - uz * vy;
      double ny = uz * vx - ux * vz;
      double nz = ux * vy - uy * vx;
      twice += Math.sqrt(nx * nx + ny * ny + nz * nz);
    }
    return twice / 2;
  }
}
