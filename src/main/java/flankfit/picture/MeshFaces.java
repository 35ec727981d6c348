package flankfit.picture;

import flankfit.solid.Mesh;
import java.util.Arrays;
import java.util.function.IntUnaryOperator;

/** Brings the mesh of a body into the form in which it is drawn. */
public final class MeshFaces {
  private MeshFaces() {}

  /**
   * Adds all triangles of a mesh.
   *
   * @param marks the way of the marks
   * @param mirror mirror colour (0xRRGGBB) of what a move made, or of the stock's skin
   */
  public static void add(BodyFaces faces, Mesh mesh, CutMarks marks, IntUnaryOperator mirror) {
    int[] vertexOf = new int[mesh.pointCount()];
    int[] makerOf = new int[mesh.pointCount()];
    Arrays.fill(vertexOf, -1);
    int[] corner = new int[3];
    double[] grain = new double[3];
    for (int t = 0; t < mesh.triangleCount(); t++) {
      int maker = mesh.maker(t);
      for (int k = 0; k < 3; k++) {
        int point = mesh.point(t, k);
        if (vertexOf[point] < 0 || makerOf[point] != maker) {
          vertexOf[point] = vertex(faces, mesh, point, maker, marks, mirror, grain);
          makerOf[point] = maker;
        }
        corner[k] = vertexOf[point];
      }
      faces.triangle(corner[0], corner[1], corner[2]);
    }
  }

  private static int vertex(
      BodyFaces faces,
      Mesh mesh,
      int point,
      int maker,
      CutMarks marks,
      IntUnaryOperator mirror,
      double[] grain) {
    int v = mesh.vertexOf(point);
    float nx = mesh.normalX(point);
    float ny = mesh.normalY(point);
    float nz = mesh.normalZ(point);
    int vertex = faces.vertex(mesh.x(v), mesh.y(v), mesh.z(v), nx, ny, nz);
    marks.at(maker, mesh.x(v), mesh.y(v), nx, ny, nz, grain);
    faces.grain(grain[0], grain[1], grain[2]);
    faces.tint(mirror.applyAsInt(maker), mesh.openness(point));
    return vertex;
  }

  /** The crease lines of a mesh: six numbers a piece (mm). */
  public static Coordinates creases(Mesh mesh) {
    double[] ends = new double[6 * mesh.creaseCount()];
    for (int i = 0; i < mesh.creaseCount(); i++) {
      for (int end = 0; end < 2; end++) {
        int v = mesh.creaseVertex(i, end);
        ends[6 * i + 3 * end] = mesh.x(v);
        ends[6 * i + 3 * end + 1] = mesh.y(v);
        ends[6 * i + 3 * end + 2] = mesh.z(v);
      }
    }
    return new Coordinates(ends);
  }
}
