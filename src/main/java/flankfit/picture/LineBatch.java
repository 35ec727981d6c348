package flankfit.picture;

import static org.lwjgl.opengl.GL33C.*;

import java.nio.ByteBuffer;
import java.nio.FloatBuffer;
import java.nio.IntBuffer;
import java.nio.ShortBuffer;
import java.util.ArrayList;
import java.util.List;
import org.lwjgl.PointerBuffer;
import org.lwjgl.system.MemoryUtil;

/**
 * Lines in graphics memory, drawn as quads that the vertex shader expands from texture buffers. One
 * index pattern serves every slot; slots outside the frame are left out. More points than a texture
 * buffer may hold are split over several.
 */
final class LineBatch implements AutoCloseable {
  private static final int QUAD_INDICES = 6;
  private static final int HAIR_INDICES = 2;

  /** Texels of a piece that grows: 2 MB. */
  private static final int STRETCH = 128 * LineStore.SLOT;

  private static final int QUADS = LineStore.SLOT - 1;

  /** Chords drawn between two looks at the clock. */
  private static final int GROUP = 2 * LineStore.SLOT;

  private final int vertexArray;
  private final int indexBuffer;
  private final int hairArray;
  private final int hairIndexBuffer;
  private final int mostTexels;
  private final List<Chunk> chunks = new ArrayList<>();
  private int uploaded;

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
    hairArray = glGenVertexArrays();
    hairIndexBuffer = glGenBuffers();
    glBindVertexArray(hairArray);
    pattern.clear();
    for (int q = 0; q < QUADS; q++) {
      pattern.put((short) (4 * q)).put((short) (4 * q + 2));
    }
    pattern.flip();
    glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, hairIndexBuffer);
    glBufferData(GL_ELEMENT_ARRAY_BUFFER, pattern, GL_STATIC_DRAW);
    glBindVertexArray(0);
    MemoryUtil.memFree(pattern);
    int limit = glGetInteger(GL_MAX_TEXTURE_BUFFER_SIZE);
    mostTexels = limit / LineStore.SLOT * LineStore.SLOT;
  }

  /** Takes the lines of a store in place of those before. */
  void upload(LineStore store) {
    release();
    if (store.size() >= 2) {
      append(store, Integer.MAX_VALUE, Math.min(mostTexels, store.size()));
    }
  }

  /**
   * Takes what a store has grown by; it must be the store of the call before.
   *
   * @param most number of texels at most
   */
  void append(LineStore store, int most) {
    append(store, most, Math.min(mostTexels, STRETCH));
  }

  private void append(LineStore store, int most, int capacity) {
    int end = (int) Math.min(store.size(), (long) uploaded + most);
    while (uploaded < end) {
      if (chunks.isEmpty() || chunks.get(chunks.size() - 1).isFull()) {
        chunks.add(new Chunk(uploaded, capacity));
      }
      Chunk last = chunks.get(chunks.size() - 1);
      // The style of the last texel is known only when another follows.
      int from = uploaded == last.first ? uploaded : uploaded - 1;
      uploaded = Math.min(end, last.first + last.capacity);
      last.write(store, from, uploaded);
    }
  }

  /** Number of texels in graphics memory. */
  int uploaded() {
    return uploaded;
  }

  /**
   * Draws all lines with the line program, which must be in use and set up.
   *
   * @param program the line program
   * @param toClip the matrix it was given, by columns
   * @param position texel from which on chords lie beyond the position
   * @param split texel whose chord the position lies within; -1 for none
   */
  void draw(ShaderProgram program, float[] toClip, int position, int split) {
    glBindVertexArray(vertexArray);
    glUniform1i(program.uniform("points"), 0);
    glUniform1i(program.uniform("styles"), 1);
    for (Chunk chunk : chunks) {
      chunk.draw(program, toClip, position, split);
    }
    glBindVertexArray(0);
    glActiveTexture(GL_TEXTURE0);
  }

  /**
   * Draws some of the lines.
   *
   * @param hair whether as lines of one pixel, for the program's phase of hair lines; else as quads
   * @param order which were drawn before; is moved on
   * @param until the time (ns, of {@link System#nanoTime}) after which no more is begun; one group
   *     of slots is drawn in any case
   * @return whether all are drawn
   */
  boolean drawSome(
      boolean hair,
      ShaderProgram program,
      float[] toClip,
      int position,
      int split,
      SlotOrder order,
      long until) {
    if (uploaded < 2) {
      return true;
    }
    glBindVertexArray(hair ? hairArray : vertexArray);
    glUniform1i(program.uniform("points"), 0);
    glUniform1i(program.uniform("styles"), 1);
    Chunk bound = null;
    int chords = 0;
    int slots = (uploaded + LineStore.SLOT - 1) / LineStore.SLOT;
    int lastQuads = (uploaded - 1) % LineStore.SLOT;
    boolean all = false;
    while (!all && (chords < GROUP || System.nanoTime() - until < 0)) {
      if (chords >= GROUP) {
        glFinish();
        chords = 0;
        continue;
      }
      int slot = order.next(slots, lastQuads);
      all = slot < 0;
      if (all) {
        break;
      }
      int perChunk = chunks.get(0).quads.length;
      Chunk chunk = chunks.get(slot / perChunk);
      int within = slot % perChunk;
      if (chunk.quads[within] > 0 && chunk.seen(within, toClip)) {
        if (chunk != bound) {
          bound = chunk;
          chunk.bind(program, position, split);
        }
        glDrawElementsBaseVertex(
            hair ? GL_LINES : GL_TRIANGLES,
            (hair ? HAIR_INDICES : QUAD_INDICES) * chunk.quads[within],
            GL_UNSIGNED_SHORT,
            0,
            4 * LineStore.SLOT * within);
        chords += chunk.quads[within];
      }
    }
    glBindVertexArray(0);
    glActiveTexture(GL_TEXTURE0);
    return all;
  }

  /** What drawing all that is seen would take, in chords and their length (mm) together. */
  void estimate(float[] toClip, Effort effort) {
    for (Chunk chunk : chunks) {
      for (int slot = 0; slot < chunk.quads.length; slot++) {
        if (chunk.quads[slot] > 0 && chunk.seen(slot, toClip)) {
          effort.chords += chunk.quads[slot];
          effort.length += chunk.lengths[slot];
        }
      }
    }
  }

  /** Chords and their length. */
  static final class Effort {
    private long chords;
    private double length;

    /** Number of chords. */
    long chords() {
      return chords;
    }

    /** Their length (mm). */
    double length() {
      return length;
    }
  }

  private void release() {
    for (Chunk chunk : chunks) {
      chunk.close();
    }
    chunks.clear();
    uploaded = 0;
  }

  @Override
  public void close() {
    release();
    glDeleteBuffers(hairIndexBuffer);
    glDeleteVertexArrays(hairArray);
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
    private final int capacity;
    private final float[] boxes;
    private final int[] quads;
    private final double[] lengths;
    private final IntBuffer counts;
    private final PointerBuffer offsets;
    private final IntBuffer bases;
    private int size;

    Chunk(int first, int capacity) {
      this.first = first;
      this.capacity = capacity;
      pointBuffer = buffer(4L * Float.BYTES * capacity);
      styleBuffer = buffer(capacity);
      pointTexture = texture(pointBuffer, GL_RGBA32F);
      styleTexture = texture(styleBuffer, GL_R8UI);
      int slots = (capacity + LineStore.SLOT - 1) / LineStore.SLOT;
      boxes = new float[6 * slots];
      quads = new int[slots];
      lengths = new double[slots];
      counts = MemoryUtil.memAllocInt(slots);
      offsets = MemoryUtil.memCallocPointer(slots);
      bases = MemoryUtil.memAllocInt(slots);
    }

    private static int buffer(long bytes) {
      int buffer = glGenBuffers();
      glBindBuffer(GL_TEXTURE_BUFFER, buffer);
      glBufferData(GL_TEXTURE_BUFFER, bytes, GL_STATIC_DRAW);
      return buffer;
    }

    boolean isFull() {
      return size == capacity;
    }

    /** Takes texels of a store, counted from its beginning. */
    void write(LineStore store, int from, int to) {
      int count = to - from;
      FloatBuffer points = MemoryUtil.memAllocFloat(4 * count);
      points.put(store.points(), 4 * from, 4 * count).flip();
      glBindBuffer(GL_TEXTURE_BUFFER, pointBuffer);
      glBufferSubData(GL_TEXTURE_BUFFER, 4L * Float.BYTES * (from - first), points);
      MemoryUtil.memFree(points);
      ByteBuffer styles = MemoryUtil.memAlloc(count);
      styles.put(store.styles(), from, count).flip();
      glBindBuffer(GL_TEXTURE_BUFFER, styleBuffer);
      glBufferSubData(GL_TEXTURE_BUFFER, from - first, styles);
      MemoryUtil.memFree(styles);
      for (int texel = from; texel < to; texel++) {
        include(store.points(), texel == 0 ? LineStore.HIDDEN : store.styles()[texel - 1], texel);
      }
      size = to - first;
    }

    private void include(float[] points, byte styleBefore, int texel) {
      int slot = (texel - first) / LineStore.SLOT;
      int within = (texel - first) % LineStore.SLOT;
      if (within > quads[slot] && styleBefore != LineStore.HIDDEN) {
        int at = 4 * texel;
        double dx = points[at] - points[at - 4];
        double dy = points[at + 1] - points[at - 3];
        double dz = points[at + 2] - points[at - 2];
        lengths[slot] += Math.sqrt(dx * dx + dy * dy + dz * dz);
      }
      quads[slot] = within;
      for (int axis = 0; axis < 3; axis++) {
        float v = points[4 * texel + axis];
        int at = 6 * slot + axis;
        boxes[at] = within == 0 ? v : Math.min(boxes[at], v);
        boxes[at + 3] = within == 0 ? v : Math.max(boxes[at + 3], v);
      }
    }

    private static int texture(int buffer, int format) {
      int texture = glGenTextures();
      glBindTexture(GL_TEXTURE_BUFFER, texture);
      glTexBuffer(GL_TEXTURE_BUFFER, format, buffer);
      return texture;
    }

    void bind(ShaderProgram program, int position, int split) {
      glUniform1i(program.uniform("position"), Math.max(0, position - first));
      glUniform1i(program.uniform("split"), split < first ? -1 : split - first);
      glActiveTexture(GL_TEXTURE0);
      glBindTexture(GL_TEXTURE_BUFFER, pointTexture);
      glActiveTexture(GL_TEXTURE1);
      glBindTexture(GL_TEXTURE_BUFFER, styleTexture);
    }

    void draw(ShaderProgram program, float[] toClip, int position, int split) {
      counts.clear();
      bases.clear();
      for (int s = 0; s < quads.length; s++) {
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
      bind(program, position, split);
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
