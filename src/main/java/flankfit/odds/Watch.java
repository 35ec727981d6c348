package flankfit.odds;

/** Somebody who waits for odds. */
public interface Watch {
  /** Waits to the end, come what may. */
  Watch NONE = share -> true;

  /**
   * Told now and then how far they have come.
   *
   * @param share share that is done (1)
   * @return whether to go on
   */
  boolean goesOn(double share);
}
