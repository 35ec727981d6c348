package flankfit.sweep;

import flankfit.unit.Angles;
import flankfit.unit.Require;

/**
 * One cylinder about the thread's axis as a cutter on a helix meets it. A point of the cylinder
 * lies at distance d from the cutter's axis when the cutter stands at polar angle φ from it; d
 * grows with φ from |ρ - e| to ρ + e, inside a hole (e &lt; ρ) and outside a boss (e &gt; ρ) alike.
 *
 * @param radius radius ρ of the cylinder (mm), above 0
 * @param pathRadius radius e of the path of the cutter's axis (mm), above 0
 * @param lead travel along the axis in one turn, without sign (mm), not below 0
 */
record Station(double radius, double pathRadius, double lead) {
  Station {
    Require.positive("radius", radius);
    Require.positive("pathRadius", pathRadius);
    Require.notNegative("lead", lead);
  }

  /** Travel along the axis for one radian (mm). */
  double rise() {
    return lead / Angles.TURN;
  }

  /** The distance at φ = 0 (mm), the least there is. */
  double nearest() {
    return Math.abs(radius - pathRadius);
  }

  /**
   * The least distance, clipped to the outside radius: on the groove's very bottom rounding may put
   * it a last digit beyond (mm).
   */
  double nearest(double outsideRadius) {
    return Math.min(nearest(), outsideRadius);
  }

  /** The distance at half a turn (mm), the greatest there is. */
  double farthest() {
    return radius + pathRadius;
  }

  /**
   * How far the helix has risen where the cutter's axis stands at a distance (mm).
   *
   * @param distance from the cutter's axis to the point (mm); clipped to what the circle allows
   */
  double risen(double distance) {
    // 2 asin of the half chord keeps its digits near φ = 0, where acos loses half of them.
    double square = distance * distance - nearest() * nearest();
    double half = Math.sqrt(Math.max(0, square) / (4 * radius * pathRadius));
    return rise() * 2 * Math.asin(Math.min(1, half));
  }

  /**
   * The distance at which the helix rises just as fast as a straight tooth flank falls away:
   * contact on a flank of this slope. NaN where there is none.
   *
   * @param base rise for one radian divided by the tangent of the flank's half angle (mm): the base
   *     radius of the involute helicoid that such a flank leaves
   */
  double contact(double base) {
    if (base > radius || base > pathRadius) {
      return Double.NaN;
    }
    double outer = Math.max(radius, pathRadius);
    double inner = Math.min(radius, pathRadius);
    return Math.sqrt((outer - base) * (outer + base)) - Math.sqrt((inner - base) * (inner + base));
  }
}
