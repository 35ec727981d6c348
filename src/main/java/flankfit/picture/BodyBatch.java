package flankfit.picture;

import static org.lwjgl.opengl.GL33C.*;

import java.nio.ByteBuffer;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import org.lwjgl.system.MemoryUtil;

/** A body's triangles in graphics memory. */
final class BodyBatch implements AutoCloseable {
  private static final int STRIDE = BodyFaces.FLOATS * Float.BYTES + 4;

  private final int vertexArray = glGenVertexArrays();
  private final int buffer = glGenBuffers();
  private final int index = glGenBuffers();
  private int count;

  BodyBatch() {
    glBindVertexArray(vertexArray);
    glBindBuffer(GL_ARRAY_BUFFER, buffer);
    glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, index);
    for (int k = 0; k < 3; k++) {
      glEnableVertexAttribArray(k);
      glVertexAttribPointer(k, 3, GL_FLOAT, false, STRIDE, 3L * k * Float.BYTES);
    }
    glEnableVertexAttribArray(3);
    glVertexAttribPointer(
        3, 4, GL_UNSIGNED_BYTE, true, STRIDE, (long) BodyFaces.FLOATS * Float.BYTES);
    glBindVertexArray(0);
  }

  /** Takes triangles in place of those before. */
  void upload(BodyFaces faces) {
    count = 3 * faces.triangles();
    ByteBuffer data = MemoryUtil.memAlloc(Math.max(1, faces.vertices() * STRIDE));
    IntBuffer corners = MemoryUtil.memAllocInt(Math.max(1, count));
    try {
      FloatBuffer floats = data.asFloatBuffer();
      IntBuffer ints = data.asIntBuffer();
      int width = STRIDE / Float.BYTES;
      for (int i = 0; i < faces.vertices(); i++) {
        floats.put(i * width, faces.data(), i * BodyFaces.FLOATS, BodyFaces.FLOATS);
        ints.put(i * width + BodyFaces.FLOATS, faces.tints()[i]);
      }
      corners.put(faces.corners(), 0, count).flip();
      glBindVertexArray(vertexArray);
      glBindBuffer(GL_ARRAY_BUFFER, buffer);
      glBufferData(GL_ARRAY_BUFFER, data, GL_STATIC_DRAW);
      glBufferData(GL_ELEMENT_ARRAY_BUFFER, corners, GL_STATIC_DRAW);
      glBindVertexArray(0);
    } finally {
      MemoryUtil.memFree(corners);
      MemoryUtil.memFree(data);
    }
  }

  /** Draws all triangles with the program in use. */
  void draw() {
    glBindVertexArray(vertexArray);
    glDrawElements(GL_TRIANGLES, count, GL_UNSIGNED_INT, 0);
    glBindVertexArray(0);
  }

  @Override
  public void close() {
    glDeleteBuffers(index);
    glDeleteBuffers(buffer);
    glDeleteVertexArrays(vertexArray);
  }
}
