package flankfit.control;

import flankfit.finding.Code;

/** The motion of a block: where its axis words lead, and the move there. */
final class AxisMotion {
  private final Machine machine;
  private final Modes modes;
  private final BlockWords words;
  private final Report report;
  private final FeedAndSpindle feed;
  private final Mover mover;
  private final ArcSolver arc;
  private final ToolAndLength tool;
  private final ReturnMoves returns;
  private final Reliance reliance;
  private final IncrementalRun run;
  private final Cycles cycles;
  private final Aim aim;
  private final double[] target = new double[3];
  private boolean firstZAfterChange;
  private boolean everMoved;
  private boolean fed;
  private boolean axisMoved;

  AxisMotion(
      Machine machine,
      FeedAndSpindle feed,
      Mover mover,
      ToolAndLength tool,
      ReturnMoves returns,
      Reliance reliance,
      IncrementalRun run,
      Cycles cycles) {
    this.machine = machine;
    this.feed = feed;
    this.mover = mover;
    this.tool = tool;
    this.returns = returns;
    this.reliance = reliance;
    this.run = run;
    this.cycles = cycles;
    modes = machine.modes;
    words = machine.words;
    report = machine.report;
    arc = new ArcSolver(machine);
    aim = new Aim(machine);
  }

  /** Another block begins: it has not moved yet. */
  void begin() {
    fed = false;
    axisMoved = false;
  }

  /** Whether the block made a feed motion. */
  boolean fed() {
    return fed;
  }

  /** Whether the block moved an axis or made a hole. */
  boolean axisMoved() {
    return axisMoved;
  }

  /** Whether any block has moved by axis words or made a hole. */
  boolean everMoved() {
    return everMoved;
  }

  /** The first Z after this is looked at. */
  void toolChanged() {
    firstZAfterChange = true;
  }

  /** Whether the first Z after a tool change has been looked at. */
  boolean isSettled() {
    return everMoved && !firstZAfterChange;
  }

  /** Executes the motion or cycle of the block. */
  void execute() {
    int code = words.g(GCode.MOTION);
    boolean cycle = code >= CycleKind.FIRST_CODE || !machine.cycle.isQuiet();
    if (cycle && cycles.takes(code)) {
      fed |= cycles.madeHole();
      everMoved |= cycles.madeHole();
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
    everMoved = true;
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
}
