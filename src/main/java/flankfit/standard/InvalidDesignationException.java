package flankfit.standard;

import java.util.Objects;

/** A thread designation that no standard knows; says what is wrong and what is nearest. */
public final class InvalidDesignationException extends Exception {
  private static final long serialVersionUID = 1L;

  private final String why;
  private final String fix;

  /**
   * Makes the exception.
   *
   * @param what what is wrong, one statement
   * @param why the rule broken
   * @param fix what to write instead; empty when nothing is near
   */
  public InvalidDesignationException(String what, String why, String fix) {
    super(Objects.requireNonNull(what, "what"));
    this.why = Objects.requireNonNull(why, "why");
    this.fix = Objects.requireNonNull(fix, "fix");
  }

  /** The rule broken. */
  public String why() {
    return why;
  }

  /** What to write instead; empty when nothing is near. */
  public String fix() {
    return fix;
  }
}
