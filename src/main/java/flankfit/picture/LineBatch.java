package flankfit.picture;

import static org.lwjgl.opengl.GL33C.*;

import java.nio.ByteBuffer;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.nio.ShortBuffer;
import org.lwjgl.PointerBuffer;
import org.lwjgl.system.MemoryUtil;

/**
 * Lines in graphics memory, drawn as quads that the vertex shader expands from texture buffers. One
 * index pattern serves every slot; slots outside the frame are left out. More points than a texture
 * buffer may hold are split over several.
 */
final class LineBatch implements AutoCloseable {
  private static final int QUAD_INDICES = 6;
  private static final int QUADS = LineStore.SLOT - 1;

  private final int vertexArray;
  private final int indexBuffer;
  private final int mostTexels;
  private Chunk[] chunks = {};

  LineBatch() {
    vertexArray = glGenVertexArrays();
    indexBuffer = glGenBuffers();
    glBindVertexArray(vertexArray);
    ShortBuffer pattern = MemoryUtil.memAllocShort(QUADS * QUAD_INDICES);
    for (int q = 0; q < QUADS; q++) {
      int v = 4 * q;
      pattern.put((short) v).put((short) (v + 1)).put((short) (v + 2));
      pattern.put((short) (v + 2)).put((short) (v + 1)).put((short) (v + 3));
    }
    pattern.flip();
    glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, indexBuffer);
    glBufferData(GL_ELEMENT_ARRAY_BUFFER, pattern, GL_STATIC_DRAW);
    glBindVertexArray(0);
    MemoryUtil.memFree(pattern);
    int limit = glGetInteger(GL_MAX_TEXTURE_BUFFER_SIZE);
    mostTexels = limit / LineStore.SLOT * LineStore.SLOT;
  }

  /** Takes the lines of a store in place of those before. */
  void upload(LineStore store) {
    release();
    int count = store.size() < 2 ? 0 : (store.size() + mostTexels - 1) / mostTexels;
    chunks = new Chunk[count];
    for (int i = 0; i < count; i++) {
      int first = i * mostTexels;
      chunks[i] = new Chunk(store, first, Math.min(mostTexels, store.size() - first));
    }
  }

  /**
   * Draws all lines with the line program, which must be in use and set up.
   *
   * @param program the line program
   * @param toClip the matrix it was given, by columns
   * @param position texel from which on chords lie beyond the position
   */
  void draw(ShaderProgram program, float[] toClip, int position) {
    glBindVertexArray(vertexArray);
    glUniform1i(program.uniform("points"), 0);
    glUniform1i(program.uniform("styles"), 1);
    for (Chunk chunk : chunks) {
      glUniform1i(program.uniform("position"), Math.max(0, position - chunk.first));
      chunk.draw(toClip);
    }
    glBindVertexArray(0);
    glActiveTexture(GL_TEXTURE0);
  }

  private void release() {
    for (Chunk chunk : chunks) {
      chunk.close();
    }
    chunks = new Chunk[0];
  }

  @Override
  public void close() {
    release();
    glDeleteBuffers(indexBuffer);
    glDeleteVertexArrays(vertexArray);
  }

  /** As many points as one texture buffer holds. */
  private static final class Chunk implements AutoCloseable {
    private final int first;
    private final int pointBuffer;
    private final int styleBuffer;
    private final int pointTexture;
    private final int styleTexture;
    private final int slots;
    private final float[] boxes;
    private final int[] quads;
    private final IntBuffer counts;
    private final PointerBuffer offsets;
    private final IntBuffer bases;

    Chunk(LineStore store, int first, int size) {
      this.first = first;
      FloatBuffer points = MemoryUtil.memAllocFloat(4 * size);
      points.put(store.points(), 4 * first, 4 * size).flip();
      ByteBuffer styles = MemoryUtil.memAlloc(size);
      styles.put(store.styles(), first, size).flip();
      pointBuffer = glGenBuffers();
      glBindBuffer(GL_TEXTURE_BUFFER, pointBuffer);
      glBufferData(GL_TEXTURE_BUFFER, points, GL_STATIC_DRAW);
      styleBuffer = glGenBuffers();
      glBindBuffer(GL_TEXTURE_BUFFER, styleBuffer);
      glBufferData(GL_TEXTURE_BUFFER, styles, GL_STATIC_DRAW);
      MemoryUtil.memFree(points);
      MemoryUtil.memFree(styles);
      pointTexture = texture(pointBuffer, GL_RGBA32F);
      styleTexture = texture(styleBuffer, GL_R8UI);
      slots = (size + LineStore.SLOT - 1) / LineStore.SLOT;
      boxes = new float[6 * slots];
      quads = new int[slots];
      measure(store, size);
      counts = MemoryUtil.memAllocInt(slots);
      offsets = MemoryUtil.memCallocPointer(slots);
      bases = MemoryUtil.memAllocInt(slots);
    }

    private static int texture(int buffer, int format) {
      int texture = glGenTextures();
      glBindTexture(GL_TEXTURE_BUFFER, texture);
      glTexBuffer(GL_TEXTURE_BUFFER, format, buffer);
      return texture;
    }

    private void measure(LineStore store, int size) {
      for (int s = 0; s < slots; s++) {
        int from = s * LineStore.SLOT;
        int to = Math.min(size, from + LineStore.SLOT);
        quads[s] = to - from - 1;
        for (int axis = 0; axis < 3; axis++) {
          float low = Float.MAX_VALUE;
          float high = -Float.MAX_VALUE;
          for (int t = from; t < to; t++) {
            float v = store.points()[4 * (first + t) + axis];
            low = Math.min(low, v);
            high = Math.max(high, v);
          }
          boxes[6 * s + axis] = low;
          boxes[6 * s + 3 + axis] = high;
        }
      }
    }

    void draw(float[] toClip) {
      counts.clear();
      bases.clear();
      for (int s = 0; s < slots; s++) {
        if (quads[s] > 0 && seen(s, toClip)) {
          counts.put(quads[s] * QUAD_INDICES);
          bases.put(4 * LineStore.SLOT * s);
        }
      }
      counts.flip();
      bases.flip();
      if (counts.limit() == 0) {
        return;
      }
      offsets.position(0).limit(counts.limit());
      glActiveTexture(GL_TEXTURE0);
      glBindTexture(GL_TEXTURE_BUFFER, pointTexture);
      glActiveTexture(GL_TEXTURE1);
      glBindTexture(GL_TEXTURE_BUFFER, styleTexture);
      glMultiDrawElementsBaseVertex(GL_TRIANGLES, counts, GL_UNSIGNED_SHORT, offsets, bases);
    }

    /** Whether the box of a slot meets the frame, with room for the width of a line. */
    private boolean seen(int slot, float[] m) {
      int b = 6 * slot;
      for (int axis = 0; axis < 2; axis++) {
        float middle = m[12 + axis];
        float reach = 0.1f;
        for (int k = 0; k < 3; k++) {
          float factor = m[4 * k + axis];
          middle += factor * (boxes[b + k] + boxes[b + 3 + k]) / 2;
          reach += Math.abs(factor) * (boxes[b + 3 + k] - boxes[b + k]) / 2;
        }
        if (Math.abs(middle) - reach > 1) {
          return false;
        }
      }
      return true;
    }

    @Override
    public void close() {
      glDeleteTextures(styleTexture);
      glDeleteTextures(pointTexture);
      glDeleteBuffers(styleBuffer);
      glDeleteBuffers(pointBuffer);
      MemoryUtil.memFree(bases);
      MemoryUtil.memFree(offsets);
      MemoryUtil.memFree(counts);
    }
  }
}
