package flankfit.solid;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntUnaryOperator;

/**
 * Writes a mesh as binary glTF 2.0. The format has metres and Y up, so a place x y z (mm) is
 * written as x, z, -y divided by 1000. All groups share positions and normals; each has its own
 * indices.
 *
 * @see "Khronos, glTF 2.0 Specification, sections 3.6 (accessors), 4.4 (binary)"
 */
public final class GlbFile {
  private static final int MAGIC = 0x46546C67;
  private static final int JSON = 0x4E4F534A;
  private static final int BIN = 0x004E4942;
  private static final int ARRAY_BUFFER = 34962;
  private static final int ELEMENT_ARRAY_BUFFER = 34963;
  private static final int FLOAT = 5126;
  private static final int UNSIGNED_INT = 5125;
  private static final double METRE = 0.001;

  private final Mesh mesh;
  private final List<Paint> paints;
  private final IntUnaryOperator groupOfMaker;

  private GlbFile(Mesh mesh, List<Paint> paints, IntUnaryOperator groupOfMaker) {
    this.mesh = mesh;
    this.paints = paints;
    this.groupOfMaker = groupOfMaker;
  }

  /**
   * Writes a mesh; the stream stays open.
   *
   * @param paints one for each group; groups without triangles are left out
   * @param groupOfMaker group of a maker, as index of the paints
   * @throws IOException if the stream fails, or if the file would be larger than the format's 4 GiB
   * @throws IllegalArgumentException if the mesh is empty or a group has no paint
   */
  public static void write(
      Mesh mesh, List<Paint> paints, IntUnaryOperator groupOfMaker, OutputStream to)
      throws IOException {
    if (mesh.triangleCount() == 0) {
      throw new IllegalArgumentException("the mesh has no triangle, glTF needs one");
    }
    new GlbFile(mesh, paints, groupOfMaker).write(to);
  }

  private void write(OutputStream to) throws IOException {
    int[] counts = new int[paints.size()];
    for (int t = 0; t < mesh.triangleCount(); t++) {
      int group = groupOfMaker.applyAsInt(mesh.maker(t));
      if (group < 0 || group >= counts.length) {
        throw new IllegalArgumentException(
            "maker "
                + mesh.maker(t)
                + " is of group "
                + group
                + ", but there are "
                + counts.length
                + " paints");
      }
      counts[group]++;
    }
    byte[] json = padded(json(counts));
    long binary = 24L * mesh.pointCount() + 12L * mesh.triangleCount();
    long total = 12 + 8 + json.length + 8 + binary;
    if (total > 0xFFFFFFFFL) {
      throw new IOException("the file would have " + total + " bytes, glTF holds 4 GiB");
    }
    LittleEndian out = new LittleEndian(to);
    out.putInt(MAGIC);
    out.putInt(2);
    out.putInt((int) total);
    out.putInt(json.length);
    out.putInt(JSON);
    out.putBytes(json);
    out.putInt((int) binary);
    out.putInt(BIN);
    for (int p = 0; p < mesh.pointCount(); p++) {
      out.putFloat(place(p, 0));
      out.putFloat(place(p, 1));
      out.putFloat(place(p, 2));
    }
    for (int p = 0; p < mesh.pointCount(); p++) {
      out.putFloat(mesh.normalX(p));
      out.putFloat(mesh.normalZ(p));
      out.putFloat(-mesh.normalY(p));
    }
    for (int group = 0; group < counts.length; group++) {
      for (int t = 0; t < mesh.triangleCount() && counts[group] > 0; t++) {
        if (groupOfMaker.applyAsInt(mesh.maker(t)) == group) {
          out.putInt(mesh.point(t, 0));
          out.putInt(mesh.point(t, 1));
          out.putInt(mesh.point(t, 2));
        }
      }
    }
    out.flush();
  }

  private float place(int point, int axis) {
    int v = mesh.vertexOf(point);
    double value = axis == 0 ? mesh.x(v) : axis == 1 ? mesh.z(v) : -mesh.y(v);
    return (float) (METRE * value);
  }

  private String json(int[] counts) {
    long points = 12L * mesh.pointCount();
    StringBuilder views = new StringBuilder();
    StringBuilder accessors = new StringBuilder();
    StringBuilder primitives = new StringBuilder();
    StringBuilder materials = new StringBuilder();
    view(views, 0, points, ARRAY_BUFFER);
    view(views, points, points, ARRAY_BUFFER);
    accessors.append(
        accessor(0, FLOAT, mesh.pointCount(), "VEC3")
            + ",\"min\":"
            + extreme(-1)
            + ",\"max\":"
            + extreme(1)
            + "},"
            + accessor(1, FLOAT, mesh.pointCount(), "VEC3")
            + "}");
    long at = 2 * points;
    int used = 0;
    for (int group = 0; group < counts.length; group++) {
      if (counts[group] > 0) {
        view(views, at, 12L * counts[group], ELEMENT_ARRAY_BUFFER);
        at += 12L * counts[group];
        accessors
            .append(",")
            .append(accessor(2 + used, UNSIGNED_INT, 3 * counts[group], "SCALAR"))
            .append("}");
        String comma = used == 0 ? "" : ",";
        primitives
            .append(comma)
            .append("{\"attributes\":{\"POSITION\":0,\"NORMAL\":1},\"indices\":")
            .append(2 + used)
            .append(",\"material\":")
            .append(used)
            .append(",\"mode\":4}");
        materials.append(comma).append(material(paints.get(group)));
        used++;
      }
    }
    return "{\"asset\":{\"version\":\"2.0\",\"generator\":\"Flankfit\"},\"scene\":0,"
        + "\"scenes\":[{\"nodes\":[0]}],\"nodes\":[{\"mesh\":0,\"name\":\"part\"}],"
        + "\"meshes\":[{\"name\":\"part\",\"primitives\":["
        + primitives
        + "]}],"
        + "\"materials\":["
        + materials
        + "],\"accessors\":["
        + accessors
        + "],"
        + "\"bufferViews\":["
        + views
        + "],\"buffers\":[{\"byteLength\":"
        + at
        + "}]}";
  }

  private static void view(StringBuilder views, long offset, long length, int target) {
    views
        .append(views.isEmpty() ? "" : ",")
        .append("{\"buffer\":0,\"byteOffset\":")
        .append(offset)
        .append(",\"byteLength\":")
        .append(length)
        .append(",\"target\":")
        .append(target)
        .append("}");
  }

  private static String accessor(int view, int type, int count, String shape) {
    return "{\"bufferView\":"
        + view
        + ",\"componentType\":"
        + type
        + ",\"count\":"
        + count
        + ",\"type\":\""
        + shape
        + "\"";
  }

  /** Least or greatest coordinates as written, so that readers find them bit for bit. */
  private String extreme(int sign) {
    StringBuilder text = new StringBuilder("[");
    for (int axis = 0; axis < 3; axis++) {
      float most = place(0, axis);
      for (int p = 1; p < mesh.pointCount(); p++) {
        float value = place(p, axis);
        most = sign < 0 ? Math.min(most, value) : Math.max(most, value);
      }
      text.append(axis == 0 ? "" : ",").append((double) most);
    }
    return text.append("]").toString();
  }

  private static String material(Paint paint) {
    return "{\"name\":"
        + quoted(paint.name())
        + ",\"pbrMetallicRoughness\":{\"baseColorFactor\":["
        + paint.red()
        + ","
        + paint.green()
        + ","
        + paint.blue()
        + ",1],\"metallicFactor\":1,\"roughnessFactor\":0.4}}";
  }

  private static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        quoted.append('\\').append(c);
      } else if (c < 0x20) {
        quoted.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
      } else {
        quoted.append(c);
      }
    }
    return quoted.append('"').toString();
  }

  /** Chunks are of four bytes; JSON is filled up with blanks. */
  private static byte[] padded(String json) {
    byte[] bytes = json.getBytes(StandardCharsets.UTF_8);
    byte[] padded = Arrays.copyOf(bytes, (bytes.length + 3) / 4 * 4);
    Arrays.fill(padded, bytes.length, padded.length, (byte) ' ');
    return padded;
  }
}
