package flankfit.sweep;

/**
 * How a cutter's axis, moving one way, draws away from a line parallel to it while it rises. Its
 * distance from the line grows all the way; what is asked is how far it has risen by then.
 */
sealed interface Meeting permits Station, Crossing {
  /**
   * How far the axis has risen when it stands at a distance from the line (mm), from where it is
   * nearest.
   *
   * @param distance from the cutter's axis to the line (mm); clipped to what the path allows
   */
  double risen(double distance);

  /**
   * The distance at which the axis rises just as fast as a straight tooth flank falls away (mm):
   * contact on a flank of this slope. NaN where there is none.
   *
   * @param tangent fall of the flank along the axis for one length outwards (1), above 0
   */
  double contact(double tangent);
}
