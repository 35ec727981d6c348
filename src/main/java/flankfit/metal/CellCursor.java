package flankfit.metal;

/** Goes through the marked cells of a leaf in their order. Used again by loops. */
final class CellCursor {
  private long[] bits = {};
  private int word;
  private long rest;
  private int at;

  /** The cell last come to, counted along the leaf's sides. */
  int i;

  int j;
  int k;

  /**
   * Begins anew.
   *
   * @param marked a bit for each cell of a leaf, as {@link CellMarks} gives; empty for none
   */
  void begin(long[] marked) {
    bits = marked;
    word = -1;
    rest = 0;
  }

  /** Goes to the next marked cell; false if there is none. */
  boolean next() {
    while (rest == 0) {
      if (++word >= bits.length) {
        return false;
      }
      rest = bits[word];
    }
    at = 64 * word + Long.numberOfTrailingZeros(rest);
    rest &= rest - 1;
    i = at % Node.CELLS;
    j = at / Node.CELLS % Node.CELLS;
    k = at / (Node.CELLS * Node.CELLS);
    return true;
  }

  /** Takes the mark off the cell last come to. */
  void drop() {
    bits[word] &= ~(1L << (at & 63));
  }
}
