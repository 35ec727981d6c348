package flankfit.control;

/**
 * Distances in the plane from the definition: of a point from a straight line's stretch and from an
 * arc. Written without any offset geometry, to judge the compensated path by.
 */
final class DistanceWitness {
  private DistanceWitness() {}

  /** Distance from a programmed element in its plane (mm). */
  static double fromElement(ProgrammedMove m, double u, double v) {
    int iu = m.state().plane().u();
    int iv = m.state().plane().v();
    if (m.isArc()) {
      return fromArc(
          m.from(iu), m.from(iv), m.to(iu), m.to(iv), m.centreU(), m.centreV(), m.sweep(), u, v);
    }
    return fromLine(m.from(iu), m.from(iv), m.to(iu), m.to(iv), u, v);
  }

  static double fromLine(double u0, double v0, double u1, double v1, double u, double v) {
    double du = u1 - u0;
    double dv = v1 - v0;
    double square = du * du + dv * dv;
    double share = square == 0 ? 0 : ((u - u0) * du + (v - v0) * dv) / square;
    double t = Math.max(0, Math.min(1, share));
    return Math.hypot(u - u0 - t * du, v - v0 - t * dv);
  }

  static double fromArc(
      double u0,
      double v0,
      double u1,
      double v1,
      double cu,
      double cv,
      double sweep,
      double u,
      double v) {
    double ends = Math.min(Math.hypot(u - u0, v - v0), Math.hypot(u - u1, v - v1));
    double turn = Math.atan2(v - cv, u - cu) - Math.atan2(v0 - cv, u0 - cu);
    double along = (sweep > 0 ? turn : -turn) % (2 * Math.PI);
    double ahead = along < 0 ? along + 2 * Math.PI : along;
    if (ahead <= Math.abs(sweep)) {
      double r = Math.hypot(u0 - cu, v0 - cv);
      return Math.min(ends, Math.abs(Math.hypot(u - cu, v - cv) - r));
    }
    return ends;
  }
}
