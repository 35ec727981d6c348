package flankfit.window;

import java.util.Locale;

/** Times of frames in classes of a tenth of a millisecond, so that counting takes no memory. */
final class FrameTimes {
  private static final int CLASSES = 20_000;
  private static final double PER_MILLISECOND = 10;

  private final long[] counts = new long[CLASSES];
  private long all;
  private long longest;

  /** Counts one (ns). */
  void add(long nanoseconds) {
    int at = (int) Math.min(CLASSES - 1, Math.round(nanoseconds * 1e-6 * PER_MILLISECOND));
    counts[at]++;
    all++;
    longest = Math.max(longest, nanoseconds);
  }

  /** The time that a share of them does not exceed (ms). */
  double within(double share) {
    long wanted = (long) Math.ceil(share * all);
    long sum = 0;
    for (int i = 0; i < CLASSES; i++) {
      sum += counts[i];
      if (sum >= wanted) {
        return i / PER_MILLISECOND;
      }
    }
    return longest * 1e-6;
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%d frames, median %.1f ms, 99 of 100 within %.1f ms, longest %.1f ms",
        all,
        within(0.5),
        within(0.99),
        longest * 1e-6);
  }
}
