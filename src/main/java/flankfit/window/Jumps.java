package flankfit.window;

import java.util.Arrays;
import java.util.OptionalInt;

/** Places to jump to, as moves in rising order. */
final class Jumps {
  private final int[] moves;

  /** Takes moves in any order; those below 0 are no places. */
  Jumps(int[] moves) {
    this.moves = Arrays.stream(moves).filter(m -> m >= 0).sorted().distinct().toArray();
  }

  /** The first place after a move. */
  OptionalInt after(int move) {
    for (int m : moves) {
      if (m > move) {
        return OptionalInt.of(m);
      }
    }
    return OptionalInt.empty();
  }

  /** The last place before a move. */
  OptionalInt before(int move) {
    for (int i = moves.length - 1; i >= 0; i--) {
      if (moves[i] < move) {
        return OptionalInt.of(moves[i]);
      }
    }
    return OptionalInt.empty();
  }

  /** How many places there are. */
  int count() {
    return moves.length;
  }
}
