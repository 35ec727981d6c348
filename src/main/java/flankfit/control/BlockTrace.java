package flankfit.control;

import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.motion.Tape;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What one block meant and did, once.
 *
 * @param outcome whether it was executed
 * @param number number of the executed block, from 1, as the tape counts; 0 when it was not
 *     executed
 * @param place where it stands
 * @param text the block as written, comments included
 * @param level how many calls deep it stands; 0 in the main program
 * @param words its words in order of writing
 * @param steps expressions, assignments, jumps, loops and calls, in order of execution
 * @param before the state that it found
 * @param after the state that it left
 * @param way from where to where the program told the tool to go
 * @param moves its moves, compensated; empty for none
 * @param findings what was found fault with in it, or while it was executed
 */
public record BlockTrace(
    Outcome outcome,
    int number,
    Place place,
    String text,
    int level,
    List<WordTrace> words,
    List<FlowStep> steps,
    ControlState before,
    ControlState after,
    ToldWay way,
    Tape moves,
    List<Finding> findings) {
  /** What became of a block. */
  public enum Outcome {
    EXECUTED("executed"),
    /** An error ended the run in it. */
    STOPPED("stopped"),
    /** Block delete skipped it. */
    DELETED("deleted"),
    /** It stands behind the end, or behind the error that ended the run. */
    NOT_EXECUTED("not executed");

    private final String word;

    Outcome(String word) {
      this.word = word;
    }

    /** The word people and JSON see. */
    public String word() {
      return word;
    }
  }

  public BlockTrace {
    Objects.requireNonNull(outcome, "outcome");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(text, "text");
    words = List.copyOf(words);
    steps = List.copyOf(steps);
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(after, "after");
    Objects.requireNonNull(way, "way");
    Objects.requireNonNull(moves, "moves");
    findings = List.copyOf(findings);
  }

  /** The settings that it changed. */
  public List<ControlSetting> changes() {
    if (before.equals(after)) {
      return List.of();
    }
    List<ControlSetting> changed = new ArrayList<>();
    for (ControlSetting setting : ControlSetting.values()) {
      if (!setting.of(before).equals(setting.of(after))) {
        changed.add(setting);
      }
    }
    return changed;
  }
}
