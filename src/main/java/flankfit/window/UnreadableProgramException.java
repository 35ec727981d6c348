package flankfit.window;

/** A program or its sheet cannot be read; the message says why, as one clause. */
public final class UnreadableProgramException extends Exception {
  private static final long serialVersionUID = 1L;

  /** Makes the exception. */
  public UnreadableProgramException(String message) {
    super(message);
  }
}
