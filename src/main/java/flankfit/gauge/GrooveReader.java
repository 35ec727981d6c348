package flankfit.gauge;

import java.util.Arrays;

/** Reads one groove in one direction; its fields hold what was read last. */
final class GrooveReader {
  /** Share of the pitch that a groove must be open beside the helix to be the groove meant (1). */
  private static final double LEAST_COVER = 0.01;

  /** The same for a ridge, in turn until its metal shows: walls are good to a nanometre (mm). */
  private static final double[] BESIDE_RIDGE = {DepthMarks.BEYOND, 1e-6, 3e-6};

  double bottom;
  double ridgeUp;
  double ridgeDown;
  double upAtRidge;
  double downAtRidge;
  double upAtBottom;
  double downAtBottom;
  final double[] up;
  final double[] down;

  private final Winding winding;
  private final double[] ladder;
  private final int pitchStep;

  GrooveReader(Winding winding, double[] ladder, int pitchStep) {
    this.winding = winding;
    this.ladder = ladder;
    this.pitchStep = pitchStep;
    this.up = new double[ladder.length];
    this.down = new double[ladder.length];
  }

  int depths() {
    return ladder.length;
  }

  void read(WallSection section, double height) {
    double quarter = winding.pitch() / 4;
    Arrays.fill(up, Double.NaN);
    Arrays.fill(down, Double.NaN);
    WallLine line = section.atStep(pitchStep);
    int i = line.nearest(height, height - quarter, height + quarter, LEAST_COVER * winding.pitch());
    double inside = i >= 0 ? within(section, height, line, i) : nearBy(section, height);
    for (int step = 0; step < ladder.length && Double.isNaN(up[step]); step++) {
      if (ladder[step] < bottom && (i < 0 || step < pitchStep)) {
        store(step, section.atStep(step), inside, height);
      }
    }
    atBottom(section, inside, height);
    readRidge(section, inside, height, true);
    readRidge(section, inside, height, false);
  }

  /**
   * Follows a groove that reaches the pitch line into the metal, sets its bottom, and returns a
   * height within it.
   */
  private double within(WallSection section, double height, WallLine line, int stretch) {
    double quarter = winding.pitch() / 4;
    double low = Math.max(line.low(stretch), height - quarter);
    double high = Math.min(line.high(stretch), height + quarter);
    WallLine at = line;
    int i = stretch;
    for (int step = pitchStep; step < ladder.length; step++) {
      if (step > pitchStep) {
        at = section.atStep(step);
        i = at.nearest(height, low, high, 0);
      }
      // A line that misses the groove's bottom is open before the face only: no flank of it.
      boolean missed =
          i >= 0
              && section.isOutside(at.low(i), at.high(i))
              && !section.isOutside(line.low(stretch), line.high(stretch));
      if (i < 0 || missed) {
        break;
      }
      up[step] = at.high(i) - height;
      down[step] = height - at.low(i);
      low = Math.max(low, at.low(i));
      high = Math.min(high, at.high(i));
    }
    if (section.isBeyond(height)) {
      bottom = Double.POSITIVE_INFINITY;
      return height;
    }
    bottom = section.deepest(low, high);
    return Math.min(Math.max(height, low), high);
  }

  /** Looks for the deepest place beside the helix where no groove reaches the pitch line. */
  private double nearBy(WallSection section, double height) {
    double low = section.within(height - winding.pitch() / 4);
    double high = section.within(height + winding.pitch() / 4);
    // The face itself does not make a groove of the metal beside it.
    bottom = low < high ? section.deepest(low, high) : Double.NEGATIVE_INFINITY;
    return Double.isFinite(bottom)
        ? section.at(bottom - DepthMarks.SHORT).openNear(height, low, high)
        : height;
  }

  private void store(int step, WallLine line, double inside, double height) {
    int i = line.holding(inside);
    if (i >= 0) {
      up[step] = line.high(i) - height;
      down[step] = height - line.low(i);
    }
  }

  private void atBottom(WallSection section, double inside, double height) {
    upAtBottom = Double.NaN;
    downAtBottom = Double.NaN;
    if (Double.isFinite(bottom)) {
      WallLine line = section.at(bottom - DepthMarks.SHORT);
      int i = line.nearest(inside, inside - winding.pitch() / 4, inside + winding.pitch() / 4, 0);
      if (i >= 0) {
        upAtBottom = line.high(i) - height;
        downAtBottom = height - line.low(i);
      }
    }
  }

  /** Depth of the crest of the ridge beside a groove; infinite when no metal stands there. */
  private double ridge(WallSection section, double inside, boolean above) {
    for (int step = 0; step < ladder.length; step++) {
      WallLine line = section.atStep(step);
      int i = line.holding(inside);
      if (i < 0) {
        return Double.POSITIVE_INFINITY;
      }
      double flank = above ? line.high(i) : line.low(i);
      if (Double.isFinite(flank) && Math.abs(flank - inside) < winding.pitch()) {
        double end = above ? flank + winding.pitch() / 2 : flank - winding.pitch() / 2;
        int next = above ? i + 1 : i - 1;
        boolean hasNext = next >= 0 && next < line.count();
        double other = hasNext ? (above ? line.low(next) : line.high(next)) : end;
        double far = above ? Math.min(other, end) : Math.max(other, end);
        return section.shallowest(Math.min(flank, far), Math.max(flank, far));
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /** Where the crest of a ridge shows first, and the flank there. */
  private void readRidge(WallSection section, double inside, double height, boolean above) {
    double ridge = ridge(section, inside, above);
    double at = ridge;
    double flank = Double.isInfinite(ridge) ? ridge : Double.NaN;
    for (int k = 0; k < BESIDE_RIDGE.length && Double.isNaN(flank); k++) {
      at = ridge + BESIDE_RIDGE[k];
      WallLine line = section.at(at);
      int i = line.holding(inside);
      double found = i < 0 ? Double.NaN : above ? line.high(i) - height : height - line.low(i);
      flank = found < winding.pitch() ? found : Double.NaN;
    }
    if (above) {
      ridgeUp = at;
      upAtRidge = flank;
    } else {
      ridgeDown = at;
      downAtRidge = flank;
    }
  }
}
