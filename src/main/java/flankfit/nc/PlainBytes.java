package flankfit.nc;

/**
 * Runs over bytes eight at a time to where something stands that a look over a file must see.
 * Reading a program costs about as much as looking at each of its bytes twice, so this look must
 * not be a second reading.
 */
final class PlainBytes {
  private final byte[] bytes;
  private final int to;
  private int lineFeeds;

  /**
   * Stands before the first byte.
   *
   * @param to offset after the last byte looked at
   */
  PlainBytes(byte[] bytes, int to) {
    this.bytes = bytes;
    this.to = to;
  }

  /**
   * Offset of the first byte that is a percent mark, rub-out or control character other than a line
   * end.
   *
   * @param from offset where to begin
   * @return the end of what is looked at when there is no such byte
   */
  int firstOther(int from) {
    return firstOther(from, to);
  }

  /** The same before another end. */
  int firstOther(int from, int to) {
    int at = from;
    int feeds = 0;
    while (at + Long.BYTES <= to) {
      long eight = EightBytes.at(bytes, at);
      if (EightBytes.marksAndControls(eight) != 0) {
        break;
      }
      feeds += Long.bitCount(EightBytes.lineFeeds(eight));
      at += Long.BYTES;
    }
    while (at < to && !isOther(bytes[at])) {
      feeds += bytes[at] == '\n' ? 1 : 0;
      at++;
    }
    lineFeeds += feeds;
    return at;
  }

  /** Line feeds passed so far. */
  int lineFeeds() {
    return lineFeeds;
  }

  private static boolean isOther(byte b) {
    return b == '%' || b == 0x7F || (b >= 0 && b < ' ' && !Characters.endsLine(b));
  }
}
