package flankfit.check;

import flankfit.motion.Extents;
import flankfit.unit.Tolerance;

/**
 * The plan of a box, less what counts as no distance: what only touches it from outside is not in
 * it.
 *
 * @param lowX low X (mm)
 * @param lowY low Y (mm)
 * @param highX high X (mm)
 * @param highY high Y (mm)
 */
record Rectangle(double lowX, double lowY, double highX, double highY) {
  static Rectangle within(Extents box) {
    double less = Tolerance.MODEL.value();
    return new Rectangle(
        box.min().x() + less, box.min().y() + less, box.max().x() - less, box.max().y() - less);
  }

  /** Least distance of a straight line from it (mm); 0 when it enters. */
  double distance(double x0, double y0, double x1, double y1) {
    if (enters(x0, y0, x1, y1)) {
      return 0;
    }
    double least = Math.min(fromPoint(x0, y0), fromPoint(x1, y1));
    least = Math.min(least, fromLine(lowX, lowY, x0, y0, x1, y1));
    least = Math.min(least, fromLine(lowX, highY, x0, y0, x1, y1));
    least = Math.min(least, fromLine(highX, lowY, x0, y0, x1, y1));
    return Math.min(least, fromLine(highX, highY, x0, y0, x1, y1));
  }

  /** Clips the line at each side in turn. */
  private boolean enters(double x0, double y0, double x1, double y1) {
    double[] share = {0, 1};
    return clip(x0, x1 - x0, lowX, highX, share) && clip(y0, y1 - y0, lowY, highY, share);
  }

  private static boolean clip(double from, double way, double low, double high, double[] share) {
    if (way == 0) {
      return from >= low && from <= high;
    }
    double a = (low - from) / way;
    double b = (high - from) / way;
    share[0] = Math.max(share[0], Math.min(a, b));
    share[1] = Math.min(share[1], Math.max(a, b));
    return share[0] <= share[1];
  }

  private double fromPoint(double x, double y) {
    double dx = Math.max(0, Math.max(lowX - x, x - highX));
    double dy = Math.max(0, Math.max(lowY - y, y - highY));
    return Math.hypot(dx, dy);
  }

  private static double fromLine(double x, double y, double x0, double y0, double x1, double y1) {
    double square = (x1 - x0) * (x1 - x0) + (y1 - y0) * (y1 - y0);
    double along = square == 0 ? 0 : ((x - x0) * (x1 - x0) + (y - y0) * (y1 - y0)) / square;
    double share = Math.max(0, Math.min(1, along));
    return Math.hypot(x0 + share * (x1 - x0) - x, y0 + share * (y1 - y0) - y);
  }
}
