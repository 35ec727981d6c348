package flankfit.picture;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * Writes PNG: 8 bits a channel, no alpha, every row as it is or predicted from the one above. The
 * same pixels give the same bytes.
 *
 * @see "ISO/IEC 15948:2004, clauses 5, 9 and 11"
 */
public final class Png {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
  private static final byte FILTER_UP = 2;
  private static final int CHANNELS = 3;

  private Png() {}

  /**
   * The picture as a PNG file.
   *
   * @param rgb red, green, blue, rows from the top; 3 width height long
   * @param width width (px), at least 1
   * @param height height (px), at least 1
   */
  public static byte[] encode(byte[] rgb, int width, int height) {
    return encode(rgb, width, height, true, 6);
  }

  /**
   * The same in fewer bytes for what is written once and read often: letters and even grounds are
   * smaller as they are, shades as the difference from the row above.
   */
  public static byte[] encodeSmall(byte[] rgb, int width, int height) {
    byte[] plain = encode(rgb, width, height, false, 9);
    byte[] above = encode(rgb, width, height, true, 9);
    return plain.length <= above.length ? plain : above;
  }

  private static byte[] encode(byte[] rgb, int width, int height, boolean above, int level) {
    if (rgb.length != CHANNELS * width * height) {
      throw new IllegalArgumentException(
          "rgb must be " + CHANNELS * width * height + " long: " + rgb.length);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(SIGNATURE);
    ByteBuffer header = ByteBuffer.allocate(13);
    header.putInt(width).putInt(height).put((byte) 8).put((byte) 2);
    chunk(out, "IHDR", header.array());
    chunk(
        out,
        "IDAT",
        deflate(above ? filtered(rgb, width, height) : plain(rgb, width, height), level));
    chunk(out, "IEND", new byte[0]);
    return out.toByteArray();
  }

  private static byte[] filtered(byte[] rgb, int width, int height) {
    int row = CHANNELS * width;
    byte[] lines = new byte[(row + 1) * height];
    for (int y = 0; y < height; y++) {
      int to = y * (row + 1);
      lines[to++] = FILTER_UP;
      for (int i = 0; i < row; i++) {
        int above = y == 0 ? 0 : rgb[(y - 1) * row + i];
        lines[to++] = (byte) (rgb[y * row + i] - above);
      }
    }
    return lines;
  }

  private static byte[] plain(byte[] rgb, int width, int height) {
    int row = CHANNELS * width;
    byte[] lines = new byte[(row + 1) * height];
    for (int y = 0; y < height; y++) {
      System.arraycopy(rgb, y * row, lines, y * (row + 1) + 1, row);
    }
    return lines;
  }

  private static byte[] deflate(byte[] plain, int level) {
    Deflater deflater = new Deflater(level);
    try {
      deflater.setInput(plain);
      deflater.finish();
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      byte[] part = new byte[1 << 16];
      while (!deflater.finished()) {
        out.write(part, 0, deflater.deflate(part));
      }
      return out.toByteArray();
    } finally {
      deflater.end();
    }
  }

  private static void chunk(ByteArrayOutputStream out, String type, byte[] content) {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 check = new CRC32();
    check.update(name);
    check.update(content);
    out.writeBytes(ByteBuffer.allocate(4).putInt(content.length).array());
    out.writeBytes(name);
    out.writeBytes(content);
    out.writeBytes(ByteBuffer.allocate(4).putInt((int) check.getValue()).array());
  }
}
