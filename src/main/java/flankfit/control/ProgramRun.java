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
  private final Findings findings = new Findings();
  private final Block block;
  private final BlockReader reader;
  private final Machine machine;
  private final BlockExecutor executor;
  private final PointHabit habit;
  private final SlashedBlocks slashed;
  private final Map<Integer, Integer> programLines = new HashMap<>();
  private boolean over;
  private boolean textAfterEnd;
  private boolean firstProgramBegun;
  private boolean wordsBeforeNumber;

  ProgramRun(SourceText program, SetupSheet setup) {
    this.program = program;
    this.setup = setup;
    ControlSwitches.Reading reading = setup.control().reading();
    ReadingRules rules =
        new ReadingRules(reading.semicolon() == Semicolon.END_OF_BLOCK, reading.blockDelete());
    block = new Block(program);
    reader = new BlockReader(program, rules, findings);
    machine = new Machine(setup, findings, block, program.file(), reader.likelyBlocks());
    executor = new BlockExecutor(machine);
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
    while (reader.next(block)) {
      if (block.programNumber() >= 0) {
        begins();
      }
      if (block.deleteLevel() > 0) {
        slashed.add(block);
      }
      habit.look(block);
      if (over) {
        afterEnd();
      } else if (!block.deleted()) {
        execute();
      }
    }
    if (!over) {
      executor.runsOut(new Place(program.file(), Math.max(1, program.lineCount()), 0, 0));
    }
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

  /** A program number: the first begins the main program, a later one ends it. */
  private void begins() {
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
      findings.add(
          Code.RD23,
          block.place(),
          "text after the end of the program",
          "it is never executed",
          "delete it, or give it an O number");
    }
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
