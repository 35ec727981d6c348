package flankfit.gauge;

import flankfit.sweep.Wall;

/**
 * The open stretches of one line parallel to the axis; beyond the mouth, and beyond the far end of
 * a through hole, the line is open for ever. So is a stretch that reaches the end of a blind hole:
 * that end is the floor's matter, not a flank.
 */
final class WallLine {
  /** Distance from top or bottom at which a stretch counts as reaching it (mm). */
  private static final double AT_END = 1e-9;

  /** Metal or room shorter than this is rounding (mm). */
  private static final double NONE = 1e-10;

  private final double[] ends;

  private WallLine(double[] ends) {
    this.ends = ends;
  }

  static WallLine read(Wall wall, boolean through, double theta, double radius) {
    double[] found = new double[64];
    int count = wall.open(theta, radius, found);
    while (2 * count > found.length) {
      found = new double[2 * count];
      count = wall.open(theta, radius, found);
    }
    boolean atTop = count > 0 && found[2 * count - 1] >= wall.top() - AT_END;
    boolean atBottom = count > 0 && found[0] <= wall.bottom() + AT_END;
    int below = through && !atBottom ? 1 : 0;
    double[] ends = new double[2 * (count + below + (atTop ? 0 : 1))];
    System.arraycopy(found, 0, ends, 2 * below, 2 * count);
    if (!atTop) {
      ends[ends.length - 2] = wall.top();
    }
    ends[ends.length - 1] = Double.POSITIVE_INFINITY;
    if (through || atBottom) {
      ends[0] = Double.NEGATIVE_INFINITY;
      ends[1] = below > 0 ? wall.bottom() : ends[1];
    }
    return new WallLine(ends);
  }

  int count() {
    return ends.length / 2;
  }

  double low(int i) {
    return ends[2 * i];
  }

  double high(int i) {
    return ends[2 * i + 1];
  }

  /** Index of the stretch that holds a height; -1 when there is metal. */
  int holding(double z) {
    for (int i = 0; i < count(); i++) {
      if (z >= low(i) && z <= high(i)) {
        return i;
      }
    }
    return -1;
  }

  /**
   * Index of the stretch nearest to a height among those that cover something of a range.
   *
   * @param least cover of the range below which a stretch does not count (mm)
   * @return -1 when none covers more than that
   */
  int nearest(double height, double low, double high, double least) {
    int best = -1;
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < count(); i++) {
      double cover = Math.min(high, high(i)) - Math.max(low, low(i));
      double apart = Math.max(0, Math.max(low(i) - height, height - high(i)));
      if (cover > least && apart < nearest) {
        nearest = apart;
        best = i;
      }
    }
    return best;
  }

  /** Length of a range on which the metal is gone (mm); -1 when the range is but touched. */
  double open(double low, double high) {
    double sum = 0;
    boolean any = false;
    for (int i = 0; i < count(); i++) {
      double cover = Math.min(high, high(i)) - Math.max(low, low(i));
      any |= cover > NONE;
      sum += Math.max(0, cover);
    }
    return any ? sum : -1;
  }

  /** Length of a range on which metal stands (mm); -1 when it stands nowhere. */
  double metal(double low, double high) {
    double left = high - low - Math.max(0, open(low, high));
    return left > NONE ? left : -1;
  }

  /** Height nearest to another, within a range that is open somewhere, where the metal is gone. */
  double openNear(double height, double low, double high) {
    int i = nearest(Math.min(Math.max(height, low), high), low, high, -AT_END);
    return i < 0
        ? height
        : Math.min(Math.max(height, Math.max(low, low(i))), Math.min(high, high(i)));
  }
}
