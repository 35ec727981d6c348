package flankfit.sweep;

/** The two flanks of a groove or tooth, seen along the axis. */
public enum Flank {
  /** The flank towards +Z from the middle. */
  UP("flank-up"),
  /** The flank towards -Z from the middle. */
  DOWN("flank-down");

  private final String word;

  Flank(String word) {
    this.word = word;
  }

  /** The word people and JSON see. */
  public String word() {
    return word;
  }
}
