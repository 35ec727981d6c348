package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.nc.Block;
import flankfit.nc.BlockReader;
import flankfit.nc.ReadingRules;
import flankfit.nc.SourceText;
import flankfit.nc.Statement;
import flankfit.setup.ControlSwitches;
import flankfit.setup.ControlSwitches.Semicolon;
import flankfit.setup.SetupSheet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a whole text and executes its main program once. */
final class ProgramRun {
  private final SourceText program;
  private final SetupSheet setup;
  private final ReadingRules rules;
  private final Findings findings = new Findings();
  private final Block block;
  private final BlockReader reader;
  private final Machine machine;
  private final BlockExecutor executor;
  private final PointHabit habit;
  private final SlashedBlocks slashed;
  private final Library library;
  private final Map<Integer, Integer> programLines = new HashMap<>();
  private final boolean plainRuns;
  private boolean over;
  private boolean textAfterEnd;
  private boolean firstProgramBegun;
  private boolean wordsBeforeNumber;

  /**
   * @param plainRuns whether runs of plain blocks may be executed at once: faster, else alike
   */
  ProgramRun(
      SourceText program, SetupSheet setup, List<SourceText> subprograms, boolean plainRuns) {
    this.program = program;
    this.plainRuns = plainRuns;
    this.setup = setup;
    ControlSwitches.Reading reading = setup.control().reading();
    rules = new ReadingRules(reading.semicolon() == Semicolon.END_OF_BLOCK, reading.blockDelete());
    block = new Block(program);
    reader = new BlockReader(program, rules, findings);
    machine = new Machine(setup, findings, block, program.file(), reader.likelyBlocks());
    library = new Library(program, subprograms, rules, machine.report, this::readWhole);
    executor = new BlockExecutor(machine, block, library::has);
    habit = new PointHabit(reading.numbers());
    slashed = new SlashedBlocks(reading.blockDelete());
  }

  Interpretation run() {
    if (reader.refused()) {
      machine.report.stop(1, Code.RD01);
    } else {
      blocks();
    }
    habit.report(findings, machine.assumptions);
    slashed.report(findings);
    Tape tape = machine.tape.build();
    assume(tape);
    Optional<Stop> stop = machine.report.stop();
    return new Interpretation(
        program.file(),
        executor.unit(),
        machine.blockNumber,
        tape,
        findings.sorted(),
        assumptions(),
        stop.isEmpty(),
        stop);
  }

  private void blocks() {
    while (readsOn()) {
      if (block.programNumber() >= 0) {
        number();
        begins();
      }
      look(block);
      if (over) {
        afterEnd();
      } else if (!block.deleted()) {
        execute();
        if (executor.leaves()) {
          walk();
          return;
        }
      }
    }
    if (!over) {
      executor.runsOut(new Place(program.file(), Math.max(1, program.lineCount()), 0, 0));
    }
  }

  /** Executes what is plain, and reads the first block that is not. */
  private boolean readsOn() {
    if (plainRuns && !over && habit.knowsPoint() && executor.mayRunPlain()) {
      executor.plain().run(reader, block, Integer.MAX_VALUE);
    }
    return reader.next(block);
  }

  private void look(Block read) {
    if (read.deleteLevel() > 0) {
      slashed.add(read);
    }
    habit.look(read);
  }

  private void execute() {
    firstProgramBegun = true;
    executor.execute(block);
    if (machine.report.stopped()) {
      executor.afterStop();
      over = true;
      textAfterEnd = true;
    } else if (executor.ended()) {
      over = true;
    }
  }

  /** From here on blocks are executed in another order than they stand; read the rest first. */
  private void walk() {
    Block first = block.copy();
    Spot next = Spot.of(reader);
    while (reader.next(block)) {
      if (block.programNumber() >= 0) {
        number();
      }
      look(block);
    }
    findings.onceEach();
    machine.report.begin(first);
    Walk walk = new Walk(machine, executor, library);
    walk.run(first, next);
    if (machine.report.stopped()) {
      executor.afterStop();
    } else if (executor.ended()) {
      afterEnd(walk.file());
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
  }

  /** FL21 and RD22 for a program number. */
  private void number() {
    int number = block.programNumber();
    Integer before = programLines.putIfAbsent(number, block.line());
    if (before != null) {
      findings.add(
          Code.FL21,
          block.programPlace(),
          "O" + number + " stands twice (line " + before + ")",
          "a call would be ambiguous",
          "renumber");
    }
    if (firstProgramBegun && programLines.size() == 1 && before == null) {
      wordsBeforeNumber = true;
    }
    if (wordsBeforeNumber) {
      wordsBeforeNumber = false;
      findings.add(
          Code.RD22,
          new Place(program.file(), 1, 0, 0),
          "program number missing in a file with several programs",
          "older controls know four digits",
          "none needed");
    }
  }

  /** The first program number begins the main program, a later one ends it. */
  private void begins() {
    if (firstProgramBegun && !over) {
      executor.runsOut(block.programPlace());
      over = true;
    }
    textAfterEnd = over;
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

  private void assume(Tape tape) {
    for (int move = 0; move < tape.size(); move++) {
      if (tape.kind(move) == MoveKind.LINE || tape.kind(move) == MoveKind.ARC) {
        machine.assumptions.once(
            Code.AS02, "", "corner rounding and acceleration are not modelled", "");
        break;
      }
    }
    SetSwitches.of(setup.control())
        .forEach(
            (name, value) -> machine.assumptions.once(Code.AS07, name, name + " = " + value, ""));
  }

  private List<String> assumptions() {
    List<String> all = new ArrayList<>(setup.assumptions());
    for (String sentence : machine.assumptions.sentences()) {
      String about =
          sentence.contains(" = ") ? sentence.substring(0, sentence.indexOf(" = ")) : sentence;
      if (all.stream().noneMatch(known -> known.contains(about))) {
        all.add(sentence);
      }
    }
    return all;
  }
}
