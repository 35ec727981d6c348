package flankfit.gauge;

import flankfit.standard.ThreadSpec;
import flankfit.unit.Angles;

/**
 * The helix along which the grooves of a thread are counted, and which way the metal lies. Depths
 * are radii counted into the metal, so that both kinds of threads are one: the radius itself in a
 * hole, its negative on a boss.
 *
 * @param internal whether it is a hole's thread
 * @param pitch axial distance from groove to groove (mm)
 * @param lead travel along the axis in one turn (mm)
 * @param hand 1 for a right-hand thread, -1 for a left-hand one
 * @param halfAngle half the angle between the flanks (rad)
 */
record Winding(boolean internal, double pitch, double lead, int hand, double halfAngle) {
  static Winding of(ThreadSpec spec) {
    return new Winding(
        spec.internal(), spec.pitch(), spec.lead(), spec.leftHand() ? -1 : 1, spec.halfAngle());
  }

  /** Signed travel along the axis for one radian anticlockwise (mm). */
  double rise() {
    return hand * lead / Angles.TURN;
  }

  double sign() {
    return internal ? 1 : -1;
  }

  /** The depth of a radius, or the radius of a depth (mm). */
  double turned(double radius) {
    return internal ? radius : -radius;
  }

  double tan() {
    return Math.tan(halfAngle);
  }
}
