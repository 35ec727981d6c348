package flankfit.cli;

import flankfit.finding.Finding;
import java.util.List;

/** A request that cannot be met; carries what is wrong and the exit status. */
final class RequestException extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<Finding> findings;
  private final transient List<String> sourceLines;
  private final int status;

  /**
   * Makes the exception.
   *
   * @param status exit status
   * @param findings what is wrong, at least one
   * @param sourceLines lines of the file the findings point into; empty when none
   */
  RequestException(int status, List<Finding> findings, List<String> sourceLines) {
    super(findings.get(0).what());
    this.status = status;
    this.findings = List.copyOf(findings);
    this.sourceLines = List.copyOf(sourceLines);
  }

  /** The request itself is wrong, in one finding. */
  static RequestException wrong(Finding finding) {
    return new RequestException(ExitStatus.REQUEST_WRONG, List.of(finding), List.of());
  }

  /** The tool failed, in one finding. */
  static RequestException failed(Finding finding) {
    return new RequestException(ExitStatus.FAILED, List.of(finding), List.of());
  }

  /** What is wrong. */
  List<Finding> findings() {
    return findings;
  }

  /** Lines of the file the findings point into. */
  List<String> sourceLines() {
    return sourceLines;
  }

  /** Exit status. */
  int status() {
    return status;
  }
}
