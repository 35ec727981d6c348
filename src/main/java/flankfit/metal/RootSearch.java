package flankfit.metal;

/**
 * Where one of several volumes begins on a way: the line between the measures at both ends gives a
 * place, a measure there ends the search or a shorter way begins it anew.
 */
abstract class RootSearch {
  private static final int MOST_STEPS = 60;

  private boolean onLine;

  /**
   * A measure of how far a place stays out of a volume (mm): not above 0 in it.
   *
   * @param volume which one
   * @param share of the way (1)
   */
  abstract double value(int volume, double share);

  /**
   * Share of a way at which a volume begins that holds the end at 1 and not that at 0.
   *
   * @param outside the measure at 0; may be infinite
   * @param inside the measure at 1
   * @param close a measure so small ends the search with one last line; below 0 where measures tell
   *     sides alone, so that the way is halved
   * @param length of the way, and
   * @param narrow of the part of it that ends the search, in one unit
   */
  final double begins(
      int volume, double outside, double inside, double close, double length, double narrow) {
    double low = 0;
    double high = 1;
    double atLow = outside;
    double atHigh = inside;
    onLine = false;
    boolean halve = false;
    for (int step = 0; step < MOST_STEPS && (high - low) * length > narrow; step++) {
      boolean line = close >= 0 && atLow < Double.POSITIVE_INFINITY && atLow - atHigh > 0;
      double width = high - low;
      double at = line && !halve ? low + width * atLow / (atLow - atHigh) : (low + high) / 2;
      double found = value(volume, at);
      if (found <= 0) {
        high = at;
        atHigh = found;
      } else {
        low = at;
        atLow = found;
      }
      if (line && Math.abs(found) <= close && atLow - atHigh > 0) {
        onLine = true;
        return low + (high - low) * atLow / (atLow - atHigh);
      }
      halve = high - low > width / 2;
    }
    return (low + high) / 2;
  }

  /** Whether the last search ended on a line between measures. */
  final boolean isOnLine() {
    return onLine;
  }
}
