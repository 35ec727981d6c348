package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Place;
import flankfit.motion.Plane;
import flankfit.nc.Block;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * Executes one block after the other. Whatever the order of writing, the functions of a block act
 * in a fixed order: units, feed, speed, tool, spindle, coolant, dwell, plane, compensation, length,
 * work offset, distance mode, shifts and returns, motion, and last what stops.
 *
 * @see "T. R. Kramer, F. M. Proctor, E. Messina, The NIST RS274NGC Interpreter – Version 3, NISTIR
 *     6556, 2000, 3.8, Table 8"
 */
final class BlockExecutor {
  private static final double MOST_REGISTERS = 999;

  private final Machine machine;
  private final Modes modes;
  private final BlockWords words;
  private final Report report;
  private final WordUse use;
  private final FeedAndSpindle feed;
  private final CompensationWords sides;
  private final Mover mover;
  private final Dwell dwell;
  private final ArcSolver arc;
  private final ToolAndLength tool;
  private final WorkOffsets offsets;
  private final ReturnMoves returns;
  private final Reliance reliance;
  private final IncrementalRun run;
  private final EndChecks ends;
  private final TransformWords transforms;
  private final DataSetting data;
  private final Cycles cycles;
  private final Aim aim;
  private final Flow flow;
  private final Calls calls;
  private final ControlStates states;
  private final WordReading reading;
  private final int blockLimit;
  private final double[] target = new double[3];
  private Optional<LengthUnit> firstUnit = Optional.empty();
  private boolean moved;
  private boolean fed;
  private boolean firstZAfterChange;
  private boolean ended;
  private boolean axisMoved;

  /**
   * @param block a block of the text that is executed first
   * @param exists whether there is a program of a number
   */
  BlockExecutor(Machine machine, Block block, IntPredicate exists) {
    this.machine = machine;
    modes = machine.modes;
    words = machine.words;
    report = machine.report;
    use = new WordUse(machine);
    feed = new FeedAndSpindle(machine);
    sides = new CompensationWords(machine);
    mover = new Mover(machine, feed, sides);
    dwell = new Dwell(machine, mover);
    arc = new ArcSolver(machine);
    tool = new ToolAndLength(machine);
    offsets = new WorkOffsets(machine, sides);
    returns = new ReturnMoves(machine, sides, mover, tool);
    reliance = new Reliance(machine);
    run = new IncrementalRun(machine);
    transforms = new TransformWords(machine, sides);
    data = new DataSetting(machine, sides, tool);
    cycles = new Cycles(machine, feed, mover, dwell, sides, tool, reliance, run);
    aim = new Aim(machine);
    ends = new EndChecks(machine, offsets, sides, run, transforms, cycles);
    flow = new Flow(machine, block);
    calls = new Calls(machine, block, exists);
    states = new ControlStates(machine, tool, calls);
    reading = new WordReading(machine, dwell, sides);
    blockLimit = machine.switches.flow().blockLimit();
  }

  Flow flow() {
    return flow;
  }

  Calls calls() {
    return calls;
  }

  /** The whole state now. */
  ControlState state() {
    return states.now();
  }

  /** The words of the block executed last, as understood. */
  List<WordTrace> understood(Block block) {
    return reading.of(block);
  }

  /** Whether the block executed last asks for another block than the next one. */
  boolean leaves() {
    return flow.leave().asked();
  }

  /** Whether M2 or M30 was executed. */
  boolean ended() {
    return ended;
  }

  /** The unit the program's dimensions have. */
  LengthUnit unit() {
    return firstUnit.orElse(machine.switches.reading().powerUpUnit());
  }

  /** Executes a block; the report tells whether it stopped. */
  void execute(Block block) {
    report.begin(block);
    if (block.fault().isPresent()) {
      report.stop(block.fault().get());
      return;
    }
    if (++machine.blockNumber > blockLimit) {
      tooManyBlocks();
    } else if (block.isFlow() || flow.leave().asked()) {
      computed(block);
    } else {
      words(block);
    }
  }

  private void tooManyBlocks() {
    report.add(
        Code.FL25,
        -1,
        "more than " + blockLimit + " blocks executed",
        "the program may never end",
        "check the loops, or raise block-limit");
  }

  /** A statement, or words with values to compute. */
  private void computed(Block block) {
    flow.leave().clear();
    if (block.statement().isPresent()) {
      flow.execute(block.statement().get(), block);
    } else if (block.isFlow()) {
      Block plain = flow.compute(block);
      if (!report.stopped()) {
        report.begin(plain);
        words(plain);
      }
    } else {
      words(block);
    }
  }

  private void words(Block block) {
    if (block.isMacroCall()) {
      macro(block);
      return;
    }
    fed = false;
    axisMoved = false;
    words.decode(block);
    if (report.stopped()) {
      return;
    }
    use.check();
    if (words.isSimple()) {
      simple();
    } else {
      full();
    }
    reliance.afterBlock();
  }

  /** G65 or G66: all other words but G are arguments. */
  private void macro(Block block) {
    Optional<Call> call = calls.macro(block);
    if (report.stopped()) {
      return;
    }
    Block functions = calls.otherFunctions();
    if (functions.size() > 0) {
      report.begin(functions);
      words(functions);
    }
    if (!report.stopped()) {
      call.ifPresent(flow.leave()::call);
    }
  }

  /** Coordinates, arc words, F and a motion function: most blocks of most programs. */
  private void simple() {
    if (!report.stopped()) {
      feed.feedWord();
    }
    if (!report.stopped()) {
      motion();
      modalCall();
    }
  }

  /** Under G66 a motion calls the program. */
  private void modalCall() {
    if (calls.isModal() && axisMoved && !report.stopped()) {
      flow.leave().modalCall();
    }
  }

  private void full() {
    if (!report.stopped()) {
      units();
    }
    if (!report.stopped()) {
      feed.feedMode();
      feed.feedWord();
    }
    if (!report.stopped()) {
      feed.speedWord();
    }
    if (!report.stopped()) {
      registers();
    }
    if (!report.stopped()) {
      changeTool();
    }
    if (!report.stopped()) {
      feed.spindleStart();
      feed.coolantOn();
      dwell.execute();
    }
    if (!report.stopped()) {
      modal();
    }
    if (!report.stopped()) {
      transforms.execute();
    }
    if (!report.stopped()) {
      data.execute();
    }
    if (!report.stopped()) {
      offsets.shift();
    }
    if (!report.stopped()) {
      motion();
    }
    if (!report.stopped()) {
      feed.after(fed);
      sides.afterBlock();
      modalCall();
      stop();
    }
  }

  private void units() {
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
      if (moved) {
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
  private void registers() {
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

  private void changeTool() {
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
    firstZAfterChange = true;
  }

  /** Plane, compensation, length, work offset, distance and centre mode. */
  private void modal() {
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

  private void motion() {
    int code = words.g(GCode.MOTION);
    boolean cycle = code >= CycleKind.FIRST_CODE || !machine.cycle.isQuiet();
    if (cycle && cycles.takes(code)) {
      fed |= cycles.madeHole();
      moved |= cycles.madeHole();
      axisMoved |= cycles.madeHole();
      return;
    }
    if (code >= 0) {
      modes.motion(code / 10);
    }
    int special = words.g(GCode.ONE_BLOCK);
    if (special == 280 || special == 300) {
      reliance.dimension();
      reliance.distance();
      if (aim(true)) {
        returns.toReference(target);
        axisMoved = true;
      }
      return;
    }
    boolean arcs = modes.motion() >= 2;
    boolean called = words.hasAxis() || (arcs && (words.hasCentre() || words.has('R')));
    if (!called && special != 530) {
      return;
    }
    if (words.axisTaker() >= 0) {
      return;
    }
    reliance.dimension();
    if (special == 530) {
      if (!returns.machineTarget(target) || !words.hasAxis()) {
        return;
      }
    } else if (!aim(false)) {
      return;
    }
    reliance.motion();
    move();
  }

  /** Works out where the axis words lead; false after an error. */
  private boolean aim(boolean returning) {
    boolean plain = !machine.frame.transforms().isOn();
    if (!plain) {
      aim.toward(-1, target);
    }
    for (int axis = 0; axis < 3 && plain; axis++) {
      int word = words.axis(axis);
      target[axis] = machine.tip[axis];
      if (word >= 0) {
        double value = machine.dimensions.millimetres(words.block(), word);
        if (modes.absolute()) {
          target[axis] = value + machine.frame.zero(axis);
          machine.assumed[axis] = false;
        } else {
          target[axis] += value;
          aim.fromAssumed(axis, word, value);
        }
      }
    }
    if (!returning && words.has('Z')) {
      firstZ();
    }
    return !report.stopped();
  }

  private void firstZ() {
    int word = words.word('Z');
    if (firstZAfterChange && !modes.absolute()) {
      String text = words.block().text(word);
      report.add(
          Code.MD08,
          word,
          text + " after the tool change is a distance",
          "the tool stands "
              + machine.coordinate(target[2] - machine.frame.zero(2))
              + " above zero, not at "
              + text,
          "write G90");
    }
    firstZAfterChange = false;
  }

  private void move() {
    if (words.has('Z') && words.g(GCode.ONE_BLOCK) != 530) {
      tool.beforeZ(target[2]);
    }
    double x = machine.tip[0];
    double y = machine.tip[1];
    double z = machine.tip[2];
    if (modes.motion() == 0) {
      mover.rapid(target);
    } else if (feed.ready()) {
      tool.beforeCut();
      fed = true;
      feedMove();
    }
    moved = true;
    axisMoved = true;
    if (!modes.absolute() && !report.stopped()) {
      run.moved(x, y, z);
    }
  }

  private void feedMove() {
    if (modes.motion() == 1) {
      mover.line(target);
      return;
    }
    reliance.plane();
    if (arc.solve(target)) {
      mover.arc(arc, target);
    }
  }

  private void stop() {
    int code = words.m(MCode.STOP);
    if (code == 2 || code == 30) {
      Place place = report.place(words.mWord(MCode.STOP));
      finish(place, "M" + code);
      ended = true;
    } else if (code == 98) {
      calls.subprogram().ifPresent(flow.leave()::call);
    } else if (code == 99) {
      flow.leave().returns(calls.returnTarget());
    }
  }

  /** M99 in the main program. */
  void returnsFromMain(Place place) {
    report.add(
        Code.FL27,
        place,
        "M99 in the main program: would run for ever",
        "interpreted once",
        "write M30");
    finish(place, "M99");
  }

  /** The text ends, or another program begins, without M2 or M30. */
  void runsOut(Place place) {
    report.add(
        Code.FL26, place, "program has no end", "spindle and coolant would stay on", "add M30");
    finish(place, "the end");
  }

  private void finish(Place place, String where) {
    ends.atEnd(place, where);
    machine.compensation.finish();
    sides.checkStop();
  }

  /** After a stop: writes the moves before the block that compensation still holds back. */
  void afterStop() {
    if (!machine.compensation.stopped()) {
      machine.compensation.finish();
    }
  }
}
