package flankfit.picture;

import static org.lwjgl.opengl.GL33C.*;

import java.nio.FloatBuffer;
import org.lwjgl.system.MemoryUtil;

/** Direction marks in graphics memory: one instance each, two strokes of fixed size in pixels. */
final class TickBatch implements AutoCloseable {
  private static final int FLOATS = TickStore.FLOATS;

  private final int vertexArray;
  private final int buffer;
  private final int indices;
  private int count;

  TickBatch() {
    vertexArray = glGenVertexArrays();
    buffer = glGenBuffers();
    indices = glGenBuffers();
    glBindVertexArray(vertexArray);
    glBindBuffer(GL_ARRAY_BUFFER, buffer);
    attribute(0, 3, 0);
    attribute(1, 3, 3);
    attribute(2, 2, 6);
    glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, indices);
    glBufferData(
        GL_ELEMENT_ARRAY_BUFFER, new short[] {0, 1, 2, 2, 1, 3, 4, 5, 6, 6, 5, 7}, GL_STATIC_DRAW);
    glBindVertexArray(0);
  }

  private static void attribute(int index, int size, int offset) {
    glEnableVertexAttribArray(index);
    glVertexAttribPointer(
        index, size, GL_FLOAT, false, FLOATS * Float.BYTES, (long) offset * Float.BYTES);
    glVertexAttribDivisor(index, 1);
  }

  /** Takes the marks of a store in place of those before. */
  void upload(TickStore store) {
    count = store.size();
    FloatBuffer data = MemoryUtil.memAllocFloat(Math.max(1, FLOATS * count));
    data.put(store.data(), 0, FLOATS * count).flip();
    glBindBuffer(GL_ARRAY_BUFFER, buffer);
    glBufferData(GL_ARRAY_BUFFER, data, GL_STATIC_DRAW);
    MemoryUtil.memFree(data);
  }

  /** Draws all marks with the tick program, which must be in use and set up. */
  void draw() {
    if (count == 0) {
      return;
    }
    glBindVertexArray(vertexArray);
    glDrawElementsInstanced(GL_TRIANGLES, 12, GL_UNSIGNED_SHORT, 0, count);
    glBindVertexArray(0);
  }

  @Override
  public void close() {
    glDeleteBuffers(indices);
    glDeleteBuffers(buffer);
    glDeleteVertexArrays(vertexArray);
  }
}
