package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.finding.Place;
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

  List<String> sentences() {
    return sentences;
  }
}
