package flankfit.control;

import flankfit.motion.ModalState;
import flankfit.motion.Plane;

/**
 * The corner between the last compensated element and the cancel move, for controls that go round
 * it first.
 */
final class CancelMove {
  private final Corner corner;
  private final CompensatedPath path;
  private final CompensationFindings findings;

  CancelMove(Corner corner, CompensatedPath path, CompensationFindings findings) {
    this.corner = corner;
    this.path = path;
    this.findings = findings;
  }

  /**
   * Makes the corner, when there is one to make.
   *
   * @param last the element that the cancel move leaves
   * @param sigma signed offset to the left of the direction of motion (mm)
   */
  void goRound(PlaneElement last, ProgrammedMove move, double sigma, Plane plane) {
    ProgrammedMove fromCorner = startingAt(last, move, plane);
    if (!PlaneElement.hasPlaneMotion(fromCorner, plane)) {
      return;
    }
    PlaneElement cancel = new PlaneElement(fromCorner, sigma, plane);
    corner.joinCancel(last, cancel);
    if (corner.turnsBack()) {
      findings.turnsBack(move.place());
    }
    corner.write(path, cancel);
  }

  /** The cancel move as it goes from the last programmed point, wherever its block counts from. */
  private static ProgrammedMove startingAt(PlaneElement last, ProgrammedMove m, Plane plane) {
    double[] from = {m.fromX(), m.fromY(), m.fromZ()};
    from[plane.u()] = last.endU;
    from[plane.v()] = last.endV;
    return new ProgrammedMove(
        m.kind(),
        from[0],
        from[1],
        from[2],
        m.toX(),
        m.toY(),
        m.toZ(),
        0,
        0,
        0,
        0,
        0,
        0,
        m.line(),
        m.block(),
        stillOn(last.move.state(), m.state()),
        m.place());
  }

  /** The state of a corner move made in the cancel block: the side is still on. */
  private static ModalState stillOn(ModalState on, ModalState s) {
    return new ModalState(
        s.distance(),
        s.plane(),
        on.compensation(),
        on.compensationOffset(),
        s.radiusRegister(),
        s.lengthRegister(),
        s.unit(),
        s.workOffset(),
        s.tool(),
        s.feed(),
        s.spindle(),
        s.rpm(),
        s.coolant());
  }
}
