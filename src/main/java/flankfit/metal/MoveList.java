package flankfit.metal;

import java.util.Arrays;

/** A growing list of indices of moves. */
final class MoveList {
  private int[] moves = new int[16];
  private int size;

  void clear() {
    size = 0;
  }

  void add(int move) {
    if (size == moves.length) {
      moves = Arrays.copyOf(moves, 2 * size);
    }
    moves[size++] = move;
  }

  int size() {
    return size;
  }

  int get(int i) {
    return moves[i];
  }

  int[] toArray() {
    return Arrays.copyOf(moves, size);
  }
}
