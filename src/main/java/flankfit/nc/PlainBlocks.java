package flankfit.nc;

/**
 * Reads plain blocks, eight bytes of a number at once. What it reads {@link BlockReader} would read
 * alike without a finding; at anything else it gives up, and the whole block is read again there.
 */
final class PlainBlocks {
  static final int AXES = 0b111;
  static final int FEED = 1 << 3;
  static final int FUNCTION = 1 << 4;
  private static final int SEQUENCE = 1 << 5;

  /** Bytes that may be looked at from a word on: letter, sign, two times eight of the number. */
  private static final int WORD = 1 + 1 + 2 * Long.BYTES;

  private static final int[] POWERS = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000, 10_000_000};

  private final byte[] bytes;
  private final int limit;

  /**
   * Reads nothing yet.
   *
   * @param end offset after the program
   */
  PlainBlocks(byte[] bytes, int end) {
    this.bytes = bytes;
    this.limit = end - WORD;
  }

  /**
   * Reads a block.
   *
   * @param from offset where its line begins
   * @param longest characters that its line may have
   * @param block takes the block; not to be used when there is none
   * @return whether a plain block begins there
   */
  boolean read(int from, int longest, PlainBlock block) {
    byte[] text = bytes;
    int at = from;
    int letters = 0;
    int fine = 0;
    while (at < limit) {
      int letter = text[at];
      if (letter <= ' ') {
        if (letter == ' ') {
          at++;
          continue;
        }
        return Characters.endsLine(letter)
            && at - from <= longest
            && ends(from, at, letters, fine, block);
      }
      boolean negative = text[at + 1] == '-';
      at += negative ? 2 : 1;
      long eight = EightBytes.at(text, at);
      long others = EightBytes.notDigits(eight);
      int whole = Long.numberOfTrailingZeros(others) >>> 3;
      boolean pointed = text[at + whole] == '.';
      long mantissa;
      int decimals;
      if (pointed) {
        long below = EightBytes.beforeFirst(others);
        int stop = Long.numberOfTrailingZeros(others & (others - 1)) >>> 3;
        if (stop == 1) {
          return false;
        }
        mantissa = EightBytes.number((eight & below) | ((eight >>> 8) & ~below), stop - 1);
        at += stop;
        decimals = stop - whole - 1;
        if (stop == Long.BYTES) {
          long rest = EightBytes.at(text, at);
          int more = Long.numberOfTrailingZeros(EightBytes.notDigits(rest)) >>> 3;
          if (more == Long.BYTES || whole == Long.BYTES) {
            return false;
          }
          if (more > 0) {
            mantissa = mantissa * POWERS[more] + EightBytes.number(rest, more);
            at += more;
            decimals += more;
          }
        }
      } else {
        if (whole == 0 || whole == Long.BYTES) {
          return false;
        }
        mantissa = EightBytes.number(eight, whole);
        at += whole;
        decimals = -1;
      }
      int bit;
      if (letter >= 'X' && letter <= 'Z') {
        if (!pointed && mantissa != 0) {
          return false;
        }
        double value =
            pointed ? NumberReader.rounded(negative ? -mantissa : mantissa, decimals) : 0;
        int told = text[at - 1] == '0' ? decimals - 1 : decimals;
        boolean isFine = told > block.coarse;
        if (letter == 'X') {
          bit = 1;
          fine |= isFine ? 1 : 0;
          block.x = value;
        } else if (letter == 'Y') {
          bit = 2;
          fine |= isFine ? 2 : 0;
          block.y = value;
        } else {
          bit = 4;
          fine |= isFine ? 4 : 0;
          block.z = value;
        }
      } else {
        if (negative) {
          return false;
        }
        bit = other(letter, mantissa, decimals, letters, block);
      }
      if ((letters & bit) != 0 || bit == 0) {
        return false;
      }
      letters |= bit;
    }
    return false;
  }

  /** Completes a block at its line end; false when there is no word but a sequence number. */
  private boolean ends(int from, int at, int letters, int fine, PlainBlock block) {
    boolean two = bytes[at] == '\r' && bytes[at + 1] == '\n';
    block.start = from;
    block.end = at;
    block.next = at + (two ? 2 : 1);
    block.letters = letters;
    block.fine = fine;
    return (letters & ~SEQUENCE) != 0;
  }

  /** Takes F, G or N; gives its bit, or 0 when it is not plain. */
  private static int other(int letter, long mantissa, int decimals, int letters, PlainBlock block) {
    if (letter == 'F') {
      block.feed = NumberReader.rounded(mantissa, Math.max(0, decimals));
      return FEED;
    }
    if (letter == 'G' && decimals < 0 && mantissa <= 1) {
      block.motion = (int) mantissa;
      return FUNCTION;
    }
    if (letter == 'N' && decimals < 0 && letters == 0) {
      block.sequence = (int) mantissa;
      return SEQUENCE;
    }
    return 0;
  }

  static boolean isNumbered(PlainBlock block) {
    return (block.letters & SEQUENCE) != 0;
  }
}
