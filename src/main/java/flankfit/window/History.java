package flankfit.window;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.OptionalInt;

/** The places that were left by a jump, to come back to. Steps and playing leave no trace here. */
final class History {
  private static final int KEPT = 200;

  private final Deque<Integer> behind = new ArrayDeque<>();
  private final Deque<Integer> ahead = new ArrayDeque<>();

  /** A jump leaves a move. */
  void leave(int move) {
    if (move >= 0 && (behind.isEmpty() || behind.peek() != move)) {
      behind.push(move);
      ahead.clear();
      if (behind.size() > KEPT) {
        behind.removeLast();
      }
    }
  }

  /** Back to where the last jump came from. */
  OptionalInt back(int from) {
    return swap(behind, ahead, from);
  }

  /** On again to where {@link #back} came from. */
  OptionalInt forth(int from) {
    return swap(ahead, behind, from);
  }

  private static OptionalInt swap(Deque<Integer> source, Deque<Integer> target, int from) {
    if (source.isEmpty()) {
      return OptionalInt.empty();
    }
    target.push(from);
    return OptionalInt.of(source.pop());
  }

  /** Another program: nothing to come back to. */
  void clear() {
    behind.clear();
    ahead.clear();
  }
}
