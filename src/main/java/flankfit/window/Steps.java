package flankfit.window;

import flankfit.motion.Tape;
import java.util.Arrays;
import java.util.OptionalInt;

/** Where the moves of a tape lie in blocks, lines and time. */
final class Steps {
  private final Tape tape;
  private final double[] until;

  Steps(Tape tape) {
    this.tape = tape;
    until = new double[tape.size()];
    double time = 0;
    for (int move = 0; move < tape.size(); move++) {
      double seconds = tape.seconds(move);
      time += Double.isFinite(seconds) ? seconds : 0;
      until[move] = time;
    }
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

  /** How long all moves take (s). */
  double seconds() {
    return until.length == 0 ? 0 : until[until.length - 1];
  }

  /** When a move ends (s). */
  double until(int move) {
    return until[move];
  }

  /** The move that runs at a time (s). */
  int at(double seconds) {
    int found = Arrays.binarySearch(until, seconds);
    int move = found >= 0 ? found : -found - 1;
    return Math.max(0, Math.min(tape.size() - 1, move));
  }
}
