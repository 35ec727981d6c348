package flankfit.window;

import flankfit.check.ProgramCheck;
import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.finding.Finding;
import flankfit.lesson.LeftOut;
import flankfit.lesson.Parting;
import flankfit.motion.Tape;
import flankfit.picture.Figures;
import flankfit.setup.ControlSwitches;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What happens when one mode word is left out: the program is executed without it and compared with
 * the right one.
 *
 * @param left what was left out
 * @param which which of the words that could be meant it is, from 1
 * @param choices how many there are
 * @param parting where both paths part
 * @param path the path without the word
 * @param raised findings that only the program without the word raises
 * @param stops line at which its run stops; 0 if it runs to its end
 */
record Accident(
    LeftOut left,
    int which,
    int choices,
    Parting parting,
    Tape path,
    List<Finding> raised,
    int stops) {
  Accident {
    Objects.requireNonNull(left, "left");
    Objects.requireNonNull(parting, "parting");
    Objects.requireNonNull(path, "path");
    raised = List.copyOf(raised);
  }

  /** A mode word of a line. */
  private record Candidate(int line, String word) {
    Candidate {
      Objects.requireNonNull(word, "word");
    }
  }

  /**
   * Leaves a word out: the mode word in force, or one of those of the line itself.
   *
   * @param known findings of the right program
   * @param line line of the block that is looked at
   * @param since line of the distance mode word in force; 0 for none
   * @param choice which of the words, from 0; beyond the last one it begins anew
   * @return empty if there is no such word
   */
  static Optional<Accident> of(
      ProgramSource.Text text, List<Finding> known, int line, int since, int choice) {
    ControlSwitches.Reading reading = text.setup().control().reading();
    List<Candidate> candidates = new ArrayList<>();
    if (since > 0) {
      LeftOut.of(text.program(), reading, since, Optional.empty())
          .ifPresent(l -> candidates.add(new Candidate(since, l.word())));
    }
    for (String word : LeftOut.words(text.program(), reading, line)) {
      Candidate own = new Candidate(line, word);
      if (!candidates.contains(own)) {
        candidates.add(own);
      }
    }
    if (candidates.isEmpty()) {
      return Optional.empty();
    }
    int at = Math.floorMod(choice, candidates.size());
    Candidate meant = candidates.get(at);
    return LeftOut.of(text.program(), reading, meant.line(), Optional.of(meant.word()))
        .map(left -> of(text, known, left, at + 1, candidates.size()));
  }

  private static Accident of(
      ProgramSource.Text text, List<Finding> known, LeftOut left, int which, int choices) {
    Interpretation done =
        ProgramCheck.checked(
            Interpreter.interpretUntried(left.text(), text.setup(), text.subprograms()),
            text.setup());
    Set<String> before = new HashSet<>();
    known.forEach(f -> before.add(f.code() + ":" + f.place().line()));
    List<Finding> raised = new ArrayList<>();
    for (Finding finding : done.findings()) {
      if (before.add(finding.code() + ":" + finding.place().line())) {
        raised.add(finding);
      }
    }
    return new Accident(
        left,
        which,
        choices,
        Parting.of(text.program(), left, text.setup(), text.subprograms()),
        done.tape(),
        raised,
        done.stoppedAt().map(place -> place.line()).orElse(0));
  }

  /** What was left out, in words. */
  String headline() {
    String more = choices > 1 ? "  (" + which + " of " + choices + ": Shift+W the next)" : "";
    return "without " + left.word() + " of line " + left.place().line() + more;
  }

  /** What comes of it, in a sentence. */
  String tale(LengthUnit unit) {
    String stop = stops > 0 ? "; the run stops at line " + stops : "";
    String order =
        parting
            .otherOrder()
            .map(place -> "; from line " + place.line() + " on other blocks are executed")
            .orElse("");
    if (parting.first().isEmpty()) {
      return (Math.abs(parting.seconds()) > 1e-3
              ? "the same way, in " + Figures.fixed(parting.seconds(), 1) + " s more"
              : "the tool goes the same way")
          + order
          + stop;
    }
    return "the paths part at line "
        + parting.first().get().line()
        + "; farthest apart after line "
        + parting.at().line()
        + ", "
        + Figures.lengthWithUnit(parting.greatest(), unit)
        + "; at the end "
        + Figures.lengthWithUnit(parting.last(), unit)
        + order
        + stop;
  }

  /**
   * The last move that its run made for a block of the right one.
   *
   * @param number number of the block in the right run
   * @param line its line
   * @return empty if it made none
   */
  OptionalInt move(int number, int line) {
    // The block that held nothing else is gone, and with it one number each time it was executed.
    for (int wanted = number; wanted > 0 && wanted >= number - 8; wanted--) {
      int at = lastOf(wanted);
      if (at >= 0 && path.block(at) == wanted && path.line(at) == line) {
        return OptionalInt.of(at);
      }
    }
    return OptionalInt.empty();
  }

  /** The last move of a block or of those before it; -1 for none. */
  private int lastOf(int number) {
    int low = -1;
    int high = path.size() - 1;
    while (low < high) {
      int middle = low + (high - low + 1) / 2;
      if (path.block(middle) <= number) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }
}
