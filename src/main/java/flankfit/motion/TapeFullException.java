package flankfit.motion;

/** There is no room on a tape for another move. What is on it stays good. */
public final class TapeFullException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  TapeFullException(int mostMoves) {
    super("the tape has no room for more than " + mostMoves + " moves", null, false, false);
  }
}
