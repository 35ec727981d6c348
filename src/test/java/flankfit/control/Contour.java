package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.motion.TapeBuilder;
import flankfit.setup.ControlSwitches;
import flankfit.setup.ControlSwitches.CancelReference;
import flankfit.setup.ControlSwitches.StartUp;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Programs made of moves, without text: each call is a block on the next line. */
final class Contour {
  static final ControlSwitches.Compensation DEFAULTS =
      new ControlSwitches.Compensation(
          StartUp.NEXT_NORMAL, false, CancelReference.PROGRAMMED, false, false);

  private static final double[] RATES = {20000, 20000, 20000};

  final Plane plane;
  final List<ProgrammedMove> moves = new ArrayList<>();
  private final List<Consumer<RadiusCompensation>> steps = new ArrayList<>();
  private final double[] start;
  private final double[] at;
  private int line;
  private LengthUnit unit = LengthUnit.MILLIMETRE;

  Contour(double x, double y, double z) {
    this(Plane.XY, x, y, z);
  }

  Contour(Plane plane, double x, double y, double z) {
    this.plane = plane;
    start = new double[] {x, y, z};
    at = start.clone();
  }

  static ControlSwitches.Compensation mitre() {
    return new ControlSwitches.Compensation(
        StartUp.NEXT_NORMAL, false, CancelReference.PROGRAMMED, true, false);
  }

  static ControlSwitches.Compensation style(StartUp style) {
    return new ControlSwitches.Compensation(style, false, CancelReference.PROGRAMMED, false, false);
  }

  static ControlSwitches.Compensation ownNormalWithMitre() {
    return new ControlSwitches.Compensation(
        StartUp.OWN_NORMAL, false, CancelReference.PROGRAMMED, true, false);
  }

  static ControlSwitches.Compensation startOnArc() {
    return new ControlSwitches.Compensation(
        StartUp.NEXT_NORMAL, true, CancelReference.PROGRAMMED, false, false);
  }

  static ControlSwitches.Compensation noInsideCorners() {
    return new ControlSwitches.Compensation(
        StartUp.NEXT_NORMAL, false, CancelReference.PROGRAMMED, false, true);
  }

  Contour inInches() {
    unit = LengthUnit.INCH;
    return this;
  }

  /** The next block stands on this line. */
  Contour at(int nextLine) {
    line = nextLine - 1;
    return this;
  }

  /** G41 with a positive offset, G42 with a negative one; in the block that follows. */
  Contour on(double sigma) {
    Place place = place(line + 1);
    steps.add(c -> c.start(sigma, plane, place));
    return this;
  }

  /** G40 in the block that follows. */
  Contour off() {
    Place place = place(line + 1);
    steps.add(c -> c.cancel(place));
    return this;
  }

  /** The programmed point becomes another. */
  Contour standingAt(double x, double y, double z) {
    at[0] = x;
    at[1] = y;
    at[2] = z;
    return this;
  }

  Contour line(double x, double y, double z) {
    return straight(MoveKind.LINE, x, y, z);
  }

  Contour rapid(double x, double y, double z) {
    return straight(MoveKind.RAPID, x, y, z);
  }

  private Contour straight(MoveKind kind, double x, double y, double z) {
    return add(kind, new double[] {x, y, z}, 0, 0, 0, 0, 0, 0);
  }

  Contour dwell(double seconds) {
    return add(MoveKind.DWELL, at.clone(), 0, 0, 0, 0, 0, seconds);
  }

  /** An arc to a point about a centre at a distance from the start; a whole turn if it closes. */
  Contour arc(int sense, double x, double y, double z, double i, double j) {
    return arc(sense, x, y, z, i, j, 1);
  }

  Contour arc(int sense, double x, double y, double z, double i, double j, int turns) {
    double[] to = {x, y, z};
    double cu = at[plane.u()] + i;
    double cv = at[plane.v()] + j;
    double r0 = Math.hypot(i, j);
    double r1 = Math.hypot(to[plane.u()] - cu, to[plane.v()] - cv);
    double a0 = Math.atan2(-j, -i);
    double a1 = Math.atan2(to[plane.v()] - cv, to[plane.u()] - cu);
    double sweep = sense * (a1 - a0);
    boolean closes =
        Math.hypot(to[plane.u()] - at[plane.u()], to[plane.v()] - at[plane.v()]) <= 1e-6;
    sweep = closes ? 2 * Math.PI : sweep <= 0 ? sweep + 2 * Math.PI : sweep;
    sweep += 2 * Math.PI * (turns - 1);
    double end = Math.abs(r1 - r0) <= 1e-6 ? r0 : r1;
    return add(MoveKind.ARC, to, cu, cv, r0, end, sense * sweep, 0);
  }

  private Contour add(
      MoveKind kind,
      double[] to,
      double cu,
      double cv,
      double r0,
      double r1,
      double sweep,
      double seconds) {
    line++;
    ModalState initial = ModalState.initial(unit);
    ModalState state =
        new ModalState(
            initial.distance(),
            plane,
            initial.compensation(),
            0,
            0,
            0,
            unit,
            "G54",
            0,
            100,
            initial.spindle(),
            0,
            false);
    ProgrammedMove move =
        new ProgrammedMove(
            kind,
            at[0],
            at[1],
            at[2],
            to[0],
            to[1],
            to[2],
            cu,
            cv,
            r0,
            r1,
            sweep,
            seconds,
            line,
            line,
            state,
            place(line));
    moves.add(move);
    steps.add(c -> c.move(move));
    System.arraycopy(to, 0, at, 0, 3);
    return this;
  }

  /** Some other call in between. */
  Contour then(Consumer<RadiusCompensation> step) {
    steps.add(step);
    return this;
  }

  private static Place place(int line) {
    return new Place("contour.nc", line, 1, 0);
  }

  Run run() {
    return run(DEFAULTS);
  }

  Run run(ControlSwitches.Compensation switches) {
    TapeBuilder builder = new TapeBuilder(new Point(start[0], start[1], start[2]), RATES);
    Findings findings = new Findings();
    RadiusCompensation compensation = new RadiusCompensation(switches, builder, findings);
    for (Consumer<RadiusCompensation> step : steps) {
      if (!compensation.stopped()) {
        step.accept(compensation);
      }
    }
    compensation.finish();
    return new Run(builder.build(), findings.sorted(), compensation);
  }

  /** What came of it. */
  record Run(Tape tape, List<Finding> findings, RadiusCompensation compensation) {
    /** The findings as CODE@line. */
    List<String> codes() {
      return findings.stream().map(f -> f.code() + "@" + f.place().line()).toList();
    }

    long count(Code code) {
      return findings.stream().filter(f -> f.code() == code).count();
    }
  }
}
