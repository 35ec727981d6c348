package flankfit.solid;

/**
 * How the triangles of one group of makers look in a file.
 *
 * @param name shown by viewers; not blank
 * @param red linear, 0 to 1
 * @param green linear, 0 to 1
 * @param blue linear, 0 to 1
 */
public record Paint(String name, double red, double green, double blue) {
  /** Checks the values. */
  public Paint {
    if (name.isBlank()) {
      throw new IllegalArgumentException("a paint has no name");
    }
    check("red", red);
    check("green", green);
    check("blue", blue);
  }

  private static void check(String part, double value) {
    if (!(value >= 0 && value <= 1)) {
      throw new IllegalArgumentException(part + " is " + value + ", 0 to 1 is needed");
    }
  }
}
