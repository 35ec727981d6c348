package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Place;
import flankfit.motion.DogLeg;
import flankfit.motion.ModalState;
import flankfit.motion.ModalState.Compensation;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.TapeBuilder;

/** Writes moves to the tape, or hands them to radius compensation while that is on. */
final class Mover {
  /** Blocks that go less far in the plane have no direction there (mm). */
  private static final double NO_PLANE_MOTION = 1e-7;

  /** Blocks that go less far at all give no move (mm). */
  private static final double NO_MOTION = 1e-9;

  private final Machine machine;
  private final FeedAndSpindle feed;
  private final CompensationWords sides;
  private final TapeBuilder tape;

  Mover(Machine machine, FeedAndSpindle feed, CompensationWords sides) {
    this.machine = machine;
    this.feed = feed;
    this.sides = sides;
    this.tape = machine.tape;
  }

  /** A rapid from the programmed point. */
  void rapid(double[] to) {
    if (isStill(to)) {
      arrive(to);
      return;
    }
    boolean dogLeg = machine.switches.rapids().dogLeg();
    if (machine.compensation.active()) {
      straight(MoveKind.RAPID, to, feed.standing());
    } else if (dogLeg) {
      dogLeg(to);
    } else {
      straightRapidAssumed(to);
      straight(MoveKind.RAPID, to, feed.standing());
    }
  }

  private void straightRapidAssumed(double[] to) {
    double first = 0;
    for (int axis = 0; axis < 3; axis++) {
      double way = Math.abs(to[axis] - machine.tip[axis]);
      if (way > NO_MOTION && first > NO_MOTION && Math.abs(way - first) > NO_MOTION) {
        machine.assumptions.once(
            Code.AS01, "", "rapids are drawn straight", "rapid-path = straight");
        return;
      }
      first = way > NO_MOTION ? way : first;
    }
  }

  /** Each axis runs at its own rate and stops on arrival. */
  private void dogLeg(double[] to) {
    double[] stops = new double[3 * DogLeg.MOST_STOPS];
    DogLeg.write(machine.tip, to, machine.switches.rapids().rates(), stops);
    for (int i = 0; i < stops.length; i += 3) {
      double[] stop = {stops[i], stops[i + 1], stops[i + 2]};
      if (!isStill(stop)) {
        straight(MoveKind.RAPID, stop, feed.standing());
      }
    }
    arrive(to);
  }

  /** A straight feed move from the programmed point. */
  void line(double[] to) {
    if (isStill(to)) {
      arrive(to);
      return;
    }
    double[] tip = machine.tip;
    double dx = to[0] - tip[0];
    double dy = to[1] - tip[1];
    double dz = to[2] - tip[2];
    double path = Math.sqrt(dx * dx + dy * dy + dz * dz);
    feed.cutting(Math.min(tip[2], to[2]));
    straight(MoveKind.LINE, to, feed.alongPath(path, 0));
  }

  private boolean isStill(double[] to) {
    double[] tip = machine.tip;
    return isStill(to[0] - tip[0], to[1] - tip[1], to[2] - tip[2]);
  }

  /** Whether a way is too short to be a move. */
  static boolean isStill(double dx, double dy, double dz) {
    return Math.abs(dx) <= NO_MOTION && Math.abs(dy) <= NO_MOTION && Math.abs(dz) <= NO_MOTION;
  }

  private void arrive(double[] to) {
    System.arraycopy(to, 0, machine.tip, 0, 3);
  }

  private boolean movesInPlane(double[] to) {
    Plane plane = machine.modes.plane();
    double du = to[plane.u()] - machine.tip[plane.u()];
    double dv = to[plane.v()] - machine.tip[plane.v()];
    return Math.hypot(du, dv) > NO_PLANE_MOTION;
  }

  private void straight(MoveKind kind, double[] to, double rate) {
    if (machine.compensation.active()) {
      boolean inPlane = movesInPlane(to);
      sides.beforeMove(kind, inPlane, to[2] - machine.tip[2]);
      ModalState state = machine.modes.show(rate, sides.shown(inPlane));
      compensate(kind, to, 0, 0, 0, 0, 0, 0, state);
    } else {
      ModalState state = machine.modes.show(rate, Compensation.OFF);
      tape.straight(kind, to[0], to[1], to[2], machine.report.line(), machine.blockNumber, state);
    }
    arrive(to);
  }

  /** An arc from the programmed point, as solved. */
  void arc(ArcSolver arc, double[] to) {
    Plane plane = machine.modes.plane();
    double inPlane = Math.abs(arc.sweep()) * (arc.radius() + arc.endRadius()) / 2;
    double path = Math.hypot(inPlane, to[plane.n()] - machine.tip[plane.n()]);
    double rate = feed.alongPath(path, inPlane);
    feed.cutting(Math.min(machine.tip[2], to[2]));
    boolean spiral = Math.abs(arc.endRadius() - arc.radius()) > 1e-6;
    double endRadius = spiral ? arc.endRadius() : arc.radius();
    if (machine.compensation.active()) {
      sides.beforeMove(MoveKind.ARC, true, to[2] - machine.tip[2]);
      sides.turn(arc);
      ModalState state = machine.modes.show(rate, sides.shown(true));
      compensate(
          MoveKind.ARC,
          to,
          arc.centreU(),
          arc.centreV(),
          arc.radius(),
          endRadius,
          arc.sweep(),
          0,
          state);
    } else {
      ModalState state = machine.modes.show(rate, Compensation.OFF);
      tape.arc(
          to[0],
          to[1],
          to[2],
          arc.centreU(),
          arc.centreV(),
          arc.radius(),
          endRadius,
          arc.sweep(),
          machine.report.line(),
          machine.blockNumber,
          state);
    }
    arrive(to);
  }

  void dwell(double seconds) {
    if (machine.compensation.active()) {
      ModalState state = machine.modes.show(feed.standing(), sides.shown(false));
      compensate(MoveKind.DWELL, machine.tip, 0, 0, 0, 0, 0, seconds, state);
    } else {
      ModalState state = machine.modes.show(feed.standing(), Compensation.OFF);
      tape.dwell(seconds, machine.report.line(), machine.blockNumber, state);
    }
  }

  private void compensate(
      MoveKind kind,
      double[] to,
      double centreU,
      double centreV,
      double radius,
      double endRadius,
      double sweep,
      double seconds,
      ModalState state) {
    double[] from = machine.tip;
    Place place = machine.report.place();
    machine.compensation.move(
        new ProgrammedMove(
            kind,
            from[0],
            from[1],
            from[2],
            to[0],
            to[1],
            to[2],
            centreU,
            centreV,
            radius,
            endRadius,
            sweep,
            seconds,
            machine.report.line(),
            machine.blockNumber,
            state,
            place));
    sides.checkStop();
  }
}
