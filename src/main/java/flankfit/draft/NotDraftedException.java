package flankfit.draft;

import java.util.Objects;

/** No program can be written as asked: what stands in the way, why, and the nearest that works. */
public final class NotDraftedException extends Exception {
  private static final long serialVersionUID = 1L;

  private final String why;
  private final String fix;

  /**
   * Makes the refusal.
   *
   * @param what what stands in the way, with value, limit and unit
   * @param why what would happen; may be empty
   * @param fix the nearest that works; may be empty
   */
  public NotDraftedException(String what, String why, String fix) {
    super(Objects.requireNonNull(what, "what"));
    this.why = Objects.requireNonNull(why, "why");
    this.fix = Objects.requireNonNull(fix, "fix");
  }

  /** What stands in the way. */
  public String what() {
    return String.valueOf(getMessage());
  }

  /** What would happen; may be empty. */
  public String why() {
    return why;
  }

  /** The nearest that works; may be empty. */
  public String fix() {
    return fix;
  }
}
