package flankfit.sweep;

/** A piece of a path about the wall's axis: straight, or an arc of one radius. */
sealed interface Leg permits ArcLeg, LineLeg {
  /** Ways shorter than this are none (mm). */
  double NONE = 1e-6;

  /** Lines beyond the outside radius by no more than this are on it (mm): rounding. */
  double ON = 1e-9;

  /** Least height of the tip (mm). */
  double zLow();

  /** Greatest height of the tip (mm). */
  double zHigh();

  /** Greatest distance of the path from the wall's axis (mm). */
  double farthest();

  /** Least distance of the path from the wall's axis (mm). */
  double nearest();

  /** A circle that holds the path: x and y from the wall's axis, radius (mm). */
  double[] disc();

  /**
   * Adds the stretches of a line parallel to the axis that are opened.
   *
   * @param x line, from the wall's axis (mm)
   * @param y line, from the wall's axis (mm)
   */
  void open(double x, double y, Swath swath, Openings out);
}
