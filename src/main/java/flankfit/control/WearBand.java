package flankfit.control;

/**
 * How much of a D register may be wear: within it a path is taken as that of the tool's centre, or
 * as the wall where that much off the tool's radius (common practice, no source).
 */
public final class WearBand {
  /** Beyond this an entry is no wear, whatever the tool (mm). */
  static final double GREATEST = 0.5;

  /** Nor beyond this share of the tool's radius (1). */
  private static final double SHARE = 0.1;

  private WearBand() {}

  /**
   * The most that is taken as wear (mm).
   *
   * @param radius radius of the tool (mm)
   */
  public static double of(double radius) {
    return Math.min(SHARE * radius, GREATEST);
  }
}
