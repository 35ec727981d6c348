package flankfit.picture;

/**
 * Writes polylines into a store with fewer points where many lie close together. What is left out
 * lies no farther than the tolerance from the chord drawn in its place: points are left out while
 * they go on within half the tolerance of a straight line from the last point kept, and the chord
 * ends within as much of that line.
 */
final class ThinnedLine {
  private final LineStore store;
  private final double half;
  private double x;
  private double y;
  private double z;
  private double aheadX;
  private double aheadY;
  private double aheadZ;
  private boolean directed;
  private double along;
  private boolean pending;
  private double pendingX;
  private double pendingY;
  private double pendingZ;
  private int pendingStyle;

  /**
   * Writes into a store.
   *
   * @param tolerance greatest distance of a point left out (mm); 0 keeps every point
   */
  ThinnedLine(LineStore store, double tolerance) {
    this.store = store;
    half = tolerance / 2;
  }

  /** Begins a polyline at a point (mm). */
  void moveTo(double toX, double toY, double toZ) {
    flush();
    store.moveTo(toX, toY, toZ);
    keep(toX, toY, toZ);
  }

  /** Draws on to a point (mm). */
  void lineTo(double toX, double toY, double toZ, int style) {
    if (half == 0) {
      store.lineTo(toX, toY, toZ, 0, style);
      return;
    }
    if (pending && style != pendingStyle) {
      flush();
    }
    if (!goesOn(toX, toY, toZ)) {
      flush();
      goesOn(toX, toY, toZ);
    }
    pending = true;
    pendingX = toX;
    pendingY = toY;
    pendingZ = toZ;
    pendingStyle = style;
  }

  /** Draws to a point that is kept, with the length from the move's start (mm). */
  void dashTo(double toX, double toY, double toZ, double length, int style) {
    flush();
    store.lineTo(toX, toY, toZ, length, style);
    keep(toX, toY, toZ);
  }

  /** Begins a new length at the present point. */
  void restart() {
    flush();
    store.restart();
  }

  /** Draws to the point last given. */
  void flush() {
    if (pending) {
      store.lineTo(pendingX, pendingY, pendingZ, 0, pendingStyle);
      keep(pendingX, pendingY, pendingZ);
    }
  }

  /** Whether the point last given lies within the chord that starts at the store's last texel. */
  boolean isWithinChord() {
    return pending;
  }

  private void keep(double toX, double toY, double toZ) {
    x = toX;
    y = toY;
    z = toZ;
    pending = false;
    directed = false;
    along = 0;
  }

  /** Whether a point goes on with the chord from the point kept last; the first one always does. */
  private boolean goesOn(double toX, double toY, double toZ) {
    double dx = toX - x;
    double dy = toY - y;
    double dz = toZ - z;
    double square = dx * dx + dy * dy + dz * dz;
    if (!directed) {
      if (square > half * half) {
        double length = Math.sqrt(square);
        aheadX = dx / length;
        aheadY = dy / length;
        aheadZ = dz / length;
        along = length;
        directed = true;
      }
      return true;
    }
    double t = dx * aheadX + dy * aheadY + dz * aheadZ;
    if (t < along || square - t * t > half * half) {
      return false;
    }
    along = t;
    return true;
  }
}
