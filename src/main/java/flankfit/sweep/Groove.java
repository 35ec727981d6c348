package flankfit.sweep;

/** One groove of an endless regular thread, in a plane through the thread's axis. */
public interface Groove {
  /** Whether it is cut into a hole's wall. */
  boolean isInternal();

  /** Radius of the groove's bottom (mm): the greatest inside a hole, the least on a boss. */
  double bottom();

  /**
   * Axial distance from the groove's middle to its wall on a cylinder (mm); NaN where the groove
   * does not reach the cylinder.
   *
   * @param radius radius of the cylinder about the thread's axis (mm), above 0
   */
  double halfWidth(double radius, Flank flank);

  /** Whether both flanks are alike. */
  boolean isSymmetric();

  /** Width of the groove on a cylinder (mm); NaN where the groove does not reach it. */
  default double width(double radius) {
    double up = halfWidth(radius, Flank.UP);
    return isSymmetric() ? 2 * up : up + halfWidth(radius, Flank.DOWN);
  }

  /** Whether a cylinder lies beyond the bottom of the groove, in uncut metal. */
  default boolean isBeyondBottom(double radius) {
    return isInternal() ? radius > bottom() : radius < bottom();
  }
}
