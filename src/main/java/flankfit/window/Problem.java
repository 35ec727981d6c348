package flankfit.window;

import flankfit.finding.Finding;
import java.util.List;
import java.util.Objects;

/**
 * What went wrong, as a person wants to read it.
 *
 * @param what what went wrong, as one clause
 * @param where file and line; may be empty
 * @param why the reason; may be empty
 * @param fix what to do about it; may be empty
 */
record Problem(String what, String where, String why, String fix) {
  Problem {
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(where, "where");
    Objects.requireNonNull(why, "why");
    Objects.requireNonNull(fix, "fix");
  }

  /** Findings as problems. */
  static List<Problem> all(List<Finding> findings) {
    return findings.stream().map(Problem::of).toList();
  }

  private static Problem of(Finding finding) {
    int line = finding.place().line();
    String where = finding.place().file() + (line == 0 ? "" : ", line " + line);
    return new Problem(
        finding.code().name() + "  " + finding.what(), where, finding.why(), finding.fix());
  }
}
