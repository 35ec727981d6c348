package flankfit.cli;

/** What the process's exit status means. */
final class ExitStatus {
  /** Nothing wrong. */
  static final int OK = 0;

  /** The answer is no: a finding of severity error, or a thread that will not gauge. */
  static final int ANSWER_NO = 1;

  /** The request itself is wrong: usage, file, setup sheet. */
  static final int REQUEST_WRONG = 2;

  /** The tool failed. */
  static final int FAILED = 3;

  private ExitStatus() {}
}
