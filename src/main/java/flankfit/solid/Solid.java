package flankfit.solid;

/**
 * A body known by its inside, such as the metal that is left at one moment. Safe for many readers.
 */
public interface Solid {
  /**
   * Below 0 in metal, above 0 in air, the sign exact; its size is never more than the true distance
   * to the surface (mm).
   */
  double value(double x, double y, double z);

  /**
   * Where metal ends on the segment from a point in metal to a point in air: the first place from
   * the metal's end, to 1e-9 mm, with its normal and maker.
   */
  void crossing(
      double metalX,
      double metalY,
      double metalZ,
      double airX,
      double airY,
      double airZ,
      Crossing result);

  /** The cells that hold surface. */
  SurfaceCells cells();
}
