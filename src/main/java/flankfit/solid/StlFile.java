package flankfit.solid;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Writes a mesh as binary STL: millimetres, part frame, single precision.
 *
 * @see "binary STL: 80 bytes of header, number of facets, 50 bytes a facet; from memory of common
 *     practice"
 */
public final class StlFile {
  private static final int HEADER = 80;

  private StlFile() {}

  /** Writes all triangles in their order; the stream stays open. */
  public static void write(Mesh mesh, OutputStream to) throws IOException {
    LittleEndian out = new LittleEndian(to);
    // must not begin with "solid", by which readers know the text form
    byte[] header = "Flankfit, binary, mm".getBytes(StandardCharsets.US_ASCII);
    out.putBytes(Arrays.copyOf(header, HEADER));
    out.putInt(mesh.triangleCount());
    for (int t = 0; t < mesh.triangleCount(); t++) {
      int a = mesh.vertex(t, 0);
      int b = mesh.vertex(t, 1);
      int c = mesh.vertex(t, 2);
      putNormal(mesh, a, b, c, out);
      putPlace(mesh, a, out);
      putPlace(mesh, b, out);
      putPlace(mesh, c, out);
      out.putShort(0);
    }
    out.flush();
  }

  private static void putNormal(Mesh mesh, int a, int b, int c, LittleEndian out)
      throws IOException {
    double ux = mesh.x(b) - mesh.x(a);
    double uy = mesh.y(b) - mesh.y(a);
    double uz = mesh.z(b) - mesh.z(a);
    double vx = mesh.x(c) - mesh.x(a);
    double vy = mesh.y(c) - mesh.y(a);
    double vz = mesh.z(c) - mesh.z(a);
    double nx = uy * vz - uz * vy;
    double ny = uz * vx - ux * vz;
    double nz = ux * vy - uy * vx;
    double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
    // a facet without area has no normal; zero asks the reader to take it from the corners
    double scale = length > 0 ? 1 / length : 0;
    out.putFloat((float) (nx * scale));
    out.putFloat((float) (ny * scale));
    out.putFloat((float) (nz * scale));
  }

  private static void putPlace(Mesh mesh, int vertex, LittleEndian out) throws IOException {
    out.putFloat((float) mesh.x(vertex));
    out.putFloat((float) mesh.y(vertex));
    out.putFloat((float) mesh.z(vertex));
  }
}
