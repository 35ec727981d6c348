package flankfit.control;

import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.motion.TapeBuilder;
import flankfit.unit.Tolerance;

/** Where the compensated tool stands, and the moves it makes, written to the tape. */
final class CompensatedPath {
  private static final double NEAR = Tolerance.MODEL.value();

  private final TapeBuilder tape;
  private Plane plane = Plane.XY;
  private final double[] at = new double[3];
  private boolean known;

  CompensatedPath(TapeBuilder tape) {
    this.tape = tape;
  }

  /** Begins where the tool is not known yet. */
  void begin(Plane newPlane) {
    plane = newPlane;
    known = false;
  }

  /** Takes the programmed start of a move for where the tool stands. */
  void standAtStartOf(ProgrammedMove move) {
    stand(move.fromX(), move.fromY(), move.fromZ());
  }

  /** Makes sure that the tape has room for more moves. */
  void checkRoom(int moves) {
    tape.checkRoom(moves);
  }

  boolean isKnown() {
    return known;
  }

  Point tool() {
    return new Point(at[0], at[1], at[2]);
  }

  double u() {
    return at[plane.u()];
  }

  double v() {
    return at[plane.v()];
  }

  double n() {
    return at[plane.n()];
  }

  private void stand(double x, double y, double z) {
    at[0] = x;
    at[1] = y;
    at[2] = z;
    known = true;
  }

  private void standInPlane(double u, double v, double n) {
    at[plane.u()] = u;
    at[plane.v()] = v;
    at[plane.n()] = n;
    known = true;
  }

  /** A line, rapid or dwell to its programmed end. */
  void uncompensated(ProgrammedMove move) {
    stand(move.toX(), move.toY(), move.toZ());
    if (move.kind() == MoveKind.DWELL) {
      tape.dwell(move.seconds(), move.line(), move.block(), move.state());
    } else {
      straight(move.kind(), move);
    }
  }

  /** A block without plane motion, made where the tool stands in the plane. */
  void standing(ProgrammedMove move, boolean displaced) {
    if (!displaced) {
      uncompensated(move);
      return;
    }
    if (move.kind() == MoveKind.DWELL) {
      tape.dwell(move.seconds(), move.line(), move.block(), move.state());
      endsProgrammedAt(move);
      return;
    }
    alongNormal(move.kind(), move);
  }

  private void alongNormal(MoveKind kind, ProgrammedMove move) {
    double n = move.to(plane.n());
    if (n != n()) {
      standInPlane(u(), v(), n);
      straight(kind, move);
    }
  }

  /** An element between its corners. */
  void element(PlaneElement e) {
    boolean nothingLeft = e.isPoint() || (e.isTrimmed() && e.remaining() <= NEAR);
    if (nothingLeft) {
      alongNormal(e.isArc() ? MoveKind.LINE : e.move.kind(), e.move);
      return;
    }
    standInPlane(e.finishU(), e.finishV(), e.endN);
    if (!e.isArc()) {
      straight(e.move.kind(), e.move);
    } else if (e.isTrimmed()) {
      double r0 = tapeRadius(e, e.first());
      double r1 = tapeRadius(e, e.last());
      arc(e.move, r0, r1, e.sense * (e.last() - e.first()));
    } else {
      arc(e.move, tapeRadius(e, 0), tapeRadius(e, e.extent), e.move.sweep());
    }
  }

  /** An arc from where the tool stands, uncompensated, to the element's offset end. */
  void spiralOnto(PlaneElement e) {
    standInPlane(e.finishU(), e.finishV(), e.endN);
    arc(e.move, e.move.radius(), tapeRadius(e, e.extent), e.move.sweep());
  }

  private static double tapeRadius(PlaneElement e, double station) {
    double r0 = e.move.radius();
    double r1 = e.move.endRadius();
    double r = station == e.extent ? r1 : r0 + (r1 - r0) * (station / e.extent);
    return Math.max(0, r - e.sense * e.sigma);
  }

  private void arc(ProgrammedMove m, double r0, double r1, double sweep) {
    tape.arc(
        at[0],
        at[1],
        at[2],
        m.centreU(),
        m.centreV(),
        r0,
        r1,
        sweep,
        m.line(),
        m.block(),
        m.state());
    endsProgrammedAt(m);
  }

  private void straight(MoveKind kind, ProgrammedMove m) {
    tape.straight(kind, at[0], at[1], at[2], m.line(), m.block(), m.state());
    endsProgrammedAt(m);
  }

  private void endsProgrammedAt(ProgrammedMove m) {
    tape.programmedTo(m.toX(), m.toY(), m.toZ());
  }

  /** A straight move put in at a corner before an element's block. */
  void insertStraight(double u, double v, ProgrammedMove owner) {
    if (u == u() && v == v()) {
      return;
    }
    standInPlane(u, v, n());
    MoveKind kind = owner.isRapid() ? MoveKind.RAPID : MoveKind.LINE;
    tape.straight(kind, at[0], at[1], at[2], owner.line(), owner.block(), owner.state());
    endInsertion(owner);
  }

  /** An arc about a programmed corner, put in before an element's block. */
  void insertArc(
      double cu, double cv, double radius, double sweep, double u, double v, ProgrammedMove owner) {
    standInPlane(u, v, n());
    ModalState state = owner.state();
    tape.arc(
        at[0], at[1], at[2], cu, cv, radius, radius, sweep, owner.line(), owner.block(), state);
    endInsertion(owner);
  }

  private void endInsertion(ProgrammedMove owner) {
    tape.markInserted();
    tape.programmedTo(owner.fromX(), owner.fromY(), owner.fromZ());
  }
}
