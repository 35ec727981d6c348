package flankfit.sweep;

import flankfit.unit.Angles;
import flankfit.unit.Require;

/**
 * The flank that a straight V leaves on an endless helix, in closed form: an involute helicoid
 * whose shape does not depend on the mill's diameter, only on lead and angle.
 *
 * @param baseRadius r_b = p cot α (mm), p the lead over 2π
 * @param pathRadius e (mm), above the base radius
 * @param halfAngle α (rad)
 * @see "derived; direct maximisation over the path agrees to 1e-9 mm. That the surface is an
 *     involute helicoid: a straight generator tangent to the base cylinder, inclined by α"
 */
public record InvoluteFlank(double baseRadius, double pathRadius, double halfAngle) {
  public InvoluteFlank {
    Require.notNegative("baseRadius", baseRadius);
    Require.positive("pathRadius less base radius", pathRadius - baseRadius);
    Require.within("halfAngle", halfAngle, 1e-3, Math.PI / 2 - 1e-3);
  }

  /**
   * The flank of a helix.
   *
   * @param lead travel along the axis in one turn (mm)
   * @param pathRadius radius of the path of the cutter's axis (mm)
   * @param halfAngle half angle of the cutter (rad)
   */
  public static InvoluteFlank of(double lead, double pathRadius, double halfAngle) {
    return new InvoluteFlank(baseRadius(lead, halfAngle), pathRadius, halfAngle);
  }

  /** Base radius p cot α of a helix (mm). */
  public static double baseRadius(double lead, double halfAngle) {
    return lead / Angles.TURN / Math.tan(halfAngle);
  }

  /** w(x) = sqrt(x² - r_b²) - r_b arccos(r_b / x) (mm), for x not below the base radius. */
  public double w(double x) {
    return Math.sqrt((x - baseRadius) * (x + baseRadius)) - baseRadius * Math.acos(baseRadius / x);
  }

  /** Over-cut on the radius against the true V, inside a hole (mm). */
  public double overcut(double radius) {
    return radius - w(radius) - (pathRadius - w(pathRadius));
  }

  /**
   * Axial half width of the groove inside a hole (mm).
   *
   * @param radius radius on the thread (mm)
   * @param outsideRadius radius over the teeth (mm)
   * @param halfCrest half the width of the crest (mm)
   */
  public double halfWidthInside(double radius, double outsideRadius, double halfCrest) {
    return halfCrest + Math.tan(halfAngle) * (outsideRadius + w(pathRadius) - w(radius));
  }

  /** Axial half width of the groove on a boss (mm); parameters as inside a hole. */
  public double halfWidthOutside(double radius, double outsideRadius, double halfCrest) {
    return halfCrest + Math.tan(halfAngle) * (outsideRadius - w(pathRadius) + w(radius));
  }

  /** Angle at the cutter's axis between the line of centres and the contact (rad). */
  public double contactAngle() {
    return Math.asin(baseRadius / pathRadius);
  }

  /** Angle at the thread's axis by which contact lags the line of centres (rad). */
  public double lag(double radius) {
    return Math.acos(baseRadius / radius) - Math.acos(baseRadius / pathRadius);
  }

  /** Half angle of the milled flank at a radius (rad): a little below the cutter's. */
  public double localHalfAngle(double radius) {
    double ratio = baseRadius / radius;
    return Math.atan(Math.tan(halfAngle) * Math.sqrt(1 - ratio * ratio));
  }

  /** Change of a thread diameter with the diameter of the path (1), at a radius inside a hole. */
  public double pathSensitivity(double radius) {
    return cosine(pathRadius) / cosine(radius);
  }

  /** Change of a thread diameter with the diameter of the mill at a fixed path (1). */
  public double millSensitivity(double radius) {
    return 1 / cosine(radius);
  }

  private double cosine(double x) {
    double ratio = baseRadius / x;
    return Math.sqrt(1 - ratio * ratio);
  }
}
