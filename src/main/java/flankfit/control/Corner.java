package flankfit.control;

import flankfit.setup.ControlSwitches;
import flankfit.setup.ControlSwitches.StartUp;
import flankfit.unit.Tolerance;

/**
 * The corner between two elements that follow each other: how the first ends, how the second begins
 * and which moves are put in between. Decided first, written when the first element and the blocks
 * without plane motion after it are on the tape. One object serves all corners in turn.
 */
final class Corner {
  /** What comes of two elements. */
  enum Join {
    MADE,
    DOES_NOT_FIT,
    INSIDE_NOT_ALLOWED
  }

  private enum Shape {
    NOTHING,
    ROUND,
    POINTS
  }

  private static final double NEAR = Tolerance.MODEL.value();

  /** Directions that differ from opposite by less are opposite (rad). */
  private static final double OPPOSITE = 1e-6;

  /** A right angle may miss by rounding; both shapes of a mitre agree there (1). */
  private static final double RIGHT_ANGLE = 1e-9;

  private final ControlSwitches.Compensation switches;
  private final Crossing crossing = new Crossing();

  private double angle;
  private boolean tangent;
  private boolean opposite;
  private Shape shape = Shape.NOTHING;
  private boolean endsAtOffsetStart;
  private int points;
  private final double[] pointU = new double[2];
  private final double[] pointV = new double[2];

  Corner(ControlSwitches.Compensation switches) {
    this.switches = switches;
  }

  /** Joins two elements of the path. */
  Join join(PlaneElement a, PlaneElement b) {
    look(a, b);
    if (tangent) {
      return Join.MADE;
    }
    if (isOutside(a)) {
      outside(a, b, !a.isArc(), switches.mitre());
      return Join.MADE;
    }
    return switches.insideCornerIsError() ? Join.INSIDE_NOT_ALLOWED : trim(a, b);
  }

  /** Joins the start-up move to the first element. */
  Join joinStartUp(PlaneElement a, PlaneElement b) {
    look(a, b);
    if (!a.isArc() && switches.startUp() == StartUp.NEXT_NORMAL) {
      return meetNextNormal(a, b);
    }
    if (tangent) {
      return Join.MADE;
    }
    boolean tangentStyle = !a.isArc() && switches.startUp() == StartUp.TANGENT;
    if (isOutside(a)) {
      // The start-up line runs askew to its own normal, so it is not what is prolonged.
      outside(a, b, false, switches.mitre() && !tangentStyle);
      return Join.MADE;
    }
    return a.isArc() || tangentStyle ? Join.INSIDE_NOT_ALLOWED : meetNextNormal(a, b);
  }

  /** Goes round the last corner to the normal of the cancel line, if that is outside. */
  void joinCancel(PlaneElement a, PlaneElement cancel) {
    look(a, cancel);
    if (!tangent && isOutside(a)) {
      outside(a, cancel, false, false);
      endsAtOffsetStart = true;
    }
  }

  private Join meetNextNormal(PlaneElement a, PlaneElement b) {
    a.endAt(b.offsetStartU, b.offsetStartV);
    opposite = false;
    return Join.MADE;
  }

  private void look(PlaneElement a, PlaneElement b) {
    shape = Shape.NOTHING;
    tangent = Math.hypot(b.offsetStartU - a.offsetEndU, b.offsetStartV - a.offsetEndV) <= NEAR;
    angle = Math.atan2(cross(a, b), dot(a, b));
    opposite = !tangent && Math.PI - Math.abs(angle) <= OPPOSITE;
    if (opposite) {
      boolean left = turnsBackToTheLeft(a, b);
      if (left != angle > 0) {
        angle += left ? 2 * Math.PI : -2 * Math.PI;
      }
    }
  }

  private static double dot(PlaneElement a, PlaneElement b) {
    return a.tangent1U * b.tangent0U + a.tangent1V * b.tangent0V;
  }

  private static double cross(PlaneElement a, PlaneElement b) {
    return a.tangent1U * b.tangent0V - a.tangent1V * b.tangent0U;
  }

  /**
   * Which way a path that turns back turns; there and back on one curve turns away from the tool.
   */
  private static boolean turnsBackToTheLeft(PlaneElement a, PlaneElement b) {
    double sum = a.curvature(true) + b.curvature(false);
    boolean sameCurve =
        a.isArc() == b.isArc()
            && (!a.isArc()
                || (a.sense != b.sense && Math.abs(a.move.endRadius() - b.move.radius()) <= NEAR));
    return sameCurve ? a.sigma < 0 : sum < 0;
  }

  private boolean isOutside(PlaneElement a) {
    return angle * a.sigma < 0;
  }

  private void outside(PlaneElement a, PlaneElement b, boolean prolongs, boolean mitre) {
    boolean rapid = b.move.isRapid();
    if (!mitre && !rapid) {
      shape = Shape.ROUND;
      return;
    }
    shape = Shape.POINTS;
    endsAtOffsetStart = b.isArc();
    mitrePoints(a, b);
    if (prolongs && !rapid) {
      a.endAt(pointU[0], pointV[0], a.extent + reach(a.offsetEndU, a.offsetEndV, 0));
    }
    if (!endsAtOffsetStart) {
      b.beginAt(-reach(b.offsetStartU, b.offsetStartV, points - 1));
    }
  }

  private double reach(double u, double v, int point) {
    return Math.hypot(pointU[point] - u, pointV[point] - v);
  }

  private void mitrePoints(PlaneElement a, PlaneElement b) {
    double cos = dot(a, b);
    if (cos >= -RIGHT_ANGLE) {
      double share = a.sigma / (1 + cos);
      points = 1;
      pointU[0] = b.startU - share * (a.tangent1V + b.tangent0V);
      pointV[0] = b.startV + share * (a.tangent1U + b.tangent0U);
      return;
    }
    double rho = Math.abs(a.sigma);
    points = 2;
    pointU[0] = a.offsetEndU + rho * a.tangent1U;
    pointV[0] = a.offsetEndV + rho * a.tangent1V;
    pointU[1] = b.offsetStartU - rho * b.tangent0U;
    pointV[1] = b.offsetStartV - rho * b.tangent0V;
  }

  private Join trim(PlaneElement a, PlaneElement b) {
    if (!crossing.find(a, b)) {
      return Join.DOES_NOT_FIT;
    }
    a.endAt(crossing.u(), crossing.v(), crossing.stationBefore());
    b.beginAt(crossing.stationAfter());
    return a.remaining() < -NEAR ? Join.DOES_NOT_FIT : Join.MADE;
  }

  /** Writes the moves put in before the second element. */
  void write(CompensatedPath path, PlaneElement b) {
    switch (shape) {
      case NOTHING -> {}
      case ROUND ->
          path.insertArc(
              b.startU, b.startV, Math.abs(b.sigma), angle, b.offsetStartU, b.offsetStartV, b.move);
      case POINTS -> {
        for (int i = 0; i < points; i++) {
          path.insertStraight(pointU[i], pointV[i], b.move);
        }
        if (endsAtOffsetStart) {
          path.insertStraight(b.offsetStartU, b.offsetStartV, b.move);
        }
      }
    }
  }

  /** Whether the offset ends meet. */
  boolean isTangent() {
    return tangent;
  }

  /** Whether the path turns back on itself and a corner was made there. */
  boolean turnsBack() {
    return opposite;
  }

  /**
   * How far a tool that stands square to the first element cuts into the second (mm); 0 at an
   * outside corner.
   */
  double overcut(PlaneElement a) {
    return tangent || isOutside(a) ? 0 : Math.abs(a.sigma) * (1 - Math.cos(angle));
  }
}
