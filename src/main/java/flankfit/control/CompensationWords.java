package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.motion.ModalState.Compensation;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.setup.ControlSwitches.CancelReference;
import flankfit.setup.Offsets.Register;
import flankfit.setup.Tool;
import java.util.Optional;

/**
 * G40, G41, G42 and D: what may be said when, which radius is in use, and whether it fits the tool.
 * The geometry is that of {@link RadiusCompensation}.
 */
final class CompensationWords {
  private static final Code[] GEOMETRY_STOPS = {
    Code.RC02, Code.RC03, Code.RC05, Code.RC06, Code.RC07, Code.RC04
  };

  private final Machine machine;
  private final Modes modes;
  private final BlockWords words;
  private final Report report;
  private final CompensatedTurns turns;
  private Place startPlace;
  private boolean startedUp;
  private boolean cancelSaid;
  private Optional<Place> retract = Optional.empty();

  CompensationWords(Machine machine) {
    this.machine = machine;
    this.modes = machine.modes;
    this.words = machine.words;
    this.report = machine.report;
    this.turns = new CompensatedTurns(machine);
    this.startPlace = machine.report.place();
  }

  /** Executes the words of the block. */
  void execute() {
    int code = words.g(GCode.RADIUS);
    int register = register(code);
    if (report.stopped()) {
      return;
    }
    if (code == 400) {
      cancel();
    } else if (code > 0) {
      start(code == 410 ? Compensation.LEFT : Compensation.RIGHT, register);
    }
  }

  /** The number of the register after this block; reports RC09. */
  private int register(int code) {
    int word = words.word('D');
    int number = modes.radiusRegister();
    if (word >= 0) {
      number = (int) Math.rint(words.block().value(word));
      modes.radiusRegisterStated(true);
    } else if (code > 400 && machine.switches.tools().registerByTool() && !isOn()) {
      number = modes.tool();
      modes.radiusRegisterStated(true);
    }
    if (isOn() && code != 400 && number != modes.radiusRegister()) {
      double step = Math.abs(radius(number) - modes.radius());
      report.add(
          Code.RC09,
          word,
          "D" + number + " while D" + modes.radiusRegister() + " is on",
          "the path would step by " + machine.length(step),
          "G40 first");
      return number;
    }
    if (number != modes.radiusRegister()) {
      modes.radiusRegister(number);
    }
    return number;
  }

  private boolean isOn() {
    return machine.compensation.active() && !cancelSaid;
  }

  private void cancel() {
    modes.side(Compensation.OFF);
    if (machine.compensation.active() && !cancelSaid) {
      cancelSaid = true;
      machine.compensation.cancel(report.place(words.gWord(GCode.RADIUS)));
      checkStop();
    }
  }

  private void start(Compensation side, int register) {
    int word = words.gWord(GCode.RADIUS);
    String function = side == Compensation.LEFT ? "G41" : "G42";
    if (machine.compensation.active() && cancelSaid) {
      report.add(
          Code.RC10,
          word,
          function + " before G40 has moved",
          "nothing has been cancelled yet",
          "one straight move in between");
    } else if (isOn() && side != modes.side()) {
      String other = side == Compensation.LEFT ? "G42" : "G41";
      report.add(
          Code.RC08,
          word,
          function + " while " + other + " is on",
          "the tool would cross the path",
          "G40 first");
    } else if (!isOn() && !modes.radiusRegisterStated()) {
      String tool = modes.tool() > 0 ? "add D" + modes.tool() : "add D";
      report.add(Code.RC01, word, function + " without D", "no register", tool);
    } else if (!isOn()) {
      switchOn(side, register, word);
    }
  }

  private void switchOn(Compensation side, int register, int word) {
    startPlace = report.place(words.has('D') ? words.word('D') : word);
    double rho = radius(register);
    modes.side(side);
    modes.radius(rho);
    boolean flipped = machine.frame.transforms().flips(modes.plane());
    boolean left = (side == Compensation.LEFT) != flipped;
    modes.sideOnPart(left ? Compensation.LEFT : Compensation.RIGHT);
    startedUp = false;
    cancelSaid = false;
    retract = Optional.empty();
    checkRegister(register, rho);
    double sigma = left ? rho : -rho;
    machine.compensation.start(sigma, modes.plane(), report.place(word));
    checkStop();
  }

  /** Radius in use by a register (mm); 0 for one without a value. */
  double radius(int register) {
    return machine.offsets.radius(register).map(this::radius).orElse(0.0);
  }

  private double radius(Register register) {
    var tools = machine.switches.tools();
    return register.geometry() / tools.geometryEntry().divisor()
        + register.wear() / tools.wearEntry().divisor();
  }

  private void checkRegister(int register, double rho) {
    Optional<Register> entry = machine.offsets.radius(register);
    String name = "D" + register;
    if (entry.isEmpty() && register != 0) {
      report.add(Code.RC12, startPlace, name + " has no value", "taken as 0", "enter it");
    }
    if (modes.tool() != 0 && register != modes.tool()) {
      report.add(
          Code.RC11,
          startPlace,
          name + " with tool " + modes.tool(),
          "a register of another tool",
          "write D" + modes.tool());
    }
    double wear =
        entry.map(e -> e.wear() / machine.switches.tools().wearEntry().divisor()).orElse(0.0);
    if (Math.abs(wear) > WearBand.GREATEST) {
      report.add(
          Code.RC29,
          startPlace,
          "wear "
              + machine.length(wear)
              + " in "
              + name
              + " exceeds "
              + machine.length(WearBand.GREATEST),
          "more than wear: a diameter, or a slip of the point",
          "check it");
    }
    checkStyle(name, rho);
  }

  /** Tells tool-centre path from part contour: RC13 to RC16. */
  private void checkStyle(String name, double rho) {
    Optional<Tool> tool = machine.setup.tool(modes.tool());
    double size = tool.map(Tool::radius).orElse(0.0);
    double band = tool.isPresent() ? WearBand.of(size) : WearBand.GREATEST;
    boolean centre = Math.abs(rho) <= band;
    boolean wall = Math.abs(rho - size) <= band;
    turns.begin(startPlace, name, rho, size, centre, wall);
    String value = machine.length(rho);
    if (tool.isPresent() && (centre || wall)) {
      String style = centre ? "tool centre" : "part contour";
      report.add(
          Code.RC16,
          startPlace,
          "programmed path: " + style + ", " + name + " = " + value,
          "",
          "none needed");
    } else if (!centre && rho < 0) {
      report.add(
          Code.RC15,
          startPlace,
          name + " is negative: the tool runs on the other side",
          name + " = " + value,
          "check the sign");
    } else if (tool.isPresent() && Math.abs(rho - 2 * size) <= band) {
      report.add(
          Code.RC13,
          startPlace,
          name + " = " + value + " is the diameter of the tool",
          "the register wants the radius",
          "enter " + machine.length(rho / 2) + ", or set geometry-entry");
    } else if (tool.isPresent()) {
      report.add(
          Code.RC14,
          startPlace,
          name
              + " = "
              + value
              + " fits neither a wear nor tool "
              + modes.tool()
              + " (radius "
              + machine.length(size)
              + ")",
          "",
          "check the register");
    }
  }

  /** Side that the tape shows for a move while compensation is active. */
  Compensation shown(boolean inPlane) {
    return cancelSaid && inPlane ? Compensation.OFF : modes.sideOnPart();
  }

  /** RC20 and RC26, before a move is handed over. */
  void beforeMove(MoveKind kind, boolean inPlane, double riseZ) {
    boolean cancels = cancelSaid && inPlane;
    if (inPlane) {
      if (cancels) {
        retract = Optional.empty();
      }
      leftOnAtRetract();
      if (kind == MoveKind.RAPID && startedUp && !cancels) {
        report.add(
            Code.RC20,
            -1,
            "compensation is still on in a rapid",
            "the path is displaced by " + machine.length(Math.abs(modes.radius())),
            "cancel on the way out");
      }
      startedUp = true;
    } else if (kind == MoveKind.RAPID && riseZ > 0 && startedUp) {
      retract = Optional.of(report.place());
    }
  }

  /** RC26 for a retract that no cancel move followed. */
  private void leftOnAtRetract() {
    retract.ifPresent(
        place ->
            report.add(
                Code.RC26,
                place,
                "compensation is left on at the retract",
                "the next approach is displaced",
                "cancel before or right after"));
    retract = Optional.empty();
  }

  /** Looks at an arc made while compensation is on. */
  void turn(ArcSolver arc) {
    turns.look(arc, modes.sideOnPart());
  }

  /** Takes over a stop that the geometry reported. */
  void checkStop() {
    if (!machine.compensation.stopped() || report.stopped()) {
      return;
    }
    Findings findings = report.findings();
    for (Code code : GEOMETRY_STOPS) {
      if (findings.count(code) > 0) {
        report.stop(lastLine(code), code);
        return;
      }
    }
  }

  private int lastLine(Code code) {
    return report.findings().sorted().stream()
        .filter(finding -> finding.code() == code)
        .map(Finding::place)
        .mapToInt(Place::line)
        .max()
        .orElse(report.line());
  }

  /**
   * After a G40 without a move of its own the programmed point may become where the tool stands.
   */
  void afterBlock() {
    boolean lone = words.g(GCode.RADIUS) == 400 && machine.compensation.active();
    if (!lone || machine.switches.compensation().cancelReference() != CancelReference.ACTUAL) {
      return;
    }
    Optional<Point> tool = machine.compensation.toolAt();
    if (tool.isPresent()) {
      int u = modes.plane().u();
      int v = modes.plane().v();
      machine.tip[u] = tool.get().axis(u);
      machine.tip[v] = tool.get().axis(v);
    }
  }

  /** RC23, RC24 or RC25 when compensation is on; returns whether the block may go on. */
  boolean offFor(Code code, int word, String function) {
    if (!machine.compensation.active()) {
      return true;
    }
    leftOnAtRetract();
    String why =
        code == Code.RC23
            ? "where the tool ends is not defined"
            : code == Code.RC25
                ? "holes would be displaced by " + machine.length(Math.abs(modes.radius()))
                : "the wall being followed would jump";
    report.add(code, word, function + " with compensation on", why, "G40 first");
    return false;
  }

  void atToolChange(int word) {
    if (machine.compensation.active()) {
      report.add(
          Code.RC21,
          word,
          "compensation is on at the tool change",
          "the next tool would use radius " + machine.length(modes.radius()) + " of this one",
          "G40 before the change");
    }
  }

  void atEnd(Place place) {
    if (machine.compensation.active()) {
      leftOnAtRetract();
      report.add(
          Code.RC22,
          place,
          "compensation is on at the end of the program",
          cancelSaid ? "G40 has had no move to cancel in" : "the next run may start displaced",
          "G40 with a straight move");
    }
  }
}
