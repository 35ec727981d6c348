package flankfit.control;

import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.motion.TapeBuilder;
import flankfit.setup.ControlSwitches;
import java.util.Optional;

/**
 * Writes compensated moves; this one for an offset of zero, where the path is the programmed one.
 */
final class RadiusCompensation {
  private static final double NO_PLANE_MOTION = 1e-7;

  private final TapeBuilder tape;
  private boolean active;
  private boolean cancelling;
  private Plane plane = Plane.XY;
  private Optional<Point> toolAt = Optional.empty();

  RadiusCompensation(ControlSwitches.Compensation switches, TapeBuilder tape, Findings findings) {
    this.tape = tape;
  }

  void start(double sigma, Plane inPlane, Place place) {
    plane = inPlane;
    active = true;
    cancelling = false;
  }

  void cancel(Place place) {
    cancelling = true;
  }

  boolean active() {
    return active;
  }

  boolean stopped() {
    return false;
  }

  void move(ProgrammedMove m) {
    switch (m.kind()) {
      case RAPID, LINE ->
          tape.straight(m.kind(), m.toX(), m.toY(), m.toZ(), m.line(), m.block(), m.state());
      case ARC ->
          tape.arc(
              m.toX(),
              m.toY(),
              m.toZ(),
              m.centreU(),
              m.centreV(),
              m.radius(),
              m.endRadius(),
              m.sweep(),
              m.line(),
              m.block(),
              m.state());
      case DWELL -> tape.dwell(m.seconds(), m.line(), m.block(), m.state());
    }
    Point from = new Point(m.fromX(), m.fromY(), m.fromZ());
    Point to = new Point(m.toX(), m.toY(), m.toZ());
    toolAt = Optional.of(to);
    double du = to.axis(plane.u()) - from.axis(plane.u());
    double dv = to.axis(plane.v()) - from.axis(plane.v());
    if (cancelling && (Math.hypot(du, dv) > NO_PLANE_MOTION || m.sweep() != 0)) {
      active = false;
      toolAt = Optional.empty();
    }
  }

  void finish() {}

  Optional<Point> toolAt() {
    return toolAt;
  }
}
