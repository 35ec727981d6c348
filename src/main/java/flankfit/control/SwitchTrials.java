package flankfit.control;

import flankfit.control.SwitchChoice.Value;
import flankfit.finding.Code;
import flankfit.motion.Tape;
import flankfit.nc.ReadingRules;
import flankfit.nc.SourceText;
import flankfit.setup.ControlSwitches;
import flankfit.setup.SetupSheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Finds the defaults that mattered, by trying: the program is executed again with one switch set
 * otherwise, and the moves are compared. Nothing is tried with switches that cannot matter for the
 * words of the program, nor with numbers and places, of which there is no other value to try (but
 * {@code peck-clearance} and {@code chip-break-retract}, which are doubled). {@code optional-stop}
 * and {@code end-reset} change no move of one run; where {@code arc-turns} and {@code
 * compensation-start-on-arc} at their defaults matter, the program stops.
 */
final class SwitchTrials {
  /** Most blocks of a program that is tried; a trial takes as long as the program. */
  static final int MOST_BLOCKS = 20_000;

  /** Blocks that a trial may execute more than twice those of the program. */
  private static final int FURTHER_BLOCKS = 1000;

  private final SourceText program;
  private final SetupSheet setup;
  private final List<SourceText> subprograms;
  private final int blocks;
  private final Tape tape;

  /**
   * @param blocks number of blocks executed
   * @param tape the moves of a run that nothing stopped
   */
  SwitchTrials(
      SourceText program, SetupSheet setup, List<SourceText> subprograms, int blocks, Tape tape) {
    this.program = program;
    this.setup = setup;
    this.subprograms = subprograms;
    this.blocks = blocks;
    this.tape = tape;
  }

  /** What a trial with a value showed: from which move on the motion is another, and in words. */
  private record Outcome(int move, String word, String told) {}

  /** A switch whose default mattered, in a sentence. */
  private record Mattered(String name, int move, String sentence) {}

  /** Notes the defaults that mattered, by the place where they first did. */
  void report(ReadingRules rules, Assumptions assumptions) {
    if (blocks > MOST_BLOCKS) {
      assumptions.once(
          Code.AS07,
          "",
          "which defaults of [control] matter was not tried: more than "
              + MOST_BLOCKS
              + " blocks were executed",
          "");
      return;
    }
    List<SourceText> texts = new ArrayList<>(List.of(program));
    texts.addAll(subprograms);
    ProgramWords words = ProgramWords.of(texts, rules, tape);
    Map<String, String> set = SetSwitches.of(setup.control());
    List<Mattered> mattered = new ArrayList<>();
    for (SwitchChoice choice : SwitchChoices.ALL) {
      if (!set.containsKey(choice.name())
          && !isTold(choice.name(), assumptions)
          && choice.mayMatter().test(words)) {
        tried(choice).ifPresent(mattered::add);
      }
    }
    mattered.sort(Comparator.comparingInt(Mattered::move));
    mattered.forEach(m -> assumptions.once(Code.AS07, m.name(), m.sentence(), ""));
  }

  /** Whether an assumption of its own tells of the switch. */
  private static boolean isTold(String name, Assumptions assumptions) {
    return (name.equals("rapid-path") && assumptions.has(Code.AS01))
        || (name.equals("number-reading") && assumptions.has(Code.AS03));
  }

  private Optional<Mattered> tried(SwitchChoice choice) {
    List<Outcome> outcomes = new ArrayList<>();
    choice.others().forEach(value -> outcome(value).ifPresent(outcomes::add));
    if (outcomes.isEmpty()) {
      return Optional.empty();
    }
    Outcome first = outcomes.stream().min(Comparator.comparingInt(Outcome::move)).orElseThrow();
    List<String> same =
        outcomes.stream().filter(o -> o.told().equals(first.told())).map(Outcome::word).toList();
    boolean any = same.size() > 1 && same.size() == choice.others().size();
    String sentence =
        choice.name()
            + " = "
            + choice.usual()
            + " (the default; "
            + (any ? "any other" : String.join(" or ", same))
            + " "
            + first.told()
            + ")";
    return Optional.of(new Mattered(choice.name(), first.move(), sentence));
  }

  private Optional<Outcome> outcome(Value value) {
    FinishedRun other = run(value.set().apply(setup.control()));
    OptionalInt difference = TapeDifference.between(tape, other.tape());
    int move = difference.orElse(tape.size());
    if (other.stop().isPresent() && move == other.tape().size()) {
      Stop stop = other.stop().get();
      return Optional.of(
          new Outcome(
              move,
              value.word(),
              "stops the program in line " + stop.line() + " with " + stop.code()));
    }
    if (difference.isEmpty()) {
      return Optional.empty();
    }
    int line = move < tape.size() ? tape.line(move) : other.tape().line(move);
    return Optional.of(new Outcome(move, value.word(), "changes the motion from line " + line));
  }

  private FinishedRun run(ControlSwitches switches) {
    ControlSwitches.Flow f = switches.flow();
    int most = (int) Math.min(f.blockLimit(), 2L * blocks + FURTHER_BLOCKS);
    SetupSheet sheet =
        setup.withControl(
            switches.with(
                new ControlSwitches.Flow(
                    f.callForm(),
                    f.subprograms(),
                    f.fixDown(),
                    f.loopLimit(),
                    most,
                    f.moveLimit(),
                    f.keepsState())));
    return new ProgramRun(program, sheet, subprograms, Optional.empty(), false, true).again();
  }
}
