package flankfit.metal;

import flankfit.motion.Extents;

/** The stock before the first move, standing alone. Safe for many readers. */
public interface StockBody {
  /** The box that holds it, part frame (mm). */
  Extents box();

  /**
   * Signed distance (mm), below 0 in metal: the sign exact, the size never more than the true
   * distance.
   */
  double distance(double x, double y, double z);

  /**
   * The outward direction at a point of the skin.
   *
   * @param target takes the unit vector, 3 long
   */
  void normal(double x, double y, double z, double[] target);

  /**
   * Whether all of a convex body lies outside; false may mean that it is not known.
   *
   * @param corners its corners (mm), 3 numbers each
   * @param count number of corners
   */
  default boolean isOutside(double[] corners, int count) {
    return false;
  }

  /** Side of the cells that show the stock's own form where it is finest (mm). */
  double cell();

  /**
   * Side of the cells that show what of the stock's own form lies in a ball (mm).
   *
   * @param radius of the ball about the point (mm)
   */
  default double cell(double x, double y, double z, double radius) {
    return cell();
  }
}
