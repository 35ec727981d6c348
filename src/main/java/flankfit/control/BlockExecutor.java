package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Place;
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
  private final Machine machine;
  private final BlockWords words;
  private final Report report;
  private final WordUse use;
  private final FeedAndSpindle feed;
  private final CompensationWords sides;
  private final Dwell dwell;
  private final WorkOffsets offsets;
  private final ToolAndLength tool;
  private final Reliance reliance;
  private final PlainRun plain;
  private final EndChecks ends;
  private final TransformWords transforms;
  private final DataSetting data;
  private final AxisMotion motion;
  private final ModalFunctions modal;
  private final Flow flow;
  private final Calls calls;
  private final ControlStates states;
  private final WordReading reading;
  private final int blockLimit;
  private final boolean plainRuns;
  private boolean ended;

  /**
   * @param block a block of the text that is executed first
   * @param exists whether there is a program of a number
   * @param plainRuns whether plain and computed coordinates may be executed by {@link PlainRun}:
   *     faster, else alike
   */
  BlockExecutor(Machine machine, Block block, IntPredicate exists, boolean plainRuns) {
    this.machine = machine;
    this.plainRuns = plainRuns;
    words = machine.words;
    report = machine.report;
    use = new WordUse(machine);
    feed = new FeedAndSpindle(machine);
    sides = new CompensationWords(machine);
    Mover mover = new Mover(machine, feed, sides);
    dwell = new Dwell(machine, mover);
    tool = new ToolAndLength(machine);
    offsets = new WorkOffsets(machine, sides);
    ReturnMoves returns = new ReturnMoves(machine, sides, mover, tool);
    reliance = new Reliance(machine);
    IncrementalRun run = new IncrementalRun(machine);
    plain = new PlainRun(machine, feed, mover, run);
    transforms = new TransformWords(machine, sides);
    data = new DataSetting(machine, sides, tool);
    Cycles cycles = new Cycles(machine, feed, mover, dwell, sides, tool, reliance, run);
    ends = new EndChecks(machine, offsets, sides, run, transforms, cycles);
    flow = new Flow(machine, block);
    calls = new Calls(machine, block, exists);
    states = new ControlStates(machine, tool, calls);
    reading = new WordReading(machine, dwell, sides);
    motion = new AxisMotion(machine, feed, mover, tool, returns, reliance, run, cycles);
    modal =
        new ModalFunctions(
            machine,
            feed,
            sides,
            mover,
            tool,
            offsets,
            reliance,
            run,
            transforms,
            calls,
            ends,
            motion);
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

  /** Whether runs of plain blocks may be executed at once. */
  boolean mayRunPlain() {
    return plainRuns
        && motion.isSettled()
        && tool.isSettled()
        && reliance.isSettled()
        && !calls.isModal()
        && plain.mayRun();
  }

  /** What executes runs of plain blocks. */
  PlainRun plain() {
    return plain;
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
    return modal.unit();
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
      boolean point = block.isComputedPoint() && mayRunPlain();
      if (point && plain.computed(block, flow)) {
        return;
      }
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
    motion.begin();
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
      motion.execute();
      modalCall();
    }
  }

  /** Under G66 a motion calls the program. */
  private void modalCall() {
    if (calls.isModal() && motion.axisMoved() && !report.stopped()) {
      flow.leave().modalCall();
    }
  }

  private void full() {
    if (!report.stopped()) {
      modal.units();
    }
    if (!report.stopped()) {
      feed.feedMode();
      feed.feedWord();
    }
    if (!report.stopped()) {
      feed.speedWord();
    }
    if (!report.stopped()) {
      modal.registers();
    }
    if (!report.stopped()) {
      modal.changeTool();
    }
    if (!report.stopped()) {
      feed.spindleStart();
      feed.coolantOn();
      dwell.execute();
    }
    if (!report.stopped()) {
      modal.execute();
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
      motion.execute();
    }
    if (!report.stopped()) {
      feed.after(motion.fed());
      sides.afterBlock();
      modalCall();
      stop();
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
