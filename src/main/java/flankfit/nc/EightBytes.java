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

  /** Which of them are no digits. */
  static long notDigits(long eight) {
    long off = eight ^ ('0' * EACH);
    return (((off & LOW) + (0x80 - 10) * EACH) | off) & HIGH;
  }

  private static long differs(long low, int from) {
    return (low ^ (from * EACH)) + LOW;
  }

  /** How many bytes stand before the first one of an answer; 8 when it has none. */
  static int before(long answer) {
    return Long.numberOfTrailingZeros(answer) / Byte.SIZE;
  }

  /** Takes one byte out; those after it move up. */
  static long without(long eight, int index) {
    long kept = (1L << (index * Byte.SIZE)) - 1;
    return (eight & kept) | ((eight >>> Byte.SIZE) & ~kept);
  }

  /**
   * The number that the first so many bytes spell, each of them a digit.
   *
   * @param count 0 to 8
   */
  static long number(long eight, int count) {
    // Zeros before the number fill it up to eight digits, which are added by twos, fours, eight.
    // Two shifts, for one by all 64 bits would be none.
    int missing = (Long.BYTES - count) * Byte.SIZE / 2;
    long digits = ((eight & 0x0F * EACH) << missing) << missing;
    long twos = (digits * 10 + (digits >>> 8)) & 0x00FF00FF00FF00FFL;
    long fours = (twos * 100 + (twos >>> 16)) & 0x0000FFFF0000FFFFL;
    return (fours * 10000 + (fours >>> 32)) & 0xFFFFFFFFL;
  }
}
