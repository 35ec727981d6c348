package flankfit.window;

/**
 * The depth rule of the Gauge sheet: heights of the part against rows, one scale for all that
 * stands on it. Zoomed and shifted by hand.
 */
final class DepthFrame {
  private static final double ROOM_ABOVE = 0.42;
  private static final double ROOM_BELOW = 0.16;

  private double high = 1;
  private double perMm = 1;
  private double top;
  private double bottom = 1;
  private double zLow;
  private double zHigh = 1;
  private boolean touched;
  private String shown = "";

  /**
   * Takes the rows there are; fits a thread that was not shown before.
   *
   * @param name of the thread
   * @param low height of its lower end (mm)
   * @param mouth height of its mouth (mm)
   */
  void follow(String name, double low, double mouth, double rowTop, double rowBottom) {
    boolean same = name.equals(shown) && top == rowTop && bottom == rowBottom;
    double middle = name.equals(shown) ? height((top + bottom) / 2) : 0;
    boolean keeps = touched && name.equals(shown);
    shown = name;
    zLow = low;
    zHigh = mouth;
    top = rowTop;
    bottom = rowBottom;
    if (same) {
      return;
    }
    if (keeps) {
      high = middle + (bottom - top) / 2 / perMm;
    } else {
      fit();
    }
  }

  /** Shows the whole thread, and some room above it for a gauge. */
  void fit() {
    double length = Math.max(0.1, zHigh - zLow);
    perMm = (bottom - top) / (length * (1 + ROOM_ABOVE + ROOM_BELOW));
    high = zHigh + ROOM_ABOVE * length;
    touched = false;
  }

  /** Row of a height (window units). */
  double row(double z) {
    return top + (high - z) * perMm;
  }

  /** Height (mm) of a row. */
  double height(double row) {
    return high - (row - top) / perMm;
  }

  /** Window units a millimetre. */
  double perMm() {
    return perMm;
  }

  void pan(double rows) {
    high += rows / perMm;
    touched = true;
  }

  /** Zooms about a row. */
  void zoom(double notches, double row) {
    double z = height(row);
    double most = 4000;
    perMm = Math.max(1, Math.min(most, perMm * Math.pow(1.15, notches)));
    high = z + (row - top) / perMm;
    touched = true;
  }
}
