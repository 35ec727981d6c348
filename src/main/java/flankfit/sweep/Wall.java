package flankfit.sweep;

/**
 * The wall that a thread's passes leave in a hole or on a boss, over the whole turn and length. On
 * a line parallel to the axis the metal is there or gone: the stretches where it is gone say
 * everything about the surface, undercuts included.
 *
 * <p>Cylinder coordinates about the thread's axis: angles (rad) from +X towards +Y, heights (mm) of
 * the part frame.
 */
public interface Wall {
  /** Whether it is a hole's wall: metal lies beyond it, not within. */
  boolean isInternal();

  /** Height above which no metal was ever (mm): the mouth. */
  double top();

  /** Height of the lowest place where the wall is known (mm), below {@link #top}. */
  double bottom();

  /**
   * The stretches of a line parallel to the axis on which the metal is gone, from below upwards,
   * disjoint, clipped to bottom and top.
   *
   * @param theta polar angle of the line (rad), any
   * @param radius distance of the line from the axis (mm), above 0
   * @param stretches takes lower and upper ends in turn (mm); what does not fit is left out
   * @return number of stretches there are, which may be more than fit
   */
  int open(double theta, double radius, double[] stretches);

  /**
   * The surface: inside a hole the least radius beyond which the metal is there, on a boss the
   * greatest within which it is (mm); accurate to 1e-6 mm.
   *
   * @param theta polar angle (rad), any
   * @param z height (mm), from bottom to top
   */
  double radius(double theta, double z);

  /**
   * Radii at which the surface is likely to lie (mm), such as those of the blank and those that no
   * tooth reaches beyond: hints that spare a search its steps, never more than that.
   */
  default double[] likelyRadii() {
    return new double[0];
  }
}
