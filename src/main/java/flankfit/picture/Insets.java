package flankfit.picture;

/**
 * Room at the four sides of a frame that the scene leaves to rules and words (px).
 *
 * @param left at the left
 * @param right at the right
 * @param bottom below
 * @param top above
 */
public record Insets(int left, int right, int bottom, int top) {
  /** The room of a picture with title, rules and legend. */
  public static Insets ofPicture(double contentScale) {
    return scaled(74, 30, 98, 100, contentScale);
  }

  /** The room of a window's scene: rules, no title. */
  public static Insets ofWindow(double contentScale) {
    return scaled(74, 14, 84, 28, contentScale);
  }

  /** The room of a window's scene that is not high: a rule and one row of the legend. */
  public static Insets ofLowWindow(double contentScale) {
    return scaled(74, 14, 60, 24, contentScale);
  }

  private static Insets scaled(int left, int right, int bottom, int top, double s) {
    return new Insets(
        (int) Math.round(left * s),
        (int) Math.round(right * s),
        (int) Math.round(bottom * s),
        (int) Math.round(top * s));
  }

  /** As an array for {@link Camera#fit}, with more room all round. */
  public double[] widened(double by) {
    return new double[] {left + by, right + by, bottom + by, top + by};
  }
}
