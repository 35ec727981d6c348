package flankfit.solid;

/** A mesh file that cannot be stock. */
public final class MeshFileException extends Exception {
  private static final long serialVersionUID = 1L;

  private final String why;
  private final String fix;

  MeshFileException(String what, String why, String fix) {
    super(what);
    this.why = why;
    this.fix = fix;
  }

  MeshFileException(String what, String why, String fix, Throwable cause) {
    super(what, cause);
    this.why = why;
    this.fix = fix;
  }

  /** What is wrong, with place and count; stands alone. */
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
