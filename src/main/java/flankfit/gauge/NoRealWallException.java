package flankfit.gauge;

/** The wall that the motion leaves cannot be had; the message says why. */
final class NoRealWallException extends Exception {
  private static final long serialVersionUID = 1;

  NoRealWallException(String message) {
    super(message);
  }

  NoRealWallException(String message, Throwable cause) {
    super(message, cause);
  }
}
