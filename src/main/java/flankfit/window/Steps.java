package flankfit.window;

import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.motion.TapeBuilder;
import java.util.Arrays;
import java.util.OptionalInt;

/** Where the moves of a tape lie in blocks, lines and time. */
final class Steps {
  /** Of no move. */
  static final Steps NONE = new Steps(new TapeBuilder(Point.ZERO, new double[] {1, 1, 1}).build());

  private final Tape tape;
  private final double[] until;
  private final boolean rising;

  Steps(Tape tape) {
    this(tape, new double[tape.size()], 0, true);
  }

  private Steps(Tape tape, double[] until, int known, boolean rises) {
    this.tape = tape;
    this.until = until;
    boolean inOrder = rises;
    double time = known == 0 ? 0 : until[known - 1];
    for (int move = known; move < tape.size(); move++) {
      double seconds = tape.seconds(move);
      time += Double.isFinite(seconds) ? seconds : 0;
      until[move] = time;
      inOrder &= move == 0 || tape.line(move) >= tape.line(move - 1);
    }
    rising = inOrder;
  }

  /**
   * Those of a tape that has grown since; takes time in proportion to what is new. For one thread,
   * and once for each: what is added goes into the same memory.
   */
  Steps and(Tape grown) {
    int size = tape.size();
    double[] room =
        until.length >= grown.size()
            ? until
            : Arrays.copyOf(until, (int) Math.max(grown.size(), Math.min(1L << 30, 2L * size)));
    return new Steps(grown, room, size, rising);
  }

  /**
   * Last move of the block that follows the one of a move; the move's own block if it is the last.
   */
  int next(int move) {
    int first = endOfBlock(move) + 1;
    return first < tape.size() ? endOfBlock(first) : tape.size() - 1;
  }

  /** Last move of the block before the one of a move; of its own block if it is the first. */
  int previous(int move) {
    int block = tape.block(move);
    int m = move;
    while (m > 0 && tape.block(m) == block) {
      m--;
    }
    return tape.block(m) == block ? endOfBlock(move) : m;
  }

  /** Last move of the block of a move. */
  int endOfBlock(int move) {
    int m = move;
    while (m + 1 < tape.size() && tape.block(m + 1) == tape.block(move)) {
      m++;
    }
    return m;
  }

  /** Last move of the first block made by a line, or by the nearest line below that made one. */
  OptionalInt ofLine(int line) {
    if (rising) {
      int first = firstFrom(line);
      return first == tape.size() ? OptionalInt.empty() : OptionalInt.of(endOfBlock(first));
    }
    int best = -1;
    for (int move = 0; move < tape.size(); move++) {
      int at = tape.line(move);
      if (at >= line && (best < 0 || at < tape.line(best))) {
        best = move;
        if (at == line) {
          break;
        }
      }
    }
    return best < 0 ? OptionalInt.empty() : OptionalInt.of(endOfBlock(best));
  }

  /** The first move of a line or of a later one, where lines never go back. */
  private int firstFrom(int line) {
    int low = 0;
    int high = tape.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (tape.line(middle) < line) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** How long all moves take (s). */
  double seconds() {
    return tape.size() == 0 ? 0 : until[tape.size() - 1];
  }

  /** When a move ends (s). */
  double until(int move) {
    return until[move];
  }

  /** When a move begins (s). */
  double begun(int move) {
    return move == 0 ? 0 : until[move - 1];
  }

  /** The move that runs at a time (s). */
  int at(double seconds) {
    int found = Arrays.binarySearch(until, 0, tape.size(), seconds);
    int move = found >= 0 ? found : -found - 1;
    return Math.max(0, Math.min(tape.size() - 1, move));
  }
}
