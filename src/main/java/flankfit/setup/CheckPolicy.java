package flankfit.setup;

import flankfit.finding.Code;
import flankfit.finding.Severity;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What a shop makes of findings: which codes weigh more or less than usual, and which findings were
 * looked at and accepted.
 *
 * @param weights severity of every finding of a code; empty where the code is not told at all
 * @param accepted findings accepted, in the order of the file
 */
public record CheckPolicy(Map<Code, Optional<Severity>> weights, List<Accepted> accepted) {
  public CheckPolicy {
    weights = Map.copyOf(weights);
    accepted = List.copyOf(accepted);
  }

  /** Findings as they are. */
  public static CheckPolicy none() {
    return new CheckPolicy(Map.of(), List.of());
  }

  /**
   * Findings of one code that were looked at and accepted.
   *
   * @param code the code
   * @param program name of the program's file without its folder, {@code *} for any characters and
   *     {@code ?} for any one
   * @param line line that they point at; empty: any
   * @param reason why they are accepted
   * @param place line of the file where this stands, from 1
   */
  public record Accepted(
      Code code, String program, Optional<Integer> line, String reason, int place) {
    public Accepted {
      Objects.requireNonNull(code, "code");
      Objects.requireNonNull(program, "program");
      Objects.requireNonNull(line, "line");
      Objects.requireNonNull(reason, "reason");
    }
  }
}
