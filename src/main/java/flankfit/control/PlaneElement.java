package flankfit.control;

import flankfit.motion.Plane;
import flankfit.unit.Angles;
import flankfit.unit.Tolerance;

/**
 * One move with motion in the plane, shifted by the compensation: a line by {@code sigma} times its
 * left normal, an arc to another radius about the same centre. Also keeps how far corners cut it. A
 * <em>station</em> is a place along it: the distance from the offset start (mm) for a line, the
 * angle from the start (rad) for an arc; both grow in the direction of motion.
 */
final class PlaneElement {
  /** Offset arcs smaller than this are a point (mm). */
  static final double POINT_RADIUS = 1e-6;

  /** Blocks that go less far than this in the plane go nowhere (mm). */
  static final double NO_MOTION = 1e-7;

  private static final double NEAR = Tolerance.MODEL.value();

  /** Radii that differ by more than this are crossed as a spiral (mm). */
  private static final double ROUND_WITHIN = 1e-9;

  final ProgrammedMove move;
  final double sigma;

  /** Programmed ends in the plane (mm). */
  final double startU;

  final double startV;
  final double endU;
  final double endV;

  /** Normal coordinates of the ends (mm). */
  final double startN;

  final double endN;

  /** Unit tangents at start and end. */
  final double tangent0U;

  final double tangent0V;
  final double tangent1U;
  final double tangent1V;

  /** Ends after the shift, before any corner (mm). */
  final double offsetStartU;

  final double offsetStartV;
  final double offsetEndU;
  final double offsetEndV;

  /** +1 anticlockwise, -1 clockwise, 0 for a line. */
  final int sense;

  /** Greatest station: length (mm) or sweep without sign (rad). */
  final double extent;

  /** Radii after the shift as the ends have them (mm); 0 for a line. */
  final double radius0;

  final double radius1;

  private final double angle0;

  /** Stations between which corners leave the element. */
  private double first;

  private double last;

  /** Where it ends on the tape (mm). */
  private double finishU;

  private double finishV;

  /** A line or rapid with its own direction at both ends, or an arc. */
  PlaneElement(ProgrammedMove move, double sigma, Plane plane) {
    this(move, sigma, plane, Double.NaN);
  }

  private PlaneElement(ProgrammedMove move, double sigma, Plane plane, double direction) {
    this.move = move;
    this.sigma = sigma;
    startU = move.from(plane.u());
    startV = move.from(plane.v());
    endU = move.to(plane.u());
    endV = move.to(plane.v());
    startN = move.from(plane.n());
    endN = move.to(plane.n());
    if (move.isArc()) {
      sense = move.sweep() > 0 ? 1 : -1;
      extent = Math.abs(move.sweep());
      double r0 = Math.hypot(startU - move.centreU(), startV - move.centreV());
      double r1 = Math.hypot(endU - move.centreU(), endV - move.centreV());
      radius0 = r0 - sense * sigma;
      radius1 = r1 - sense * sigma;
      tangent0U = -sense * (startV - move.centreV()) / r0;
      tangent0V = sense * (startU - move.centreU()) / r0;
      tangent1U = -sense * (endV - move.centreV()) / r1;
      tangent1V = sense * (endU - move.centreU()) / r1;
      angle0 = Math.atan2(startV - move.centreV(), startU - move.centreU());
    } else {
      sense = 0;
      extent = Math.hypot(endU - startU, endV - startV);
      radius0 = 0;
      radius1 = 0;
      angle0 = 0;
      boolean own = Double.isNaN(direction);
      tangent0U = own ? (endU - startU) / extent : Math.cos(direction);
      tangent0V = own ? (endV - startV) / extent : Math.sin(direction);
      tangent1U = tangent0U;
      tangent1V = tangent0V;
    }
    // The centre itself, so that a point does not turn about itself.
    boolean point = isPoint();
    offsetStartU = point ? move.centreU() : shifted(startU, -tangent0V);
    offsetStartV = point ? move.centreV() : shifted(startV, tangent0U);
    offsetEndU = point ? move.centreU() : shifted(endU, -tangent1V);
    offsetEndV = point ? move.centreV() : shifted(endV, tangent1U);
    first = 0;
    last = extent;
    finishU = offsetEndU;
    finishV = offsetEndV;
  }

  /** A line whose offset end stands square to another direction (rad) than its own. */
  static PlaneElement inDirection(
      ProgrammedMove move, double sigma, Plane plane, double direction) {
    return new PlaneElement(move, sigma, plane, direction);
  }

  /** Whether a move goes anywhere in the plane. */
  static boolean hasPlaneMotion(ProgrammedMove move, Plane plane) {
    return switch (move.kind()) {
      case ARC -> true;
      case DWELL -> false;
      case RAPID, LINE ->
          Math.hypot(
                  move.to(plane.u()) - move.from(plane.u()),
                  move.to(plane.v()) - move.from(plane.v()))
              > NO_MOTION;
    };
  }

  private double shifted(double coordinate, double normal) {
    return sigma == 0 ? coordinate : coordinate + sigma * normal;
  }

  boolean isArc() {
    return sense != 0;
  }

  /** Whether the shift leaves only the arc's centre. */
  boolean isPoint() {
    return isArc()
        && sigma != 0
        && Math.abs(radius0) <= POINT_RADIUS
        && Math.abs(radius1) <= POINT_RADIUS;
  }

  boolean isSpiral() {
    return isArc() && Math.abs(radius1 - radius0) > ROUND_WITHIN;
  }

  /** The smaller of the offset radii that the tape would get (mm). */
  double leastRadius() {
    return Math.min(move.radius(), move.endRadius()) - sense * sigma;
  }

  /** Curvature of the programmed path, positive to the left (1/mm); at a spiral's start or end. */
  double curvature(boolean atEnd) {
    return isArc() ? sense / (atEnd ? move.endRadius() : move.radius()) : 0;
  }

  /** Radius after the shift at a station (mm). */
  double radiusAt(double station) {
    return radius0 + (radius1 - radius0) * (station / extent);
  }

  /** Length for a difference of stations (mm). */
  double length(double stations) {
    return isArc() ? stations * Math.max(radius0, radius1) : stations;
  }

  /** Polar angle at a station of an arc (rad). */
  double angleAt(double station) {
    return angle0 + sense * station;
  }

  /** Signed distance of a point from the whole line or circle; its sign tells the side (mm). */
  double side(double u, double v) {
    if (isArc()) {
      double d = Math.hypot(u - move.centreU(), v - move.centreV());
      return d - (isSpiral() ? radiusAt(turned(u, v)) : radius0);
    }
    return tangent0U * (v - offsetStartV) - tangent0V * (u - offsetStartU);
  }

  /** The least station of a point that is on the whole line or circle; NaN if it is beyond. */
  double firstStation(double u, double v) {
    if (!isArc()) {
      return lineStation(u, v);
    }
    double slack = NEAR / Math.max(POINT_RADIUS, Math.max(radius0, radius1));
    double phi = turned(u, v);
    if (Angles.TURN - phi <= slack) {
      return 0;
    }
    return phi <= extent + slack ? Math.min(phi, extent) : Double.NaN;
  }

  /** The greatest station of a point that is on the whole line or circle; NaN if it is beyond. */
  double lastStation(double u, double v) {
    if (!isArc()) {
      return lineStation(u, v);
    }
    double slack = NEAR / Math.max(POINT_RADIUS, Math.max(radius0, radius1));
    double phi = turned(u, v);
    double turns = Math.floor((extent + slack - phi) / Angles.TURN);
    if (turns < 0) {
      return Angles.TURN - phi <= slack ? 0 : Double.NaN;
    }
    return Math.min(phi + turns * Angles.TURN, extent);
  }

  private double lineStation(double u, double v) {
    double along = (u - offsetStartU) * tangent0U + (v - offsetStartV) * tangent0V;
    if (along < -NEAR || along > extent + NEAR) {
      return Double.NaN;
    }
    return Math.max(0, Math.min(along, extent));
  }

  /** Angle from the start to a point in the sense of the arc (rad), in [0, 2π). */
  private double turned(double u, double v) {
    double angle = Math.atan2(v - move.centreV(), u - move.centreU());
    return Angles.normalised(sense * (angle - angle0));
  }

  double first() {
    return first;
  }

  double last() {
    return last;
  }

  double finishU() {
    return finishU;
  }

  double finishV() {
    return finishV;
  }

  /** Says where it begins after the corner before it. */
  void beginAt(double station) {
    first = station;
  }

  /** Says where it ends before the corner after it. */
  void endAt(double u, double v, double station) {
    finishU = u;
    finishV = v;
    last = station;
  }

  /** Says that it ends elsewhere than at its offset end, uncut. */
  void endAt(double u, double v) {
    finishU = u;
    finishV = v;
  }

  /** What the corners leave of it (mm); below 0 when they overlap. */
  double remaining() {
    return length(last - first);
  }

  boolean isTrimmed() {
    return first != 0 || last != extent;
  }
}
