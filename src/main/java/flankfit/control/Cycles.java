package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Place;
import flankfit.finding.Severity;

/** Runs of drilling and boring cycles: which block makes holes, and how a run ends. */
final class Cycles {
  private static final double NEAR = 1e-9;

  private final Machine machine;
  private final BlockWords words;
  private final Modes modes;
  private final Report report;
  private final CycleState state;
  private final CycleWords cycleWords;
  private final CycleMoves moves;
  private final CompensationWords sides;
  private final ToolAndLength tool;
  private final Reliance reliance;
  private final IncrementalRun run;
  private final Aim aim;
  private final double[] at = new double[3];
  private boolean madeHole;

  Cycles(
      Machine machine,
      FeedAndSpindle feed,
      Mover mover,
      Dwell dwell,
      CompensationWords sides,
      ToolAndLength tool,
      Reliance reliance,
      IncrementalRun run) {
    this.machine = machine;
    this.words = machine.words;
    this.modes = machine.modes;
    this.report = machine.report;
    this.state = machine.cycle;
    this.sides = sides;
    this.tool = tool;
    this.reliance = reliance;
    this.run = run;
    cycleWords = new CycleWords(machine, feed, dwell);
    moves = new CycleMoves(machine, mover);
    aim = new Aim(machine);
  }

  /** Whether the last block that was taken made a hole. */
  boolean madeHole() {
    return madeHole;
  }

  /**
   * Executes the motion of the block when it is a cycle's.
   *
   * @param code motion function of the block, times ten; -1 for none
   * @return whether nothing is left to do for the motion of the block
   */
  boolean takes(int code) {
    madeHole = false;
    if (code >= 0 && code < CycleKind.FIRST_CODE) {
      motionStated(code);
      return false;
    }
    if (words.g(GCode.CYCLE_END) >= 0 && state.isOn()) {
      state.end(true);
    }
    if (code >= CycleKind.FIRST_CODE) {
      named(CycleKind.of(code));
      return true;
    }
    boolean others = words.axisTaker() >= 0 || words.g(GCode.ONE_BLOCK) == 530;
    if (state.isOn()) {
      if (!others) {
        block(false);
      }
      return !others;
    }
    if (words.hasAxis() && words.axisTaker() < 0) {
      motionAfterEnd();
    }
    return report.stopped();
  }

  private void motionStated(int code) {
    if (state.isOn() && words.g(GCode.CYCLE_END) < 0) {
      report.add(
          Code.CY11,
          words.gWord(GCode.MOTION),
          "cycle ended by " + GCode.text(code),
          "",
          "G80 makes it visible");
    }
    state.end(false);
  }

  private void motionAfterEnd() {
    state.end(false);
    String motion = "G" + modes.motion();
    String what = "motion after G80 without G0 or G1";
    if (machine.switches.cycles().axisWordsAfterG80AreError()) {
      report.addAndStop(Code.CY10, -1, what, "after-g80 = error", "write " + motion);
    } else {
      report.add(
          Code.CY10,
          Severity.WARNING,
          report.place(),
          what,
          motion + " comes back into force",
          "write " + motion);
    }
  }

  private void named(CycleKind kind) {
    if (!state.isOn()) {
      state.begin(machine.tip[modes.plane().n()]);
    }
    state.kind(kind);
    modes.cycleStated();
    if (kind == CycleKind.G88) {
      report.add(
          Code.CY18,
          words.gWord(GCode.MOTION),
          "hand retract drawn as a rapid to R",
          "the operator moves the axis",
          "none needed");
    }
    block(true);
  }

  private void block(boolean named) {
    if (!named && !words.hasAxis() && !words.has('R') && !hasData()) {
      return;
    }
    CycleKind kind = state.kind().orElseThrow();
    reliance.dimension();
    reliance.plane();
    if (!allowed()) {
      return;
    }
    cycleWords.read(kind, moves.initial());
    int repeats = report.stopped() ? 0 : cycleWords.repeats(kind);
    backBoreReturn(kind, named);
    if (!words.hasAxis() && !words.has('R')) {
      if (named && !report.stopped()) {
        cycleWords.noHole();
      }
    } else if (repeats > 0) {
      reliance.motion();
      if (cycleWords.complete(kind)) {
        holes(kind, repeats);
      }
    }
  }

  private boolean hasData() {
    return words.has('Q') || words.has('P') || words.hasCentre();
  }

  private void backBoreReturn(CycleKind kind, boolean named) {
    boolean said = named || words.g(GCode.RETURN_LEVEL) >= 0;
    boolean alwaysInitial = !machine.switches.cycles().backBoreFromDepth();
    if (kind == CycleKind.G87 && said && state.returnsToClearance() && alwaysInitial) {
      int level = words.gWord(GCode.RETURN_LEVEL);
      report.add(
          Code.CY14,
          level >= 0 ? level : words.gWord(GCode.MOTION),
          "G99 with back boring",
          "it always returns to the initial level",
          "write G98");
    }
  }

  private boolean allowed() {
    int word = words.gWord(GCode.MOTION);
    if (!sides.offFor(Code.RC25, word, "cycle")) {
      return false;
    }
    if (machine.frame.transforms().isScaled()) {
      report.add(
          Code.OF20,
          word,
          "cycle under scaling",
          "controls differ about its depths",
          "write G50 first");
    } else if (modes.feedMode() == 930) {
      report.add(Code.CY16, word, "cycle with inverse time", "", "write G94");
    }
    return !report.stopped();
  }

  private void holes(CycleKind kind, int repeats) {
    int n = modes.plane().n();
    double[] before = machine.tip.clone();
    aim.toward(n, at);
    if (!modes.absolute() && words.has('R')) {
      aim.fromAssumed(n, words.word('R'), state.clearance() - moves.initial());
    }
    machine.assumed[n] = false;
    if (report.stopped()) {
      return;
    }
    double[] step = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      step[axis] = modes.absolute() ? 0 : at[axis] - before[axis];
    }
    samePlace(repeats, step);
    announce(n);
    boolean fromBelow = kind == CycleKind.G87 && !machine.switches.cycles().backBoreFromDepth();
    if (!fromBelow && moves.level() < state.clearance() - NEAR) {
      startsBelow();
    }
    for (int i = 0; i < repeats; i++) {
      moves.hole(kind, at);
      for (int axis = 0; axis < 3; axis++) {
        at[axis] += step[axis];
      }
    }
    madeHole = true;
    if (!modes.absolute()) {
      run.moved(before[0], before[1], before[2]);
    }
  }

  private void announce(int n) {
    if (words.has('Z')) {
      tool.beforeZ(n == 2 ? machine.frame.level(2, state.depth()) : at[2]);
    }
    tool.beforeCut();
  }

  private void samePlace(int repeats, double[] step) {
    if (repeats > 1 && Math.hypot(Math.hypot(step[0], step[1]), step[2]) < NEAR) {
      int word = words.has('L') ? words.word('L') : words.word('K');
      report.add(Code.CY12, word, repeats + " times in the same place", "", "G91, or one");
    }
  }

  private void startsBelow() {
    report.add(
        Code.CY13,
        words.word('R'),
        "cycle starts at "
            + machine.coordinate(moves.level())
            + ", below R "
            + machine.coordinate(state.clearance()),
        "the tool first rises",
        "start above");
    moves.rapidTo(state.clearance());
  }

  /** CY15 at a tool change or at the end. */
  void left(Place place, String where) {
    if (state.isOn() && !words.endsCycle()) {
      report.add(Code.CY15, place, "cycle still on at " + where, "", "write G80");
    }
  }
}
