package flankfit.sweep;

/**
 * One row of a thread mill's teeth as a surface of revolution r(s), s along the axis from the
 * middle of the tooth. What counts is the effective profile of the spinning edge, not the drawing
 * of its rake face.
 */
public sealed interface Tooth permits PolylineTooth, GroundTooth {
  /** Radius over the teeth (mm). */
  double outsideRadius();

  /** Smallest distance from the cutter's axis to which the form is known (mm). */
  double rootRadius();

  /** Whether both flanks are alike. */
  boolean isSymmetric();

  /**
   * Axial distance from the tooth's middle to a flank (mm).
   *
   * @param radius distance from the cutter's axis (mm), in [rootRadius, outsideRadius]
   */
  double halfWidth(double radius, Flank flank);

  /**
   * The profile r(s) (mm): the distance from the cutter's axis at an axial distance from the
   * middle; 0 beyond the known form.
   *
   * @param s axial distance from the middle (mm), positive upwards
   */
  double radius(double s);

  /**
   * Axial distance from the groove's middle to the flank that this tooth leaves on a cylinder of
   * the thread (mm): the greatest {@code rise(φ) + halfWidth(d(φ))}, exact to 1e-9. The cylinder
   * must not lie beyond the groove's bottom.
   */
  default double reach(Station station, Flank flank) {
    double outside = outsideRadius();
    return side(flank)
        .reach(station, station.nearest(outside), Math.min(outside, station.farthest()));
  }

  /** One flank, for searches along any path. */
  FlankShape side(Flank flank);
}
