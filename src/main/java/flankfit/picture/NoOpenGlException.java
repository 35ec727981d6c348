package flankfit.picture;

import java.util.Objects;

/** No OpenGL 3.3 can be had on this machine; says what fails, why, and what to do. */
public final class NoOpenGlException extends Exception {
  private static final long serialVersionUID = 1L;

  private final String why;
  private final String fix;

  /**
   * Makes the exception.
   *
   * @param what what fails, one statement
   * @param why what the machine answered
   * @param fix what to do about it
   */
  public NoOpenGlException(String what, String why, String fix) {
    super(Objects.requireNonNull(what, "what"));
    this.why = Objects.requireNonNull(why, "why");
    this.fix = Objects.requireNonNull(fix, "fix");
  }

  /** What the machine answered. */
  public String why() {
    return why;
  }

  /** What to do about it. */
  public String fix() {
    return fix;
  }

  static NoOpenGlException because(String why) {
    return new NoOpenGlException(
        "no OpenGL 3.3 context can be made",
        why,
        "install an OpenGL driver with EGL (a software renderer will do), or ask for text or a"
            + " vector drawing instead of a picture");
  }
}
