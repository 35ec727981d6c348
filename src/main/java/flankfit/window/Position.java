package flankfit.window;

/** Where the program stands: a move, and how much of it is done. The one position of all sheets. */
final class Position {
  private int move = -1;
  private double share = 1;
  private long changes;

  /** The move under way or done; -1 for no move. */
  int move() {
    return move;
  }

  /** How much of it is done (1). */
  double share() {
    return share;
  }

  /** Grows with every change. */
  long changes() {
    return changes;
  }

  /** Forgets where it stood. */
  void clear() {
    move = -1;
    share = 1;
  }

  /**
   * Goes there.
   *
   * @param toMove index of the move; below 0 changes nothing
   * @param done how much of it is done (1), in [0, 1]
   * @return whether it stood elsewhere
   */
  boolean go(int toMove, double done) {
    if (toMove < 0 || (toMove == move && done == share)) {
      return false;
    }
    move = toMove;
    share = done;
    changes++;
    return true;
  }

  /** Time at the position (s). */
  double seconds(Steps steps) {
    if (move < 0) {
      return 0;
    }
    double begun = steps.begun(move);
    return begun + share * (steps.until(move) - begun);
  }

  /** Goes to a time (s); gives whether it stood elsewhere. */
  boolean goToTime(Steps steps, double seconds) {
    if (move < 0) {
      return false;
    }
    double time = Math.max(0, Math.min(steps.seconds(), seconds));
    int at = steps.at(time);
    double begun = steps.begun(at);
    double takes = steps.until(at) - begun;
    return go(at, takes > 0 ? Math.max(0, Math.min(1, (time - begun) / takes)) : 1);
  }
}
