package flankfit.cutting;

/** The metal that one row meets: what drilling and earlier passes left, as an axial profile. */
public interface Metal {
  /**
   * Where the metal begins at a height (mm): the wall's radius in a hole, the surface's on a boss.
   *
   * @param height height above the middle of the row's own groove (mm)
   */
  double radius(double height);

  /**
   * The metal farthest out of the wall (mm): the least radius in a hole, the greatest on a boss.
   */
  double blank();

  /** A plain hole or boss before any thread. */
  static Metal plain(double radius) {
    return new Metal() {
      @Override
      public double radius(double height) {
        return radius;
      }

      @Override
      public double blank() {
        return radius;
      }
    };
  }
}
