package flankfit.setup;

/** A file that cannot be stock. */
public final class StockFileException extends Exception {
  private static final long serialVersionUID = 1L;

  private final String why;
  private final String fix;

  /** What is wrong, standing alone, what it does, and what to do. */
  public StockFileException(String what, String why, String fix) {
    super(what);
    this.why = why;
    this.fix = fix;
  }

  /** What is wrong; stands alone. */
  public String what() {
    return getMessage();
  }

  /** What it does. */
  public String why() {
    return why;
  }

  /** What to do. */
  public String fix() {
    return fix;
  }
}
