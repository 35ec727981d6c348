package flankfit.check;

/**
 * One rule on a finished tape. It is shown every move once, in order, and reports what it finds.
 */
interface Rule {
  /**
   * Looks at the next move.
   *
   * @param move index of the move on the tape
   */
  void look(int move);

  /** All moves have been shown. */
  default void end() {}
}
