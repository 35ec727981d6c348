package flankfit.picture;

import flankfit.motion.Point;
import java.util.Arrays;

/**
 * Triangles of a body of metal on their way to the graphics memory: places, normals, the way the
 * edge moved that made them, mirror colour and openness. Filled by one thread.
 */
public final class BodyFaces {
  /** Floats a vertex: place (mm, from the origin), normal (1), grain (1). */
  static final int FLOATS = 9;

  private final Point origin;
  private float[] data = new float[FLOATS * 1024];
  private int[] tints = new int[1024];
  private int[] corners = new int[3 * 1024];
  private int vertices;
  private int indices;

  /** No triangles yet, about an origin. */
  public BodyFaces(Point origin) {
    this.origin = origin;
  }

  /** What places are relative to. */
  Point origin() {
    return origin;
  }

  /** Adds a vertex of a place (mm) and a unit normal out of the metal; it has no grain yet. */
  public int vertex(double x, double y, double z, double nx, double ny, double nz) {
    int at = FLOATS * vertices;
    if (at == data.length) {
      data = Arrays.copyOf(data, 2 * data.length);
      tints = Arrays.copyOf(tints, 2 * tints.length);
    }
    data[at] = (float) (x - origin.x());
    data[at + 1] = (float) (y - origin.y());
    data[at + 2] = (float) (z - origin.z());
    data[at + 3] = (float) nx;
    data[at + 4] = (float) ny;
    data[at + 5] = (float) nz;
    return vertices++;
  }

  /**
   * The way the edge moved at the vertex added last (1); none where the skin is as sawn or cast.
   */
  public void grain(double x, double y, double z) {
    int at = FLOATS * (vertices - 1) + 6;
    data[at] = (float) x;
    data[at + 1] = (float) y;
    data[at + 2] = (float) z;
  }

  /**
   * Colour and openness of the vertex added last.
   *
   * @param mirror what a mirror of the metal shows of white (0xRRGGBB, as seen, not linear)
   * @param open share of the sky it sees, 0 to 255
   */
  public void tint(int mirror, int open) {
    tints[vertices - 1] = linear(mirror) | open << 24;
  }

  /** A colour 0xRRGGBB as light: red, green, blue from the lowest byte. */
  static int linear(int seen) {
    return channel(seen >> 16) | channel(seen >> 8) << 8 | channel(seen) << 16;
  }

  private static int channel(int channel) {
    double seen = (channel & 0xFF) / 255.0;
    double linear = seen <= 0.04045 ? seen / 12.92 : StrictMath.pow((seen + 0.055) / 1.055, 2.4);
    return (int) Math.round(255 * linear);
  }

  /** Adds a triangle of three vertices, anticlockwise seen from outside. */
  public void triangle(int a, int b, int c) {
    if (indices + 3 > corners.length) {
      corners = Arrays.copyOf(corners, 2 * corners.length);
    }
    corners[indices] = a;
    corners[indices + 1] = b;
    corners[indices + 2] = c;
    indices += 3;
  }

  /** Number of triangles. */
  public int triangles() {
    return indices / 3;
  }

  float[] data() {
    return data;
  }

  /** Red, green, blue, openness, from the lowest byte. */
  int[] tints() {
    return tints;
  }

  int[] corners() {
    return corners;
  }

  int vertices() {
    return vertices;
  }
}
