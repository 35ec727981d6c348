package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.setup.ControlSwitches;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What was assumed, each once. */
final class Assumptions {
  private final Findings findings;
  private final Place file;
  private final Set<String> seen = new HashSet<>();
  private final List<String> sentences = new ArrayList<>();

  Assumptions(Findings findings, String file) {
    this.findings = findings;
    this.file = Place.file(file);
  }

  /**
   * Notes an assumption unless it was noted before.
   *
   * @param about what tells apart two assumptions of one code
   */
  void once(Code code, String about, String what, String why) {
    if (seen.add(code + about)) {
      findings.add(code, file, what, why, "");
      sentences.add(what);
    }
  }

  /** Whether an assumption was noted that nothing tells apart from others of its code. */
  boolean has(Code code) {
    return seen.contains(code.toString());
  }

  /** Notes what holds of all motion at feed. */
  void ofMotion(Tape tape) {
    for (int move = 0; move < tape.size(); move++) {
      if (tape.kind(move) == MoveKind.LINE || tape.kind(move) == MoveKind.ARC) {
        once(Code.AS02, "", "corner rounding and acceleration are not modelled", "");
        break;
      }
    }
  }

  /** Notes each switch that the sheet sets. */
  void ofSwitches(ControlSwitches control) {
    SetSwitches.of(control)
        .forEach((name, value) -> once(Code.AS07, name, name + " = " + value, ""));
  }

  /** Those of the sheet and, after them, what they do not say yet. */
  List<String> after(List<String> sheet) {
    List<String> all = new ArrayList<>(sheet);
    for (String sentence : sentences) {
      int equals = sentence.indexOf(" = ");
      String name = equals < 0 ? "" : sentence.substring(0, equals + 3);
      if (all.stream().noneMatch(k -> equals < 0 ? k.contains(sentence) : k.startsWith(name))) {
        all.add(sentence);
      }
    }
    return all;
  }
}
