package flankfit.metal;

/** Is told how far work has come, and may end it. */
public interface MetalProgress {
  /** Never ends the work. */
  MetalProgress NONE = share -> true;

  /**
   * Asked at least every 50 ms, by one thread at a time, though not always by the same.
   *
   * @param share how much of the step under way is done, 0 to 1 (1)
   * @return false to end the work, which then throws a {@link
   *     java.util.concurrent.CancellationException}
   */
  boolean goOn(double share);
}
