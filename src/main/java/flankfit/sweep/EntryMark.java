package flankfit.sweep;

import flankfit.unit.Require;

/**
 * The mark that an entry or exit arc inside a hole leaves beyond the steady surface, to second
 * order.
 *
 * @param depth greatest depth on the radius (mm)
 * @param angle angle at the hole's axis from the contact point to the mark, against the direction
 *     of travel for an entry (rad)
 * @param tooMuchRise whether the arc rises too much rather than too little
 * @see "derived: depth = r_b² (μ - 1)² / (2 e (κ - 1)); direct maximisation differs by 1 to 10 %"
 */
public record EntryMark(double depth, double angle, boolean tooMuchRise) {
  /**
   * The mark of an arc.
   *
   * @param baseRadius base radius of the flank (mm)
   * @param lag angle by which contact lags the line of centres at the pitch line (rad)
   * @param pathRadius radius of the helix (mm), above the arc's
   * @param arcRadius radius of the arc that touches the helix from inside (mm), above 0
   * @param riseRatio rise for one radian of the arc over that of the helix (1)
   */
  public static EntryMark of(
      double baseRadius, double lag, double pathRadius, double arcRadius, double riseRatio) {
    Require.positive("arcRadius", arcRadius);
    Require.positive("pathRadius less arc radius", pathRadius - arcRadius);
    double kappa = pathRadius / arcRadius;
    double excess = riseRatio * kappa - 1;
    double depth = baseRadius * baseRadius * excess * excess / (2 * pathRadius * (kappa - 1));
    double x = baseRadius * Math.abs(excess) / (pathRadius * (kappa - 1));
    return new EntryMark(depth, excess > 0 ? x - lag : x + lag, excess > 0);
  }
}
