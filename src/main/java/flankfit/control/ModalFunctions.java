package flankfit.control;

import flankfit.finding.Code;
import flankfit.motion.Plane;
import flankfit.unit.LengthUnit;
import java.util.Optional;

/** The functions of a block that stay in force: unit, tool, plane, compensation, frame, modes. */
final class ModalFunctions {
  private static final double MOST_REGISTERS = 999;

  private final Machine machine;
  private final Modes modes;
  private final BlockWords words;
  private final Report report;
  private final FeedAndSpindle feed;
  private final CompensationWords sides;
  private final Mover mover;
  private final ToolAndLength tool;
  private final WorkOffsets offsets;
  private final Reliance reliance;
  private final IncrementalRun run;
  private final TransformWords transforms;
  private final Calls calls;
  private final EndChecks ends;
  private final AxisMotion motion;
  private final double[] target = new double[3];
  private Optional<LengthUnit> firstUnit = Optional.empty();

  ModalFunctions(
      Machine machine,
      FeedAndSpindle feed,
      CompensationWords sides,
      Mover mover,
      ToolAndLength tool,
      WorkOffsets offsets,
      Reliance reliance,
      IncrementalRun run,
      TransformWords transforms,
      Calls calls,
      EndChecks ends,
      AxisMotion motion) {
    this.machine = machine;
    this.feed = feed;
    this.sides = sides;
    this.mover = mover;
    this.tool = tool;
    this.offsets = offsets;
    this.reliance = reliance;
    this.run = run;
    this.transforms = transforms;
    this.calls = calls;
    this.ends = ends;
    this.motion = motion;
    modes = machine.modes;
    words = machine.words;
    report = machine.report;
  }

  /** The unit the program's dimensions have. */
  LengthUnit unit() {
    return firstUnit.orElse(machine.switches.reading().powerUpUnit());
  }

  /** G20, G21. */
  void units() {
    int code = words.g(GCode.UNIT);
    if (code < 0) {
      return;
    }
    int word = words.gWord(GCode.UNIT);
    if (!sides.offFor(Code.RC24, word, GCode.text(code))) {
      return;
    }
    LengthUnit unit = code == 200 || code == 700 ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
    String standard = unit == LengthUnit.INCH ? "G20" : "G21";
    if (code >= 700) {
      report.add(
          Code.MD15,
          word,
          GCode.text(code) + " read as " + standard,
          "the number of the standard; many controls use G20, G21",
          "write " + standard);
    }
    if (unit != modes.unit()) {
      transforms.forbidChange(word, "unit");
      feed.unitChanged();
      if (motion.everMoved()) {
        report.add(
            Code.MD14,
            word,
            "unit changed in mid program",
            "numbers before and after differ by 25.4",
            "state the unit once, at the start");
      }
    }
    modes.unit(unit);
    firstUnit = firstUnit.isPresent() ? firstUnit : Optional.of(unit);
  }

  /** WD11 for D and H. */
  void registers() {
    for (char letter : new char[] {'D', 'H'}) {
      if (!words.has(letter) || report.stopped()) {
        continue;
      }
      double value = words.value(letter);
      if (value < -0.5 || value > MOST_REGISTERS) {
        report.add(
            Code.WD11,
            words.word(letter),
            words.block().text(words.word(letter)) + " is out of range 0 to 999",
            "it is the number of a register",
            "correct it");
      }
    }
  }

  /** T and M6. */
  void changeTool() {
    boolean byWord = tool.select();
    int word = words.mWord(MCode.TOOL);
    if (report.stopped() || (word < 0 && !byWord)) {
      return;
    }
    if (!machine.switches.tools().changeByT()) {
      tool.checkSelected(word);
    } else if (!byWord) {
      return;
    }
    if (report.stopped()) {
      return;
    }
    int at = word >= 0 ? word : words.word('T');
    if (machine.switches.tools().changeGoesHome() && !machine.compensation.active()) {
      System.arraycopy(machine.tip, 0, target, 0, 3);
      target[2] = machine.reference().z();
      mover.rapid(target);
    }
    tool.checkHeight(at);
    ends.atToolChange(at);
    feed.stopSpindle();
    tool.change();
    motion.toolChanged();
  }

  /** Plane, compensation, length, work offset, distance and centre mode. */
  void execute() {
    plane();
    if (!report.stopped()) {
      if (words.g(GCode.RADIUS) > 400) {
        reliance.plane();
      }
      sides.execute();
    }
    if (!report.stopped()) {
      tool.length();
    }
    if (!report.stopped()) {
      offsets.select();
    }
    if (report.stopped()) {
      return;
    }
    int distance = words.g(GCode.DISTANCE);
    if (distance >= 0) {
      if (distance == 900) {
        run.ends();
      }
      modes.absolute(distance == 900);
    }
    if (words.g(GCode.MODAL_CALL) == 670) {
      calls.endModal();
    }
    int centre = words.g(GCode.CENTRE);
    if (centre >= 0) {
      modes.absoluteCentre(centre == 901);
    }
    int level = words.g(GCode.RETURN_LEVEL);
    if (level >= 0) {
      machine.cycle.returnsToClearance(level == 990);
    }
  }

  private void plane() {
    int code = words.g(GCode.PLANE);
    if (code < 0) {
      return;
    }
    Plane plane = code == 170 ? Plane.XY : code == 180 ? Plane.ZX : Plane.YZ;
    boolean same = plane == modes.plane();
    if (!same) {
      transforms.forbidChange(words.gWord(GCode.PLANE), "plane");
    }
    if (report.stopped()) {
      return;
    }
    if (same || sides.offFor(Code.RC24, words.gWord(GCode.PLANE), GCode.text(code))) {
      modes.plane(plane);
    }
  }
}
