package flankfit.picture;

/**
 * The four standard views, all without perspective. An azimuth of 0 looks along +Y with X to the
 * right; it grows as the eye walks anticlockwise round the part, seen from above.
 */
public enum View {
  PLAN("plan", 0, Math.PI / 2),
  FRONT("front", 0, 0),
  SIDE("side", Math.PI / 2, 0),
  ISO("iso", Math.PI / 5, Math.PI / 5.6);

  private final String word;
  private final double azimuth;
  private final double elevation;

  View(String word, double azimuth, double elevation) {
    this.word = word;
    this.azimuth = azimuth;
    this.elevation = elevation;
  }

  /** The word people and settings see. */
  public String word() {
    return word;
  }

  /** Where the eye stands round the part (rad). */
  public double azimuth() {
    return azimuth;
  }

  /** How far the eye stands above the part's level (rad). */
  public double elevation() {
    return elevation;
  }
}
