package flankfit.picture;

import static org.lwjgl.opengl.GL33C.*;

import java.nio.ByteBuffer;
import java.nio.IntBuffer;
import java.util.EnumMap;
import java.util.Map;
import org.lwjgl.stb.STBTTFontinfo;
import org.lwjgl.stb.STBTTPackContext;
import org.lwjgl.stb.STBTTPackRange;
import org.lwjgl.stb.STBTTPackedchar;
import org.lwjgl.stb.STBTruetype;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.MemoryUtil;

/** The letters of the drawings, rasterised once for a content scale into one texture. */
final class TextAtlas implements AutoCloseable {
  /** What a text is for. */
  enum Face {
    SMALL(BundledFont.TEXT, 12.5f),
    BODY(BundledFont.TEXT, 14.5f),
    STRONG(BundledFont.STRONG, 14.5f),
    TITLE(BundledFont.STRONG, 20f);

    private final BundledFont font;
    private final float size;

    Face(BundledFont font, float size) {
      this.font = font;
      this.size = size;
    }

    BundledFont font() {
      return font;
    }

    /** Height of a line from the highest to the lowest letter at scale 1 (px). */
    double size() {
      return size;
    }
  }

  /** Characters beyond ASCII that drawings use, in rising order. */
  static final String EXTRA = "°±µ·×Ø÷øΔ–—…←↑→↓−≤≥■▲▼◆●";

  private static final int FIRST = 32;
  private static final int PLAIN = 95;
  private static final int SIDE = 1024;
  private static final int WHITE_ROWS = 4;

  private final double contentScale;
  private final int side;
  private final int texture;
  private final Map<Face, STBTTPackedchar.Buffer> glyphs = new EnumMap<>(Face.class);

  /** Rasterises all faces (1 is one pixel a logical pixel). */
  TextAtlas(double contentScale) {
    this.contentScale = contentScale;
    side = contentScale > 1.6 ? 2 * SIDE : SIDE;
    ByteBuffer bitmap = MemoryUtil.memCalloc(side * side);
    pack(bitmap);
    for (int i = 0; i < side * WHITE_ROWS; i++) {
      bitmap.put(side * (side - WHITE_ROWS) + i, (byte) 255);
    }
    texture = glGenTextures();
    glBindTexture(GL_TEXTURE_2D, texture);
    glPixelStorei(GL_UNPACK_ALIGNMENT, 1);
    glTexImage2D(GL_TEXTURE_2D, 0, GL_R8, side, side, 0, GL_RED, GL_UNSIGNED_BYTE, bitmap);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_LINEAR);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_LINEAR);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_S, GL_CLAMP_TO_EDGE);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_T, GL_CLAMP_TO_EDGE);
    MemoryUtil.memFree(bitmap);
  }

  private void pack(ByteBuffer bitmap) {
    try (STBTTPackContext context = STBTTPackContext.malloc();
        STBTTPackRange.Buffer ranges = STBTTPackRange.calloc(2)) {
      STBTruetype.stbtt_PackBegin(context, bitmap, side, side - 2 * WHITE_ROWS, side, 1);
      STBTruetype.stbtt_PackSetOversampling(context, 2, 1);
      IntBuffer extra = MemoryUtil.memAllocInt(EXTRA.length());
      EXTRA.chars().forEach(extra::put);
      extra.flip();
      for (Face face : Face.values()) {
        byte[] bytes = face.font.bytes();
        ByteBuffer file = MemoryUtil.memAlloc(bytes.length).put(bytes).flip();
        STBTTPackedchar.Buffer chars = STBTTPackedchar.calloc(PLAIN + EXTRA.length());
        float size = (float) (face.size * contentScale);
        STBTTPackedchar.Buffer plain = STBTTPackedchar.create(chars.address(), PLAIN);
        STBTTPackedchar.Buffer more = STBTTPackedchar.create(chars.address(PLAIN), EXTRA.length());
        range(ranges.get(0), size, FIRST, null, plain);
        range(ranges.get(1), size, 0, extra, more);
        if (!STBTruetype.stbtt_PackFontRanges(context, file, 0, ranges)) {
          throw new IllegalStateException("the letters do not fit their texture");
        }
        glyphs.put(face, chars);
        MemoryUtil.memFree(file);
      }
      MemoryUtil.memFree(extra);
      STBTruetype.stbtt_PackEnd(context);
    }
  }

  private static void range(
      STBTTPackRange range, float size, int first, IntBuffer list, STBTTPackedchar.Buffer target) {
    range.font_size(size);
    range.first_unicode_codepoint_in_range(first);
    range.array_of_unicode_codepoints(list);
    range.num_chars(target.remaining());
    range.chardata_for_range(target);
  }

  /** The texture. */
  int texture() {
    return texture;
  }

  /** Texture coordinate, both ways, of a spot that is all ink. */
  float whiteX() {
    return 0.5f;
  }

  /** Texture coordinate downwards of a spot that is all ink. */
  float whiteY() {
    return (side - WHITE_ROWS / 2f) / side;
  }

  /** Side of the square texture (px). */
  int side() {
    return side;
  }

  /** The packed letter of a character; a question mark for one we lack. */
  STBTTPackedchar glyph(Face face, char c) {
    int index = c - FIRST;
    if (index < 0 || index >= PLAIN) {
      int extra = EXTRA.indexOf(c);
      index = extra < 0 ? '?' - FIRST : PLAIN + extra;
    }
    return glyphs.get(face).get(index);
  }

  /** Width of a text (px). */
  double width(Face face, String text) {
    double width = 0;
    for (int i = 0; i < text.length(); i++) {
      width += glyph(face, text.charAt(i)).xadvance();
    }
    return width;
  }

  /** Size of a face (px). */
  double size(Face face) {
    return face.size * contentScale;
  }

  /** Advance of each character in a font's own units, as its tables say (1). */
  static int[] advances(BundledFont font, String characters) {
    byte[] bytes = font.bytes();
    ByteBuffer file = MemoryUtil.memAlloc(bytes.length).put(bytes).flip();
    int[] advances = new int[characters.length()];
    try (STBTTFontinfo info = STBTTFontinfo.malloc();
        MemoryStack stack = MemoryStack.stackPush()) {
      if (!STBTruetype.stbtt_InitFont(info, file)) {
        throw new IllegalStateException("not a font: " + font);
      }
      IntBuffer advance = stack.mallocInt(1);
      IntBuffer bearing = stack.mallocInt(1);
      for (int i = 0; i < advances.length; i++) {
        STBTruetype.stbtt_GetCodepointHMetrics(info, characters.charAt(i), advance, bearing);
        advances[i] = advance.get(0);
      }
    } finally {
      MemoryUtil.memFree(file);
    }
    return advances;
  }

  @Override
  public void close() {
    glDeleteTextures(texture);
    for (STBTTPackedchar.Buffer chars : glyphs.values()) {
      chars.free();
    }
  }
}
