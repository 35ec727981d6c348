package flankfit.metal;

/** The answer to a question for a nearest place in a tool's half plane; used again by loops. */
final class Near {
  /** Nearer than this a direction is not read off two points (mm). */
  private static final double ON = 1e-7;

  /** Signed distance (mm), below 0 inside. */
  double distance;

  /** Outwards along the radius (1). */
  double alongRadius;

  /** Outwards along the axis (1). */
  double alongAxis;

  /** Whether the direction is that of the outline's element, outwards whichever side one is on. */
  private boolean onElement;

  void set(double d, double radial, double axial) {
    distance = d;
    alongRadius = radial;
    alongAxis = axial;
  }

  /** Begins a search for the nearest of several places. */
  void begin() {
    set(Double.POSITIVE_INFINITY, 0, 1);
    onElement = false;
  }

  /** Takes a point of the outline if it is nearer than what is held. */
  void outline(
      double r, double h, double outlineR, double outlineH, double normalR, double normalH) {
    double dr = r - outlineR;
    double dh = h - outlineH;
    double d = Math.sqrt(dr * dr + dh * dh);
    if (d < distance) {
      distance = d;
      onElement = d < ON;
      alongRadius = onElement ? normalR : dr / d;
      alongAxis = onElement ? normalH : dh / d;
    }
  }

  /** Ends a search made from the inside. */
  void inside() {
    distance = -distance;
    if (!onElement) {
      alongRadius = -alongRadius;
      alongAxis = -alongAxis;
    }
  }
}
