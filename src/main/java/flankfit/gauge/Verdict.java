package flankfit.gauge;

/** What the gauges say together. */
public enum Verdict {
  GAUGES_GOOD("gauges good"),
  GO_REFUSED("GO refused"),
  NO_GO_ENTERS("NO-GO enters"),
  MINOR_SMALL("minor diameter small"),
  MINOR_LARGE("minor diameter large"),
  NOT_A_THREAD("not a thread");

  private final String words;

  Verdict(String words) {
    this.words = words;
  }

  /** The words people and JSON see. */
  public String words() {
    return words;
  }
}
