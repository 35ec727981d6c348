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

  /** Whether a place is metal, as {@link #value} says by its sign; may be much quicker. */
  default boolean isMetal(double x, double y, double z) {
    return value(x, y, z) < 0;
  }

  /**
   * How deep a place lies in air (mm), 0 in metal, near enough to shade by.
   *
   * @param enough depth beyond which nothing matters (mm)
   */
  default double air(double x, double y, double z, double enough) {
    return Math.max(0, value(x, y, z));
  }

  /**
   * As {@link #crossing}, for the edge of a cell that holds surface: what lies wholly between its
   * ends may be missed, and places are good to 1e-7 mm.
   */
  default void edge(
      double metalX,
      double metalY,
      double metalZ,
      double airX,
      double airY,
      double airZ,
      Crossing result) {
    crossing(metalX, metalY, metalZ, airX, airY, airZ, result);
  }

  /** The cells that hold surface. */
  SurfaceCells cells();
}
