package flankfit.control;

import flankfit.control.BlockTrace.Outcome;
import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.motion.Tape;
import flankfit.motion.TapeFullException;
import flankfit.nc.Block;
import flankfit.nc.BlockReader;
import flankfit.nc.ReadingRules;
import flankfit.nc.SourceText;
import flankfit.nc.Statement;
import flankfit.setup.ControlSwitches;
import flankfit.setup.ControlSwitches.Semicolon;
import flankfit.setup.SetupSheet;
import java.util.List;
import java.util.Optional;

/** Reads a whole text and executes its main program once, some blocks at a time. */
final class ProgramRun {
  private final SourceText program;
  private final SetupSheet setup;
  private final List<SourceText> subprograms;
  private final ReadingRules rules;
  private final Findings findings = new Findings();
  private final Block block;
  private final BlockReader reader;
  private final Machine machine;
  private final BlockExecutor executor;
  private final BlockRecorder recorder;
  private final PointHabit habit;
  private final SlashedBlocks slashed;
  private final Library library;
  private final ProgramNumbers numbers;
  private Optional<Walk> walk = Optional.empty();
  private boolean done;
  private boolean over;
  private boolean textAfterEnd;
  private boolean otherProgram;
  private boolean firstProgramBegun;

  /**
   * Has executed nothing yet.
   *
   * @param observer is told what each block did; then nothing is to be on the way or plain
   * @param onTheWay whether the file is looked over no farther than it is read; then the run may
   *     turn out to be one of other text than the program's, and one that looks before must follow
   * @param plainRuns whether runs of plain blocks may be executed at once: faster, else alike
   */
  ProgramRun(
      SourceText program,
      SetupSheet setup,
      List<SourceText> subprograms,
      Optional<BlockObserver> observer,
      boolean onTheWay,
      boolean plainRuns) {
    this.program = program;
    this.setup = setup;
    this.subprograms = subprograms;
    ControlSwitches.Reading reading = setup.control().reading();
    rules = new ReadingRules(reading.semicolon() == Semicolon.END_OF_BLOCK, reading.blockDelete());
    block = new Block(program);
    reader =
        onTheWay
            ? BlockReader.onTheWay(program, rules, findings)
            : new BlockReader(program, rules, findings);
    FlowLog log = new FlowLog(observer.isPresent());
    machine = new Machine(setup, findings, block, program.file(), program.likelyLines(), log);
    library = new Library(program, subprograms, rules, machine.report, this::readWhole);
    executor = new BlockExecutor(machine, block, library::has, plainRuns);
    recorder = new BlockRecorder(observer, machine, executor, findings);
    numbers = new ProgramNumbers(program.file(), findings);
    habit = new PointHabit(reading.numbers());
    slashed = new SlashedBlocks(reading.blockDelete());
  }

  /** Whether nothing is left to execute or to read. */
  boolean isDone() {
    return done;
  }

  /** Whether what was executed is not the program; then nothing of this run counts. */
  boolean beginsElsewhere() {
    return reader.beginsElsewhere();
  }

  /** How much of the text has been read, from 0 to 1 (1). */
  double share() {
    return done ? 1 : reader.share();
  }

  /** Number of blocks executed so far. */
  int blocks() {
    return machine.blockNumber;
  }

  /** The moves so far; does not change. */
  Tape tape() {
    return machine.tape.soFar();
  }

  /** Goes on by so many blocks at most, counting those only read. */
  void advance(int most) {
    int left = most;
    try {
      while (left > 0 && !done) {
        left -= walk.isPresent() ? walk(walk.get(), left) : read(left);
      }
    } catch (TapeFullException full) {
      tooManyMoves();
      recorder.executed(machine.words.block());
      recorder.end();
      readOn();
      done = true;
    }
  }

  /** Goes on to the end. */
  void advanceToEnd() {
    while (!done) {
      advance(Integer.MAX_VALUE);
    }
  }

  private void tooManyMoves() {
    machine.report.add(
        Code.FL32,
        machine.report.place(),
        "more than " + setup.control().flow().moveLimit() + " moves",
        "the path would not fit in memory; an arc counts as two",
        "check loops, repeats and pecks, or raise move-limit");
  }

  /**
   * What the program does, and what comes of further runs: of a second one from the state it left,
   * and of trials with other switches. The run must be done; one of the results is asked for, once.
   */
  Interpretation result() {
    return result(true, true);
  }

  /** The same without trials. */
  Interpretation resultUntried() {
    return result(true, false);
  }

  /** What the program does, and nothing that takes further runs. */
  Interpretation resultAlone() {
    return result(false, false);
  }

  private Interpretation result(boolean twice, boolean tried) {
    if (reader.refused()) {
      machine.report.stop(1, Code.RD01);
    }
    habit.report(findings, machine.assumptions);
    slashed.report(findings);
    Tape tape = machine.tape.finish();
    machine.assumptions.ofMotion(tape);
    machine.assumptions.ofSwitches(setup.control());
    Optional<Stop> stop = machine.report.stop();
    if (twice && stop.isEmpty() && setup.control().flow().keepsState()) {
      new SecondRun(program, setup, subprograms, finished(tape)).report(findings);
    }
    if (tried && stop.isEmpty()) {
      new SwitchTrials(program, setup, subprograms, machine.blockNumber, tape)
          .report(rules, machine.assumptions);
    }
    recorder.finish();
    return new Interpretation(
        program.file(),
        executor.unit(),
        machine.blockNumber,
        tape,
        findings.sorted(),
        machine.assumptions.after(setup.assumptions()),
        machine.settings,
        stop.isEmpty(),
        stop);
  }

  /** Executes without a word of what it finds. */
  FinishedRun again() {
    advanceToEnd();
    return finished();
  }

  /** What this run would leave if it ended here. */
  FinishedRun finished() {
    return finished(machine.tape.build());
  }

  private FinishedRun finished(Tape tape) {
    return new FinishedRun(
        machine, executor.flow().variables(), executor.calls(), tape, machine.report.stop());
  }

  /** Executes what is plain, then reads a block and executes it; gives how many it was. */
  private int read(int most) {
    int before = machine.blockNumber;
    if (!over && habit.knowsPoint() && executor.mayRunPlain()) {
      executor.plain().run(reader, block, most);
    }
    int plain = machine.blockNumber - before;
    if (plain < most) {
      if (reader.next(block)) {
        readBlock();
      } else {
        endOfText();
      }
    }
    return plain + 1;
  }

  private void readBlock() {
    if (block.programNumber() >= 0) {
      numbers.found(block, firstProgramBegun);
      begins();
    }
    look(block);
    if (over) {
      afterEnd();
      if (!otherProgram) {
        recorder.passedOver(block, Outcome.NOT_EXECUTED);
      }
    } else if (block.deleted()) {
      recorder.passedOver(block, Outcome.DELETED);
    } else {
      execute();
      if (executor.leaves()) {
        beginWalk();
      } else {
        recorder.end();
      }
    }
  }

  private void endOfText() {
    done = true;
    if (!over && !reader.refused() && !reader.beginsElsewhere()) {
      executor.runsOut(new Place(program.file(), Math.max(1, program.lineCount()), 0, 0));
    }
  }

  private void look(Block read) {
    if (read.deleteLevel() > 0) {
      slashed.add(read);
    }
    habit.look(read);
  }

  private void execute() {
    firstProgramBegun = true;
    recorder.begin(0);
    executor.execute(block);
    recorder.executed(block);
    if (machine.report.stopped()) {
      executor.afterStop();
      over = true;
      textAfterEnd = true;
    } else if (executor.ended()) {
      over = true;
    }
  }

  /** From here on blocks are executed in another order than they stand; read the rest first. */
  private void beginWalk() {
    Block first = block.copy();
    Spot next = Spot.of(reader);
    readOn();
    if (reader.beginsElsewhere()) {
      done = true;
      return;
    }
    recorder.readAhead();
    findings.onceEach();
    machine.report.begin(first);
    Walk begun = new Walk(machine, executor, library, recorder);
    walk = Optional.of(begun);
    begun.begin(first, next);
  }

  /** Goes on in another order; gives how many blocks it was. */
  private int walk(Walk walking, int most) {
    int count = 0;
    while (count < most && !walking.isOver()) {
      int before = machine.blockNumber;
      walking.step(most - count);
      count += Math.max(1, machine.blockNumber - before);
    }
    if (count > 0) {
      return count;
    }
    done = true;
    if (machine.report.stopped()) {
      executor.afterStop();
      afterStop(walking.file());
    } else if (executor.ended()) {
      afterEnd(walking.file());
    }
    return 1;
  }

  /** The blocks behind the one that stopped are told as not executed. */
  private void afterStop(ProgramFile file) {
    recorder.release();
    while (file.next() && file.block().programNumber() < 0) {
      recorder.passedOver(file.block(), Outcome.NOT_EXECUTED);
    }
  }

  /** Reads the rest of the text for its findings of reading. */
  private void readOn() {
    while (reader.next(block)) {
      if (block.programNumber() >= 0) {
        numbers.found(block, firstProgramBegun);
      }
      look(block);
    }
  }

  /** RD23 for words after M2 or M30 that no jump and no loop leads to. */
  private void afterEnd(ProgramFile file) {
    while (file.next()) {
      Block after = file.block();
      boolean loop = after.statement().filter(Statement::isLoop).isPresent();
      if (after.programNumber() >= 0 || after.sequence() >= 0 || loop) {
        return;
      }
      if (after.size() > 0) {
        wordsAfterEnd(after);
        return;
      }
    }
  }

  /** Reads a subprogram file for its findings of reading. */
  private void readWhole(SourceText text) {
    Block read = new Block(text);
    BlockReader whole = new BlockReader(text, rules, findings);
    if (whole.refused()) {
      machine.report.stop(Code.RD01);
    }
    while (whole.next(read)) {
      look(read);
    }
    recorder.readAhead();
  }

  /** The first program number begins the main program, a later one ends it. */
  private void begins() {
    if (firstProgramBegun && !over) {
      executor.runsOut(block.programPlace());
      over = true;
    }
    textAfterEnd = over;
    otherProgram = over;
  }

  /** RD23 for words after the end that belong to no other program. */
  private void afterEnd() {
    if (!textAfterEnd && block.size() > 0) {
      textAfterEnd = true;
      wordsAfterEnd(block);
    }
  }

  private void wordsAfterEnd(Block words) {
    findings.add(
        Code.RD23,
        words.place(),
        "text after the end of the program",
        "it is never executed",
        "delete it, or give it an O number");
  }
}
