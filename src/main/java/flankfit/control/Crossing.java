package flankfit.control;

import flankfit.unit.Tolerance;

/**
 * Where two offset elements cross within both, at the place that cuts the least length off them.
 * One object serves all corners in turn.
 */
final class Crossing {
  private static final double NEAR = Tolerance.MODEL.value();

  /** Circles that miss each other by less touch: rounding of their centres (mm). */
  private static final double TOUCH = 1e-9;

  private PlaneElement a;
  private PlaneElement b;
  private double least;
  private double u;
  private double v;
  private double stationA;
  private double stationB;

  /** Looks for the crossing; whether there is one. */
  boolean find(PlaneElement before, PlaneElement after) {
    a = before;
    b = after;
    least = Double.POSITIVE_INFINITY;
    if (a.isPoint()) {
      considerPoint(a, b);
    } else if (b.isPoint()) {
      considerPoint(b, a);
    } else if (a.isSpiral() || b.isSpiral()) {
      SpiralCrossings.search(a, b, this);
    } else if (a.isArc()) {
      if (b.isArc()) {
        circles();
      } else {
        lineAndCircle(b, a);
      }
    } else if (b.isArc()) {
      lineAndCircle(a, b);
    } else {
      lines();
    }
    if (least == Double.POSITIVE_INFINITY) {
      endOnTheOther();
    }
    return least < Double.POSITIVE_INFINITY;
  }

  /**
   * Walls that are all but tangent may miss each other by less than the model knows: found with
   * arcs whose ends are rounded to a thousandth. An end within it of the other wall is on it.
   */
  private void endOnTheOther() {
    if (Math.abs(b.side(a.offsetEndU, a.offsetEndV)) <= NEAR) {
      consider(a.offsetEndU, a.offsetEndV);
    }
    if (Math.abs(a.side(b.offsetStartU, b.offsetStartV)) <= NEAR) {
      consider(b.offsetStartU, b.offsetStartV);
    }
  }

  private void considerPoint(PlaneElement point, PlaneElement other) {
    double pu = point.offsetEndU;
    double pv = point.offsetEndV;
    double distance =
        other.isPoint()
            ? Math.hypot(pu - other.offsetEndU, pv - other.offsetEndV)
            : Math.abs(other.side(pu, pv));
    if (distance <= NEAR) {
      consider(pu, pv);
    }
  }

  private void lines() {
    double share = a.sigma / (1 + a.tangent1U * b.tangent0U + a.tangent1V * b.tangent0V);
    consider(
        b.startU - share * (a.tangent1V + b.tangent0V),
        b.startV + share * (a.tangent1U + b.tangent0U));
  }

  private void lineAndCircle(PlaneElement line, PlaneElement circle) {
    double cu = circle.move.centreU();
    double cv = circle.move.centreV();
    double d = line.side(cu, cv);
    double half = halfChord(circle.radius0, Math.abs(d));
    if (half >= 0) {
      double footU = cu + d * line.tangent0V;
      double footV = cv - d * line.tangent0U;
      consider(footU - half * line.tangent0U, footV - half * line.tangent0V);
      consider(footU + half * line.tangent0U, footV + half * line.tangent0V);
    }
  }

  private void circles() {
    double du = b.move.centreU() - a.move.centreU();
    double dv = b.move.centreV() - a.move.centreV();
    double d = Math.hypot(du, dv);
    if (d <= TOUCH) {
      return;
    }
    double along = (d + (a.radius0 - b.radius0) * (a.radius0 + b.radius0) / d) / 2;
    double half = halfChord(a.radius0, Math.abs(along));
    if (half >= 0) {
      double footU = a.move.centreU() + along * du / d;
      double footV = a.move.centreV() + along * dv / d;
      consider(footU - half * dv / d, footV + half * du / d);
      consider(footU + half * dv / d, footV - half * du / d);
    }
  }

  /** Half the chord of a circle at a distance from its centre (mm); below 0 if it misses. */
  private static double halfChord(double radius, double distance) {
    double gap = radius - distance;
    if (gap < 0) {
      return gap >= -TOUCH ? 0 : -1;
    }
    return Math.sqrt(gap * (radius + distance));
  }

  /** Weighs a point on both whole curves. */
  void consider(double pu, double pv) {
    double onA = a.isPoint() ? a.extent : a.lastStation(pu, pv);
    double onB = b.isPoint() ? 0 : b.firstStation(pu, pv);
    if (Double.isNaN(onA) || Double.isNaN(onB)) {
      return;
    }
    double cut = a.length(a.extent - onA) + b.length(onB);
    if (cut < least) {
      least = cut;
      u = pu;
      v = pv;
      stationA = onA;
      stationB = onB;
    }
  }

  double u() {
    return u;
  }

  double v() {
    return v;
  }

  /** Where the element before ends now. */
  double stationBefore() {
    return stationA;
  }

  /** Where the element after begins now. */
  double stationAfter() {
    return stationB;
  }
}
