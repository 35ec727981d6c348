package flankfit.nc;

/**
 * Reads words that are written plainly: a capital letter but N and O, perhaps a minus, up to 15
 * digits, perhaps a point, and at once another letter or the line end. What it reads {@link
 * NumberReader} would read alike; it leaves everything else to the reader of blocks. One loop over
 * local variables: the next byte must not wait for the one before to go through memory.
 */
final class PlainWords {
  private final byte[] bytes;
  private final int lastLineEnd;

  /**
   * Reads nothing yet.
   *
   * @param limit offset after the program
   */
  PlainWords(byte[] bytes, int limit) {
    this.bytes = bytes;
    int last = Math.max(0, limit - 1);
    while (last > 0 && !Characters.endsLine(bytes[last])) {
      last--;
    }
    lastLineEnd = last;
  }

  /**
   * Adds plain words to a block.
   *
   * @param from offset of the first
   * @return offset where something else stands; never beyond the line end
   */
  int read(int from, Block block) {
    byte[] text = bytes;
    int start = from;
    // Before the last line end no word needs a look at where the text ends.
    while (start < lastLineEnd && isPlainLetter(text[start])) {
      int at = start + 1;
      boolean negative = text[at] == '-';
      int first = negative ? at + 1 : at;
      at = first;
      long mantissa = 0;
      while (Characters.isDigit(text[at])) {
        mantissa = mantissa * 10 + (text[at++] - '0');
      }
      int count = at - first;
      int decimals = -1;
      if (text[at] == '.') {
        int point = at++;
        while (Characters.isDigit(text[at])) {
          mantissa = mantissa * 10 + (text[at++] - '0');
        }
        decimals = at - point - 1;
        count += decimals;
      }
      if (count == 0 || count > NumberReader.MOST_DIGITS || !endsPlainly(text[at])) {
        return start;
      }
      double size = NumberReader.rounded(mantissa, Math.max(0, decimals));
      block.add(text[start], negative ? -size : size, start, at - start, count, decimals);
      start = at;
    }
    return start;
  }

  private static boolean isPlainLetter(int c) {
    return c >= 'A' && c <= 'Z' && c != 'N' && c != 'O';
  }

  private static boolean endsPlainly(int c) {
    return (c >= 'A' && c <= 'Z' && c != 'O') || Characters.endsLine(c);
  }
}
