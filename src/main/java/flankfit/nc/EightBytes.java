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

  private static long differs(long low, int from) {
    return (low ^ (from * EACH)) + LOW;
  }
}
