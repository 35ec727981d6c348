package flankfit.nc;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/**
 * Eight bytes of a text in one long, the first one lowest, and what can be asked of all of them at
 * once. Answers about bytes are their high bits.
 */
final class EightBytes {
  private static final VarHandle LONGS =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

  private static final long EACH = 0x0101010101010101L;
  private static final long HIGH = 0x8080808080808080L;
  private static final long LOW = 0x7F7F7F7F7F7F7F7FL;

  private EightBytes() {}

  /** The eight bytes from an offset on, all of which must be there. */
  static long at(byte[] bytes, int offset) {
    return (long) LONGS.get(bytes, offset);
  }

  /** Which of them are percent marks, rub-outs or control characters other than line ends. */
  static long marksAndControls(long eight) {
    // No sum carries into the next byte, since the high bits are taken out before.
    long low = eight & LOW;
    long printable = low + (0x80 - ' ') * EACH;
    long notLineEnd = differs(low, '\n') & differs(low, '\r');
    long notMark = differs(low, '%') & differs(low, 0x7F);
    return ((~printable & notLineEnd) | ~notMark) & ~eight & HIGH;
  }

  /** Which of them are line feeds. */
  static long lineFeeds(long eight) {
    return ~differs(eight & LOW, '\n') & ~eight & HIGH;
  }

  /** 1 when the first of them is a certain one, else 0. */
  static int begins(long eight, int with) {
    return (int) ((((eight & 0xFF) ^ with) - 1) >>> 63);
  }

  /** All bits of the bytes before the first one marked; not to be used when none is. */
  static long beforeFirst(long marks) {
    return ((marks & -marks) >>> 7) - 1;
  }

  /** Which of them are no digits. */
  static long notDigits(long eight) {
    // Digits become 0 to 9, and only those stay below the high bit when 118 is added.
    long digits = eight ^ ('0' * EACH);
    return (((digits & LOW) + (0x80 - 10) * EACH) | digits) & HIGH;
  }

  /**
   * The number that the first bytes write.
   *
   * @param eight digits, anything after them
   * @param count how many digits, 1 to 8
   */
  static long number(long eight, int count) {
    long digits = (eight << (Long.SIZE - (count << 3))) & 0x0F0F0F0F0F0F0F0FL;
    // Neighbours are joined: digits to pairs, pairs to fours, fours to the number.
    long pairs = ((digits * ((10 << 8) + 1)) >>> 8) & 0x00FF00FF00FF00FFL;
    long fours = ((pairs * ((100 << 16) + 1)) >>> 16) & 0x0000FFFF0000FFFFL;
    return (fours * ((10_000L << 32) + 1)) >>> 32;
  }

  private static long differs(long low, int from) {
    return (low ^ (from * EACH)) + LOW;
  }
}
