package flankfit.window;

import imgui.ImFontConfig;
import java.nio.ShortBuffer;
import org.lwjgl.system.MemoryUtil;

/**
 * Which characters the panels' letters hold, in memory that stays where it is.
 *
 * <p>The panels keep a pointer to the ranges until their atlas is built, and the binding hands them
 * one into the Java heap, which the garbage collector moves: then every character is drawn as the
 * same wrong one. So the pointer is written into the font's configuration here, once it is proved
 * where it stands; if it cannot be proved, the panels' own range (Latin-1) is used.
 */
final class GlyphRanges implements AutoCloseable {
  private static final short[] CHARACTERS = {
    0x20, 0x7E, 0xA0, 0xFF, 0x0394, 0x0394, 0x2010, 0x2026, 0x2190, 0x2193, 0x2212, 0x2212, 0x2264,
    0x2265, 0x25A0, 0x25D0, 0
  };

  /** Where a font's configuration keeps the pointer: after 56 bytes on 64-bit machines. */
  private static final long POINTER_AT = 56;

  private final ShortBuffer ranges = MemoryUtil.memAllocShort(CHARACTERS.length);
  private final boolean proved;

  GlyphRanges() {
    ranges.put(CHARACTERS).flip();
    proved = prove();
  }

  /** Lets the binding set the pointer in a configuration of no use, and looks where it lands. */
  private static boolean prove() {
    if (!System.getProperty("os.arch", "").contains("64")) {
      return false;
    }
    ImFontConfig scratch = new ImFontConfig();
    try {
      long before = MemoryUtil.memGetAddress(scratch.ptr + POINTER_AT);
      scratch.setGlyphRanges(CHARACTERS);
      long after = MemoryUtil.memGetAddress(scratch.ptr + POINTER_AT);
      return before == MemoryUtil.NULL && after != MemoryUtil.NULL;
    } finally {
      scratch.destroy();
    }
  }

  /** Makes a font hold these characters; the ranges must outlive its atlas. */
  void giveTo(ImFontConfig config) {
    if (proved) {
      MemoryUtil.memPutAddress(config.ptr + POINTER_AT, MemoryUtil.memAddress(ranges));
    }
  }

  @Override
  public void close() {
    MemoryUtil.memFree(ranges);
  }
}
