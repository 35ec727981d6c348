package flankfit.nc;

import flankfit.finding.Place;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.RandomAccess;
import java.util.TreeMap;

/**
 * The bytes of a program with the name of its file. Lines end at LF, CR, or CR LF and are numbered
 * from 1; each is shown as UTF-8, or as ISO 8859-1 where its bytes are no UTF-8.
 */
public final class SourceText {
  private static final int STRETCHES = 64;
  private static final int STRETCH = 1024;

  private final String file;
  private final byte[] bytes;
  private int[] lineStarts = {};

  private SourceText(String file, byte[] bytes) {
    this.file = Objects.requireNonNull(file, "file");
    this.bytes = Objects.requireNonNull(bytes, "bytes");
  }

  /**
   * A program from the bytes of a file.
   *
   * @param fileName name as the user gave it; stands in every finding
   * @param bytes content; not copied, so it must not change afterwards
   */
  public static SourceText of(String fileName, byte[] bytes) {
    return new SourceText(fileName, bytes);
  }

  /** Name of the file. */
  public String file() {
    return file;
  }

  /** Number of bytes. */
  public int size() {
    return bytes.length;
  }

  byte[] bytes() {
    return bytes;
  }

  /** A guess of the number of lines from some stretches of the text. */
  public int likelyLines() {
    int stretches = bytes.length <= STRETCHES * STRETCH ? 1 : STRETCHES;
    int length = stretches == 1 ? bytes.length : STRETCH;
    int ends = 0;
    for (int i = 0; i < stretches; i++) {
      int from = stretches == 1 ? 0 : (int) ((long) (bytes.length - length) * i / (stretches - 1));
      for (int at = from; at < from + length; at++) {
        ends += bytes[at] == '\n' ? 1 : 0;
      }
    }
    return stretches == 1
        ? ends + 1
        : (int) ((double) bytes.length / (stretches * length) * ends) + 1;
  }

  /** All lines without their ends; each is made of the bytes when it is asked for. */
  public List<String> lines() {
    int[] starts = starts();
    return new Lines(starts);
  }

  /** Lines by index, from 0. */
  private final class Lines extends AbstractList<String> implements RandomAccess {
    private final int[] starts;

    Lines(int[] starts) {
      this.starts = starts;
    }

    @Override
    public String get(int index) {
      Objects.checkIndex(index, size());
      return line(starts, index + 1);
    }

    @Override
    public int size() {
      return starts.length - 1;
    }
  }

  /**
   * The whole lines at the beginning, for who cannot wait until all are counted.
   *
   * @param most number of bytes at most, above 0; a line longer than that is cut
   */
  public SourceText beginning(int most) {
    if (bytes.length <= most) {
      return this;
    }
    int end = most;
    while (end > 0 && bytes[end - 1] != '\n' && bytes[end - 1] != '\r') {
      end--;
    }
    return new SourceText(file, Arrays.copyOf(bytes, end == 0 ? most : end));
  }

  /** Number of lines; text without a line end at its end counts as one more. */
  public int lineCount() {
    return starts().length - 1;
  }

  /**
   * One line without its end.
   *
   * @param line number from 1 to {@link #lineCount()}
   * @throws IllegalArgumentException if there is no such line
   */
  public String line(int line) {
    int[] starts = starts();
    if (line < 1 || line >= starts.length) {
      throw new IllegalArgumentException(
          "line must lie between 1 and " + (starts.length - 1) + ": " + line);
    }
    return line(starts, line);
  }

  private String line(int[] starts, int line) {
    int from = starts[line - 1];
    int to = starts[line];
    while (to > from && (bytes[to - 1] == '\n' || bytes[to - 1] == '\r')) {
      to--;
    }
    return text(from, to - from);
  }

  /**
   * A stretch of the text.
   *
   * @param at offset of the first byte, from 0
   * @param length number of bytes
   */
  public String text(int at, int length) {
    try {
      return StandardCharsets.UTF_8
          .newDecoder()
          .decode(ByteBuffer.wrap(bytes, at, length))
          .toString();
    } catch (CharacterCodingException notUtf8) {
      return new String(bytes, at, length, StandardCharsets.ISO_8859_1);
    }
  }

  boolean isUtf8(int at, int length) {
    try {
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes, at, length));
      return true;
    } catch (CharacterCodingException notUtf8) {
      return false;
    }
  }

  /** The span of some bytes as a place, counted in characters. */
  Place place(int line, int lineStart, int at, int length) {
    int column = text(lineStart, at - lineStart).length() + 1;
    return new Place(file, line, column, text(at, length).length());
  }

  /**
   * The same text with some stretches replaced; every other byte stays as it is.
   *
   * @param edits what is replaced, none within another
   * @throws IllegalArgumentException if a place lies in no line, or two of them overlap
   */
  public SourceText edited(List<Edit> edits) {
    TreeMap<Integer, Edit> inOrder = new TreeMap<>();
    for (Edit edit : edits) {
      if (inOrder.put(offset(edit.place()), edit) != null) {
        throw new IllegalArgumentException("two edits at one place: " + edit.place());
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length + 8 * edits.size());
    int at = 0;
    for (Map.Entry<Integer, Edit> entry : inOrder.entrySet()) {
      if (entry.getKey() < at) {
        throw new IllegalArgumentException("edits overlap: " + entry.getValue().place());
      }
      out.write(bytes, at, entry.getKey() - at);
      out.writeBytes(entry.getValue().text().getBytes(StandardCharsets.US_ASCII));
      // Words hold ASCII only, so that their bytes are as many as their characters.
      at = entry.getKey() + entry.getValue().place().length();
    }
    out.write(bytes, at, bytes.length - at);
    return new SourceText(file, out.toByteArray());
  }

  /** A copy of the bytes, to be written to a file. */
  public byte[] toBytes() {
    return bytes.clone();
  }

  /** Offset of the first byte of a place. */
  private int offset(Place place) {
    int[] lines = starts();
    if (place.line() < 1 || place.line() >= lines.length || place.column() < 1) {
      throw new IllegalArgumentException("no place of this text: " + place);
    }
    int start = lines[place.line() - 1];
    int end = lines[place.line()];
    for (int at = start; at <= end; at++) {
      // A comment before the place may hold characters of several bytes: none is cut in two.
      boolean whole = at == end || bytes[at] >= 0;
      if (whole && text(start, at - start).length() == place.column() - 1) {
        return at;
      }
    }
    throw new IllegalArgumentException("no place of this text: " + place);
  }

  private int[] starts() {
    if (lineStarts.length == 0) {
      lineStarts = findStarts();
    }
    return lineStarts;
  }

  /** Offsets where lines start, and the end of the text as the last one. */
  private int[] findStarts() {
    int[] starts = new int[Math.max(16, bytes.length / 16)];
    int count = 1;
    for (int i = 0; i < bytes.length; i++) {
      byte b = bytes[i];
      if (b == '\n' || (b == '\r' && (i + 1 == bytes.length || bytes[i + 1] != '\n'))) {
        if (count + 1 >= starts.length) {
          starts = Arrays.copyOf(starts, starts.length * 2);
        }
        starts[count++] = i + 1;
      }
    }
    if (starts[count - 1] != bytes.length) {
      starts[count++] = bytes.length;
    }
    return Arrays.copyOf(starts, count);
  }
}
