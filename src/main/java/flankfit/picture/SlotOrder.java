package flankfit.picture;

/**
 * The order in which the slots of a growing path are drawn when a frame has no time for all: every
 * sixteenth first, so that what is there shows the whole. Each is drawn once, and again when it has
 * got more lines.
 */
final class SlotOrder {
  static final int STRIDE = 16;
  private static final int[] FIRST = {0, 8, 4, 12, 2, 10, 6, 14, 1, 9, 5, 13, 3, 11, 7, 15};

  private final int[] next = FIRST.clone();
  private int openSlot = -1;
  private int openQuads;

  /** Begins anew. */
  void restart() {
    System.arraycopy(FIRST, 0, next, 0, STRIDE);
    openSlot = -1;
  }

  /**
   * The next slot to draw; -1 when all are drawn.
   *
   * @param slots number of slots in use
   * @param lastQuads chords of the last of them, which may get more
   */
  int next(int slots, int lastQuads) {
    if (openSlot >= 0 && openSlot < slots - 1) {
      int slot = openSlot;
      openSlot = -1;
      return slot;
    }
    for (int i = 0; i < STRIDE; i++) {
      if (next[i] < slots) {
        int slot = next[i];
        next[i] += STRIDE;
        if (slot == slots - 1) {
          openSlot = slot;
          openQuads = lastQuads;
        }
        return slot;
      }
    }
    if (openSlot >= 0 && lastQuads > openQuads) {
      openQuads = lastQuads;
      return openSlot;
    }
    return -1;
  }
}
