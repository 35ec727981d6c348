package flankfit.check;

/** Is told how far long work has come, on the thread that does it. */
@FunctionalInterface
public interface Watch {
  /** Nobody watches, and nobody stops it. */
  Watch NONE = share -> true;

  /**
   * Some more is done.
   *
   * @param share how much is done (1)
   * @return whether to go on
   */
  boolean goesOn(double share);
}
