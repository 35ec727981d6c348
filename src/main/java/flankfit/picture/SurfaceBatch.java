package flankfit.picture;

import static org.lwjgl.opengl.GL33C.*;

import java.nio.FloatBuffer;
import java.util.List;
import org.lwjgl.system.MemoryUtil;

/** Triangles in graphics memory, drawn part by part. */
final class SurfaceBatch implements AutoCloseable {
  private static final int STRIDE = 6 * Float.BYTES;

  private final int vertexArray;
  private final int buffer;
  private List<SurfaceStore.Group> groups = List.of();

  SurfaceBatch() {
    vertexArray = glGenVertexArrays();
    buffer = glGenBuffers();
    glBindVertexArray(vertexArray);
    glBindBuffer(GL_ARRAY_BUFFER, buffer);
    glEnableVertexAttribArray(0);
    glVertexAttribPointer(0, 3, GL_FLOAT, false, STRIDE, 0);
    glEnableVertexAttribArray(1);
    glVertexAttribPointer(1, 3, GL_FLOAT, false, STRIDE, 3 * Float.BYTES);
    glBindVertexArray(0);
  }

  /** Takes the triangles of a store in place of those before. */
  void upload(SurfaceStore store) {
    groups = store.groups();
    FloatBuffer data = MemoryUtil.memAllocFloat(6 * store.vertices());
    data.put(store.data(), 0, 6 * store.vertices()).flip();
    glBindBuffer(GL_ARRAY_BUFFER, buffer);
    glBufferData(GL_ARRAY_BUFFER, data, GL_STATIC_DRAW);
    MemoryUtil.memFree(data);
  }

  /** Draws all groups of a part with the program in use. */
  void draw(SurfaceStore.Part part) {
    glBindVertexArray(vertexArray);
    for (int i = 0; i < groups.size(); i++) {
      SurfaceStore.Group group = groups.get(i);
      if (group.part() == part) {
        glDrawArrays(GL_TRIANGLES, group.first(), group.count());
      }
    }
    glBindVertexArray(0);
  }

  @Override
  public void close() {
    glDeleteBuffers(buffer);
    glDeleteVertexArrays(vertexArray);
  }
}
