package flankfit.window;

import flankfit.finding.Finding;
import java.util.List;

/** A program or its sheet cannot be read; the message says why, as one clause. */
public final class UnreadableProgramException extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<Finding> findings;

  /** Makes the exception without a finding. */
  public UnreadableProgramException(String message) {
    super(message);
    findings = List.of();
  }

  /**
   * Makes the exception.
   *
   * @param findings what is wrong, at least one; the first gives the message
   */
  public UnreadableProgramException(List<Finding> findings) {
    super(findings.get(0).what());
    this.findings = List.copyOf(findings);
  }

  /** What is wrong, where, why and how to mend it; may be empty. */
  public List<Finding> findings() {
    return findings;
  }
}
