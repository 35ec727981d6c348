package flankfit.sweep;

/** One flank of a tooth: its axial distance from the tooth's middle, falling outwards. */
interface FlankShape {
  /**
   * Axial distance from the tooth's middle to the flank (mm).
   *
   * @param distance distance from the cutter's axis (mm), from 0 to the outside radius; below the
   *     known form the last known width holds
   */
  double width(double distance);

  /**
   * The greatest {@code risen(d) + width(d)} (mm) while the cutter's axis draws away.
   *
   * @param low least distance (mm), not below 0
   * @param high greatest distance (mm), from low to the outside radius
   */
  double reach(Meeting meeting, double low, double high);

  /** The same flank, ending where it has a width (mm, above 0). */
  FlankShape endingAt(double widest);
}
