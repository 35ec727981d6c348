package flankfit.gauge;

import flankfit.motion.ModalState;
import flankfit.motion.ModalState.Compensation;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.ModalState.Spindle;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.motion.TapeBuilder;
import flankfit.setup.ControlSwitches;
import flankfit.setup.Hole;
import flankfit.setup.Offsets;
import flankfit.setup.SetupSheet;
import flankfit.setup.SetupSheet.GaugeCondition;
import flankfit.setup.Tool;
import flankfit.standard.Designations;
import flankfit.standard.InvalidDesignationException;
import flankfit.sweep.Tooth;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/** A thread-milling job for tests: writes its tape as a control would, for any register. */
class Milled {
  static final double[] RATES = {20000, 20000, 20000};

  String thread = "M20x1.5-6H";
  List<Point> axes = List.of(new Point(0, 0, 0));
  List<Point> holesAt;
  double hole = 18.5;
  boolean boss;
  double threadDepth = 16;
  Optional<Double> depth = Optional.empty();
  double mill = 14;
  int rows = 12;
  double rowPitch = 1.5;
  double crest = 0.1875;
  double flankAngle = 60;
  Tool.CutterForm form = new Tool.CutterForm.Straight();
  double[] radii = {3};
  double lead = 1.5;
  double turns = 1;
  int arcs = 1;
  boolean anticlockwise = true;
  boolean rising = true;
  double zStart = -16.5;
  double entryRiseShare = -1;
  double entryTurns = 0.5;
  Spindle spindle = Spindle.CLOCKWISE;
  int register = 4;
  double geometry;
  double wear;
  DoubleUnaryOperator inwards = total -> -total;
  boolean retractInPlace;
  LengthUnit unit = LengthUnit.MILLIMETRE;
  int toolInSheet = 4;
  double stepZ;
  double firstAngle;
  double stepAngle;
  GaugeCondition condition = GaugeCondition.NEW;
  String metal = "";
  Optional<Tool.Section> neck = Optional.empty();
  Optional<Tool.Section> shank = Optional.empty();
  Optional<Double> holderCompliance = Optional.empty();
  Optional<Double> holeTolerance = Optional.empty();
  Optional<Double> wearLimit = Optional.empty();
  Tool.Stated stated = new Tool.Stated(Optional.empty(), Optional.empty(), Optional.empty());
  double feed = 180;
  double rpm = 3200;
  double fluteLength = 20;

  Tape tape(Offsets offsets) {
    Offsets.Register r = offsets.radius(register).orElse(new Offsets.Register(0, 0));
    double change = inwards.applyAsDouble(r.geometry() + r.wear());
    TapeBuilder tape = new TapeBuilder(new Point(0, 0, 50), RATES);
    writeTo(tape, change);
    return tape.build();
  }

  void writeTo(TapeBuilder tape, double change) {
    int line = 5;
    for (Point axis : axes) {
      line = hole(tape, axis, change, line);
    }
  }

  private int hole(TapeBuilder tape, Point axis, double change, int from) {
    int line = from;
    ModalState off = state(Compensation.OFF);
    ModalState on = state(register == 0 ? Compensation.OFF : Compensation.LEFT);
    tape.straight(MoveKind.RAPID, axis.x(), axis.y(), 5, line, line, off);
    double z0 = zStart;
    double angle0 = firstAngle;
    for (double nominal : radii) {
      double e = nominal + change;
      double clear = boss ? e + 5 : 0;
      tape.straight(MoveKind.LINE, axis.x() + clear, axis.y(), z0, ++line, line, off);
      enter(tape, axis, e, z0, angle0, ++line, on);
      double sense = anticlockwise ? 1 : -1;
      double sweep = sense * 2 * Math.PI * turns / arcs;
      double z = z0 + (entryRiseShare >= 0 ? entryRiseShare * lead : 0);
      line++;
      for (int i = 1; i <= arcs; i++) {
        double angle = angle0 + sweep * i;
        z += (rising ? 1 : -1) * lead * turns / arcs;
        tape.arc(
            axis.x() + e * Math.cos(angle),
            axis.y() + e * Math.sin(angle),
            z,
            axis.x(),
            axis.y(),
            e,
            e,
            sweep,
            line,
            line,
            on);
      }
      if (retractInPlace) {
        tape.straight(MoveKind.RAPID, axis.x() + e, axis.y(), 50, ++line, line, on);
      } else {
        tape.straight(MoveKind.LINE, axis.x() + clear, axis.y(), z, ++line, line, off);
      }
      z0 += stepZ;
      angle0 += stepAngle;
    }

    tape.straight(MoveKind.RAPID, axis.x() + (boss ? 60 : 0), axis.y(), 50, ++line, line, off);
    return line + 1;
  }

  /**
   * Straight from the axis; or by a part of a turn of half the path radius, which runs into the
   * path; or, where it takes more than half a turn, by a spiral from half the path radius.
   */
  private void enter(
      TapeBuilder tape, Point axis, double e, double z0, double angle, int line, ModalState on) {
    double z = z0 + Math.max(0, entryRiseShare) * lead;
    double toX = axis.x() + e * Math.cos(angle);
    double toY = axis.y() + e * Math.sin(angle);
    if (entryRiseShare < 0) {
      tape.straight(MoveKind.LINE, toX, toY, z0, line, line, on);
      return;
    }
    double sweep = (anticlockwise ? 1 : -1) * 2 * Math.PI * entryTurns;
    double r = e / 2;
    double centre = entryTurns > 0.5 ? 0 : e - r;
    double centreX = axis.x() + centre * Math.cos(angle);
    double centreY = axis.y() + centre * Math.sin(angle);
    double fromX = centreX + r * Math.cos(angle - sweep);
    double fromY = centreY + r * Math.sin(angle - sweep);
    if (entryTurns != 0.5) {
      tape.straight(MoveKind.LINE, fromX, fromY, z0, line, line, on);
    }
    double endRadius = entryTurns > 0.5 ? e : r;
    tape.arc(toX, toY, z, centreX, centreY, r, endRadius, sweep, line, line, on);
  }

  private ModalState state(Compensation compensation) {
    return new ModalState(
        Distance.ABSOLUTE,
        Plane.XY,
        compensation,
        0,
        register,
        4,
        unit,
        "G54",
        4,
        feed,
        spindle,
        rpm,
        true);
  }

  SetupSheet sheet() {
    SetupSheet empty = SetupSheet.empty();
    List<Hole> holes = new ArrayList<>();
    int n = 0;
    for (Point axis : holesAt == null ? axes : holesAt) {
      holes.add(
          new Hole(
              "port " + ++n,
              boss,
              axis.x(),
              axis.y(),
              0,
              hole,
              depth,
              Math.PI,
              Optional.empty(),
              thread.isEmpty() ? Optional.empty() : Optional.of(thread),
              Optional.of(threadDepth),
              Optional.empty(),
              holeTolerance,
              n));
    }
    Offsets offsets =
        register == 0
            ? Offsets.none()
            : Offsets.none().withRadius(register, new Offsets.Register(geometry, wear));
    return new SetupSheet(
        "job.setup.toml",
        "",
        unit,
        control(empty.control()),
        empty.stock(),
        List.of(),
        empty.workOffsets(),
        holes,
        List.of(tool()),
        offsets,
        metal,
        condition,
        List.of());
  }

  private Tool tool() {
    return new Tool(
        toolInSheet,
        Tool.Kind.THREAD_MILL,
        false,
        mill,
        4,
        Optional.of(
            new Tool.Teeth(
                rows,
                rows > 1 ? Optional.of(rowPitch) : Optional.empty(),
                Math.toRadians(flankAngle) / 2,
                crest,
                form,
                0.5)),
        Math.PI,
        0,
        fluteLength,
        neck,
        shank,
        Optional.empty(),
        0,
        0,
        "carbide",
        holderCompliance,
        stated,
        1);
  }

  private ControlSwitches control(ControlSwitches usual) {
    ControlSwitches.Tools t = usual.tools();
    return usual.with(
        new ControlSwitches.Tools(
            t.changeByT(),
            t.changeGoesHome(),
            t.geometryEntry(),
            t.wearEntry(),
            t.registerByTool(),
            wearLimit));
  }

  GaugeAnswer gauge() {
    return ThreadGauging.gauge(request());
  }

  GaugeRequest request() {
    SetupSheet sheet = sheet();
    return new GaugeRequest("job.nc", tape(sheet.offsets()), sheet, this::again);
  }

  /** The motion with other registers; none where a circle would vanish, as for the control. */
  private Optional<Tape> again(Offsets offsets) {
    Offsets.Register r = offsets.radius(register).orElse(new Offsets.Register(0, 0));
    double change = inwards.applyAsDouble(r.geometry() + r.wear());
    boolean vanishes = Arrays.stream(radii).anyMatch(radius -> radius + change <= 0);
    return vanishes ? Optional.empty() : Optional.of(tape(offsets));
  }

  /** The first hole's thread with all passes of the tape, the mill stiff. */
  FoundThread found(Tape tape) {
    SetupSheet sheet = sheet();
    Tool tool = sheet.tools().get(0);
    Tool.Teeth teeth = tool.teeth().orElseThrow();
    try {
      Tooth tooth = new TeethForms(Designations::parse).tooth(tool, teeth);
      List<CutPass> cuts = new ArrayList<>();
      for (Pass pass : PassFinder.find(tape, number -> number == tool.number()).passes()) {
        cuts.add(new CutPass(pass, tool, teeth, tooth));
      }
      ThreadModel model = new ThreadModel(Designations.parse(thread), hole / 2, cuts);
      return new FoundThread(
          sheet.holes().get(0), model.spec(), model, Optional.empty(), new Text(unit));
    } catch (InvalidDesignationException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The only thread as that of an endless helix, which advice is about. */
  ThreadAnswer endless() {
    return ThreadGauging.gauge(request().withoutRealPath()).threads().get(0);
  }

  /** The answer in full but for the advice: that takes several runs. */
  GaugeAnswer judgedAll() {
    SetupSheet sheet = sheet();
    Tape tape = tape(sheet.offsets());
    return ThreadGauging.gauge(new GaugeRequest("job.nc", tape, sheet, none -> Optional.empty()));
  }

  /** The only thread with its verdict in full, and no advice. */
  ThreadAnswer judged() {
    return only(judgedAll());
  }

  ThreadAnswer only() {
    return only(gauge());
  }

  private static ThreadAnswer only(GaugeAnswer answer) {
    if (answer.threads().size() != 1) {
      throw new AssertionError("one thread expected: " + answer);
    }
    return answer.threads().get(0);
  }
}
