package flankfit.control;

import flankfit.finding.Code;
import flankfit.motion.Plane;
import flankfit.setup.ControlSwitches;
import flankfit.unit.Angles;
import flankfit.unit.Tolerance;

/**
 * Finds centre, radii and sweep of an arc block, from I J K or R. Reports the family AR.
 *
 * @see "T. R. Kramer, F. M. Proctor, E. Messina, The NIST RS274NGC Interpreter – Version 3, NISTIR
 *     6556, 2000, 3.5.3"
 */
final class ArcSolver {
  private static final double NO_RADIUS = 1e-9;

  private final Machine machine;
  private final BlockWords words;
  private final Report report;
  private final ControlSwitches.Arcs switches;
  private final ArcWords arcWords;
  private double startU;
  private double startV;
  private double endU;
  private double endV;
  private double centreU;
  private double centreV;
  private double radius;
  private double endRadius;
  private double sweep;

  ArcSolver(Machine machine) {
    this.machine = machine;
    this.words = machine.words;
    this.report = machine.report;
    this.switches = machine.switches.arcs();
    arcWords = new ArcWords(machine);
  }

  double centreU() {
    return centreU;
  }

  double centreV() {
    return centreV;
  }

  /** Radius at the start (mm). */
  double radius() {
    return radius;
  }

  /** Radius at the end (mm). */
  double endRadius() {
    return endRadius;
  }

  /** Signed sweep (rad), positive anticlockwise. */
  double sweep() {
    return sweep;
  }

  /**
   * Solves the arc of the present block.
   *
   * @param to programmed end, part frame (mm)
   * @return false when an error was reported
   */
  boolean solve(double[] to) {
    Plane plane = machine.modes.plane();
    startU = machine.tip[plane.u()];
    startV = machine.tip[plane.v()];
    endU = to[plane.u()];
    endV = to[plane.v()];
    if (!arcWords.fit(plane) || !staysRound(plane)) {
      return false;
    }
    boolean solved = words.has('R') ? byRadius() : byCentre(plane);
    if (solved) {
      sweep += Math.copySign(Angles.TURN * (arcWords.turns() - 1), sweep);
    }
    return solved && !report.stopped();
  }

  private boolean anticlockwise() {
    boolean flipped = machine.frame.transforms().flips(machine.modes.plane());
    return (machine.modes.motion() == 3) != flipped;
  }

  /** OF21 when the circle would become an ellipse. */
  private boolean staysRound(Plane plane) {
    if (!machine.frame.transforms().keepsCircles(plane)) {
      report.add(
          Code.OF21,
          -1,
          "arc under unequal scale factors",
          "it would be an ellipse",
          "scale equally");
    }
    return !report.stopped();
  }

  private boolean byCentre(Plane plane) {
    int wordU = words.centre(plane.u());
    int wordV = words.centre(plane.v());
    boolean absolute = machine.modes.absoluteCentre();
    if (absolute && (wordU < 0 || wordV < 0)) {
      report.add(
          Code.AR07,
          -1,
          "absolute centre needs both "
              + (char) ('I' + plane.u())
              + " and "
              + (char) ('I' + plane.v()),
          "",
          "add " + (char) ('I' + (wordU < 0 ? plane.u() : plane.v())));
      return false;
    }
    double u = wordU < 0 ? 0 : machine.dimensions.millimetres(words.block(), wordU);
    double v = wordV < 0 ? 0 : machine.dimensions.millimetres(words.block(), wordV);
    if (report.stopped()) {
      return false;
    }
    placeCentre(plane, u, v, absolute);
    measure();
    if (radius < NO_RADIUS) {
      report.add(
          Code.AR02,
          wordU >= 0 ? wordU : wordV,
          "arc of radius 0: the centre is the start",
          arcWords.function() + " is in force",
          "correct " + ArcWords.centreLetters(plane) + "; write G1 if a line is meant");
      return false;
    }
    if (!closes()) {
      placeCentre(plane, u, v, !absolute);
      otherMode(centreU, centreV, absolute);
      return false;
    }
    sweepToEnd();
    return true;
  }

  private void placeCentre(Plane plane, double u, double v, boolean absolute) {
    if (machine.frame.transforms().isOn()) {
      double[] p = new double[3];
      p[plane.u()] = u;
      p[plane.v()] = v;
      if (absolute) {
        machine.frame.toPart(p);
      } else {
        machine.frame.transforms().turn(p);
      }
      centreU = absolute ? p[plane.u()] : startU + p[plane.u()];
      centreV = absolute ? p[plane.v()] : startV + p[plane.v()];
    } else {
      centreU = absolute ? u + machine.frame.zero(plane.u()) : startU + u;
      centreV = absolute ? v + machine.frame.zero(plane.v()) : startV + v;
    }
  }

  private void measure() {
    radius = Math.hypot(startU - centreU, startV - centreV);
    endRadius = Math.hypot(endU - centreU, endV - centreV);
  }

  /** What rounding of start, end and centre to the least increment explains (mm). */
  private double rounding() {
    return 2 * Math.sqrt(2) * machine.dimensions.leastIncrement();
  }

  private boolean closes() {
    double gap = Math.abs(endRadius - radius);
    if (gap > switches.closureLimit()) {
      Plane plane = machine.modes.plane();
      double[] p = new double[3];
      p[plane.u()] = centreU;
      p[plane.v()] = centreV;
      machine.frame.toProgram(p);
      String centre = machine.coordinate(p[plane.u()]) + ", " + machine.coordinate(p[plane.v()]);
      report.add(
          Code.AR01,
          -1,
          "arc does not close: radius "
              + machine.length(radius)
              + " at the start, "
              + machine.length(endRadius)
              + " at the end",
          "the end is not on the circle about (" + centre + "); off by " + machine.length(gap),
          "check " + ArcWords.centreLetters(plane) + " and the end; is G90/G91 right?");
      return false;
    }
    if (gap > rounding()) {
      report.add(
          Code.AR11,
          -1,
          "radii differ by " + machine.length(gap),
          "more than rounding explains",
          "recompute " + ArcWords.centreLetters(machine.modes.plane()) + " or the end");
    }
    return true;
  }

  private void otherMode(double u, double v, boolean absolute) {
    double start = Math.hypot(startU - u, startV - v);
    double end = Math.hypot(endU - u, endV - v);
    if (start > NO_RADIUS && Math.abs(end - start) <= rounding()) {
      report.add(
          Code.AR13,
          -1,
          "read as " + (absolute ? "incremental" : "absolute") + " centre it would close",
          "",
          "set "
              + (absolute ? "G91.1" : "G90.1")
              + ", or correct "
              + ArcWords.centreLetters(machine.modes.plane()));
    }
  }

  private void sweepToEnd() {
    double chord = Math.hypot(endU - startU, endV - startV);
    if (Tolerance.MODEL.zero(chord)) {
      sweep = anticlockwise() ? Angles.TURN : -Angles.TURN;
      return;
    }
    double au = startU - centreU;
    double av = startV - centreV;
    double bu = endU - centreU;
    double bv = endV - centreV;
    double angle = Math.atan2(au * bv - av * bu, au * bu + av * bv);
    if (anticlockwise()) {
      sweep = angle > 0 ? angle : angle + Angles.TURN;
    } else {
      sweep = angle < 0 ? angle : angle - Angles.TURN;
    }
    if (chord <= rounding()) {
      report.add(
          Code.AR10,
          -1,
          "end is " + machine.length(chord) + " from the start",
          "read as " + Wording.degrees(Math.abs(sweep)) + "; a full turn may be meant",
          "make them equal, or farther apart");
    }
  }

  private boolean byRadius() {
    int word = words.word('R');
    Plane plane = machine.modes.plane();
    double r =
        machine.dimensions.millimetres(words.block(), word)
            * machine.frame.transforms().factor(plane);
    if (report.stopped()) {
      return false;
    }
    double chord = Math.hypot(endU - startU, endV - startV);
    if (Math.abs(r) < NO_RADIUS) {
      report.add(
          Code.AR02,
          word,
          "arc of radius 0",
          arcWords.function() + " is in force",
          "correct R; write G1 if a line is meant");
    } else if (Tolerance.MODEL.zero(chord)) {
      report.add(Code.AR04, word, "full circle by R", "infinitely many circles fit", "use I, J");
    } else if (r < 0 && !switches.longArcByNegativeR()) {
      report.add(Code.AR14, word, "negative R", "long-arc-by-negative-r = false", "use I, J");
    } else if (chord / 2 - Math.abs(r) > switches.closureLimit()) {
      String half = machine.length(chord / 2);
      report.add(
          Code.AR05,
          word,
          "radius " + machine.length(Math.abs(r)) + " cannot reach: half the distance is " + half,
          "",
          "R at least " + half + ", or check the end");
    } else {
      placeCentre(word, r, chord);
      return true;
    }
    return false;
  }

  private void placeCentre(int word, double r, double chord) {
    double size = Math.abs(r);
    double height = 0;
    if (chord / 2 > size) {
      report.add(
          Code.AR12,
          word,
          "R " + machine.length(size) + " taken as " + machine.length(chord / 2),
          "a half circle is meant",
          "use I, J");
    } else {
      height = Math.sqrt((size - chord / 2) * (size + chord / 2));
    }
    boolean leftOfChord = anticlockwise() == (r > 0);
    double k = leftOfChord ? height : -height;
    centreU = (startU + endU) / 2 - k * (endV - startV) / chord;
    centreV = (startV + endV) / 2 + k * (endU - startU) / chord;
    measure();
    if (height == 0) {
      sweep = anticlockwise() ? Math.PI : -Math.PI;
    } else {
      sweepToEnd();
    }
    doubtful(word, size, chord, height);
  }

  private void doubtful(int word, double size, double chord, double height) {
    double degrees = Angles.toDegrees(Math.abs(sweep));
    if ((degrees >= 165 && degrees <= 195) || degrees > 345) {
      double shift = Math.max(height > 0 ? chord / (4 * height) : Double.MAX_VALUE, size / chord);
      String far = shift > 1e3 ? "over 1000" : Wording.number(shift);
      report.add(
          Code.AR09,
          word,
          "R arc of " + Wording.number(degrees) + "°",
          "1 µm in the end moves the centre " + far + " µm",
          "use I, J");
    }
  }
}
