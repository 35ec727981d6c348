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
record Station(double radius, double pathRadius, double lead) implements Meeting {
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

  @Override
  public double risen(double distance) {
    // 2 asin of the half chord keeps its digits near φ = 0, where acos loses half of them.
    double square = distance * distance - nearest() * nearest();
    if (square <= 0) {
      return 0;
    }
    double half = Math.sqrt(square / (4 * radius * pathRadius));
    return rise() * 2 * ArcSine.of(Math.min(1, half));
  }

  @Override
  public double contact(double tangent) {
    // Rise for one radian over the slope: the base radius of the involute helicoid it leaves.
    double base = rise() / tangent;
    if (base > radius || base > pathRadius) {
      return Double.NaN;
    }
    double outer = Math.max(radius, pathRadius);
    double inner = Math.min(radius, pathRadius);
    return Math.sqrt((outer - base) * (outer + base)) - Math.sqrt((inner - base) * (inner + base));
  }
}
