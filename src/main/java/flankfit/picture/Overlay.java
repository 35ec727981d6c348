package flankfit.picture;

import static org.lwjgl.opengl.GL33C.*;

import flankfit.picture.TextAtlas.Face;
import java.nio.FloatBuffer;
import org.lwjgl.stb.STBTTPackedchar;
import org.lwjgl.system.MemoryUtil;

/** Flat ink over a scene, in pixels from the lower left corner: letters, bars and strokes. */
final class Overlay implements AutoCloseable {
  /** Which end of a text stands at the place given. */
  enum Align {
    LEFT(0),
    MIDDLE(0.5),
    RIGHT(1);

    private final double share;

    Align(double share) {
      this.share = share;
    }
  }

  private static final int FLOATS = 8;
  private static final int FIRST_FLOATS = FLOATS * 6 * 1024;

  private final TextAtlas atlas;
  private final ShaderProgram program;
  private final int vertexArray;
  private final int buffer;
  private final float[] tint = new float[4];
  private FloatBuffer data = MemoryUtil.memAllocFloat(FIRST_FLOATS);

  Overlay(TextAtlas atlas) {
    this.atlas = atlas;
    program = new ShaderProgram("overlay");
    vertexArray = glGenVertexArrays();
    buffer = glGenBuffers();
    glBindVertexArray(vertexArray);
    glBindBuffer(GL_ARRAY_BUFFER, buffer);
    attribute(0, 2, 0);
    attribute(1, 2, 2);
    attribute(2, 4, 4);
    glBindVertexArray(0);
  }

  private static void attribute(int index, int size, int offset) {
    glEnableVertexAttribArray(index);
    glVertexAttribPointer(
        index, size, GL_FLOAT, false, FLOATS * Float.BYTES, (long) offset * Float.BYTES);
  }

  /** Chooses the ink for what follows. */
  void ink(int colour, double alpha) {
    Colours.put(colour, alpha, tint, 0);
  }

  /** A bar along the axes (px). */
  void bar(double x, double y, double width, double height) {
    float u = atlas.whiteX();
    float v = atlas.whiteY();
    quad(x, y, x + width, y + height, u, v, u, v);
  }

  /** A soft-edged stroke (px). */
  void stroke(double x0, double y0, double x1, double y1, double width) {
    double length = Math.hypot(x1 - x0, y1 - y0);
    if (length == 0) {
      return;
    }
    double nx = -(y1 - y0) / length;
    double ny = (x1 - x0) / length;
    float full = tint[3];
    double core = Math.max(0, width / 2 - 0.5);
    double edge = width / 2 + 0.5;
    strip(x0, y0, x1, y1, nx, ny, -core, core, full, full);
    strip(x0, y0, x1, y1, nx, ny, core, edge, full, 0);
    strip(x0, y0, x1, y1, nx, ny, -edge, -core, 0, full);
    tint[3] = full;
  }

  private void strip(
      double x0,
      double y0,
      double x1,
      double y1,
      double nx,
      double ny,
      double low,
      double high,
      float lowAlpha,
      float highAlpha) {
    corner(x0 + nx * low, y0 + ny * low, lowAlpha);
    corner(x1 + nx * low, y1 + ny * low, lowAlpha);
    corner(x1 + nx * high, y1 + ny * high, highAlpha);
    corner(x0 + nx * low, y0 + ny * low, lowAlpha);
    corner(x1 + nx * high, y1 + ny * high, highAlpha);
    corner(x0 + nx * high, y0 + ny * high, highAlpha);
  }

  private void corner(double x, double y, float alpha) {
    tint[3] = alpha;
    vertex(x, y, atlas.whiteX(), atlas.whiteY());
  }

  /**
   * A line of text.
   *
   * @param x column of its left end, middle or right end (px)
   * @param y row of its base line (px)
   * @return its width (px)
   */
  double text(Face face, double x, double y, String text, Align align) {
    double width = atlas.width(face, text);
    double pen = Math.round(x - width * align.share);
    double base = Math.round(y);
    for (int i = 0; i < text.length(); i++) {
      STBTTPackedchar glyph = atlas.glyph(face, text.charAt(i));
      float side = atlas.side();
      quad(
          pen + glyph.xoff(),
          base - glyph.yoff2(),
          pen + glyph.xoff2(),
          base - glyph.yoff(),
          glyph.x0() / side,
          glyph.y1() / side,
          glyph.x1() / side,
          glyph.y0() / side);
      pen += glyph.xadvance();
    }
    return width;
  }

  /** Width of a text (px). */
  double width(Face face, String text) {
    return atlas.width(face, text);
  }

  /** Size of a face (px). */
  double size(Face face) {
    return atlas.size(face);
  }

  /** A filled corner after corner (px). */
  void quad(
      double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3) {
    float u = atlas.whiteX();
    float v = atlas.whiteY();
    vertex(x0, y0, u, v);
    vertex(x1, y1, u, v);
    vertex(x2, y2, u, v);
    vertex(x0, y0, u, v);
    vertex(x2, y2, u, v);
    vertex(x3, y3, u, v);
  }

  private void quad(
      double x0, double y0, double x1, double y1, float u0, float v0, float u1, float v1) {
    vertex(x0, y0, u0, v0);
    vertex(x1, y0, u1, v0);
    vertex(x1, y1, u1, v1);
    vertex(x0, y0, u0, v0);
    vertex(x1, y1, u1, v1);
    vertex(x0, y1, u0, v1);
  }

  private void vertex(double x, double y, float u, float v) {
    if (data.remaining() < FLOATS) {
      data = MemoryUtil.memRealloc(data, data.capacity() * 2);
    }
    data.put((float) x).put((float) y).put(u).put(v);
    data.put(tint[0]).put(tint[1]).put(tint[2]).put(tint[3]);
  }

  /** Draws everything gathered and begins anew. */
  void flush(int width, int height) {
    data.flip();
    int count = data.limit() / FLOATS;
    if (count > 0) {
      program.use();
      glUniform2f(program.uniform("viewport"), width, height);
      glUniform1i(program.uniform("glyphs"), 0);
      glActiveTexture(GL_TEXTURE0);
      glBindTexture(GL_TEXTURE_2D, atlas.texture());
      glBindVertexArray(vertexArray);
      glBindBuffer(GL_ARRAY_BUFFER, buffer);
      glBufferData(GL_ARRAY_BUFFER, data, GL_STREAM_DRAW);
      glDrawArrays(GL_TRIANGLES, 0, count);
      glBindVertexArray(0);
    }
    data.clear();
  }

  @Override
  public void close() {
    MemoryUtil.memFree(data.clear());
    glDeleteBuffers(buffer);
    glDeleteVertexArrays(vertexArray);
    program.close();
  }
}
