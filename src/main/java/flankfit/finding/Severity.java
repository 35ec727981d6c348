package flankfit.finding;

/** How much a finding weighs. */
public enum Severity {
  /** The answer can't be trusted, or the part is lost. */
  ERROR("error"),
  /** A machinist would stop and look. */
  WARNING("warning"),
  /** An assumption, or something to know. */
  NOTE("note");

  private final String word;

  Severity(String word) {
    this.word = word;
  }

  /** The word people and JSON see. */
  public String word() {
    return word;
  }
}
