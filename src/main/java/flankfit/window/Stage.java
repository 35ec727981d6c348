package flankfit.window;

/** How far the work on a program has come. */
enum Stage {
  /** No program is chosen yet. */
  NOTHING,
  READING,
  EXECUTING,
  CHECKING,
  GAUGING,
  DONE,
  /** The user stopped it. */
  STOPPED,
  /** It could not be read, or the tool failed. */
  FAILED;

  /** Whether more is to come. */
  boolean isGoing() {
    return switch (this) {
      case READING, EXECUTING, CHECKING, GAUGING -> true;
      case NOTHING, DONE, STOPPED, FAILED -> false;
    };
  }
}
