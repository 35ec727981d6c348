package flankfit.control;

/**
 * One loop of a program with the passes it has made at each call level.
 *
 * @param number its number, 1 to 3
 * @param begin where its WHILE or DO stands
 * @param endOffset offset of its END
 * @param after where the block after its END begins
 * @param passes passes since it was last entered, by call level
 * @param before values of the variables of its condition one pass ago
 */
record Loop(int number, Spot begin, int endOffset, Spot after, Counter passes, Snapshot before) {
  Loop(int number, Spot begin, int endOffset, Spot after) {
    this(number, begin, endOffset, after, new Counter(), new Snapshot());
  }

  /** Whether a block stands in the loop, so that only its WHILE or DO may lead there. */
  boolean holds(int offset) {
    return offset > begin.offset() && offset <= endOffset;
  }

  /** One count for each call level. */
  static final class Counter {
    private final int[] counts = new int[Calls.DEEPEST + 1];

    /** Counts one more, or begins again at 1. */
    int count(int level, boolean again) {
      counts[level] = again ? counts[level] + 1 : 1;
      return counts[level];
    }

    /** Passes so far. */
    int of(int level) {
      return counts[level];
    }

    void clear(int level) {
      counts[level] = 0;
    }
  }
}
