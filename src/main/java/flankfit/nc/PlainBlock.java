package flankfit.nc;

/**
 * A block of one line that holds nothing but a sequence number, G0 or G1, coordinates and F, each
 * once and written plainly: capitals, coordinates with a point unless they are zero, no sign but a
 * minus. Used again for each block.
 */
public final class PlainBlock {
  int start;
  int end;
  int line;
  int next;
  int sequence;
  int motion;
  int letters;
  int fine;
  int coarse;
  double x;
  double y;
  double z;
  double feed;

  /** Line of the text, from 1. */
  public int line() {
    return line;
  }

  /** 0 or 1 for G0 or G1; -1 for neither. */
  public int motion() {
    return (letters & PlainBlocks.FUNCTION) != 0 ? motion : -1;
  }

  /** Whether there is nothing but coordinates, and perhaps a sequence number. */
  public boolean isCoordinates() {
    return (letters & (PlainBlocks.FEED | PlainBlocks.FUNCTION)) == 0;
  }

  /** Whether there is an F. */
  public boolean hasFeed() {
    return (letters & PlainBlocks.FEED) != 0;
  }

  /** Number of F as written; not to be used without one. */
  public double feed() {
    return feed;
  }

  /** Whether there is any X, Y or Z. */
  public boolean hasAxis() {
    return (letters & PlainBlocks.AXES) != 0;
  }

  /** Whether there is a word of axis 0 X, 1 Y, 2 Z. */
  public boolean has(int axis) {
    return (letters & (1 << axis)) != 0;
  }

  /** Number of X as written; not to be used without one. */
  public double x() {
    return x;
  }

  /** Number of Y as written; not to be used without one. */
  public double y() {
    return y;
  }

  /** Number of Z as written; not to be used without one. */
  public double z() {
    return z;
  }

  /** Number of axis 0 X, 1 Y, 2 Z as written; not to be used without one. */
  public double number(int axis) {
    return axis == 0 ? x : axis == 1 ? y : z;
  }

  /**
   * Says from when on a number is fine; so it stays for all blocks to come.
   *
   * @param decimals that a number may have and not be fine; a last 0 does not count
   */
  public void coarse(int decimals) {
    coarse = decimals;
  }

  /** Whether the number of any axis is fine. */
  public boolean isFine() {
    return fine != 0;
  }

  /** Whether the number of axis 0 to 2 is fine. */
  public boolean isFine(int axis) {
    return (fine & (1 << axis)) != 0;
  }
}
