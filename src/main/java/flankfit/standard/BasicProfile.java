package flankfit.standard;

/**
 * The basic profile that ISO metric and Unified threads share: 60 degrees, cut off by H/8 outside
 * and H/4 inside.
 *
 * @see "ISO 68-1, figure 1; ASME B1.1 paragraph 2"
 */
final class BasicProfile {
  /** Half the angle between the flanks (rad). */
  static final double HALF_ANGLE = Math.PI / 6;

  /** Major less pitch diameter, as a share of the pitch, to the digits the standards use (1). */
  static final double MAJOR_TO_PITCH = 0.64951905;

  /** Major less minor diameter, as a share of the pitch, to the digits the standards use (1). */
  static final double MAJOR_TO_MINOR = 1.08253175;

  private BasicProfile() {}

  /** Height H of the sharp triangle (mm) over a pitch (mm). */
  static double sharpHeight(double pitch) {
    return Math.sqrt(3) / 2 * pitch;
  }

  /** Basic pitch diameter (mm), not rounded: major diameter (mm) less 3/4 of H. */
  static double pitchDiameter(double major, double pitch) {
    return major - 0.75 * sharpHeight(pitch);
  }

  /** Basic minor diameter (mm), not rounded: major diameter (mm) less 5/4 of H. */
  static double minorDiameter(double major, double pitch) {
    return major - 1.25 * sharpHeight(pitch);
  }
}
