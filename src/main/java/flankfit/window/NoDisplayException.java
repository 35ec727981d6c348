package flankfit.window;

import java.util.Objects;

/** No window can be opened on this machine; says what fails, why, and what to do. */
public final class NoDisplayException extends Exception {
  private static final long serialVersionUID = 1L;

  private final String why;

  /**
   * Makes the exception.
   *
   * @param why what the machine answered
   */
  public NoDisplayException(String why) {
    super("no window can be opened");
    this.why = Objects.requireNonNull(why, "why");
  }

  /** What the machine answered. */
  public String why() {
    return why;
  }

  /** What to do about it. */
  public String fix() {
    return "run it where a display and OpenGL 3.3 are at hand, or ask for a picture file instead";
  }
}
