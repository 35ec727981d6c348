package flankfit.sweep;

/**
 * Finds the radius of a wall at a height: the deepest open place, to the last bit of open metal.
 * Looks at radii evenly apart from the deepest that any cutter reaches, then closes in on the end
 * of the outermost opening.
 */
final class SurfaceSearch {
  private static final int LOOKS = 12;
  private static final int MOST_STEPS = 60;

  /** Width of the bracket at which the search ends (mm). */
  private static final double SETTLED = 1e-8;

  private static final int ROOM = 512;

  private final SweptWall wall;
  private final double deepest;

  /**
   * A search.
   *
   * @param deepest radius beyond which nothing is cut (mm)
   */
  SurfaceSearch(SweptWall wall, double deepest) {
    this.wall = wall;
    this.deepest = deepest;
  }

  double radius(double theta, double z) {
    double[] stretches = new double[ROOM];
    double blank = wall.blankRadius(z);
    double out = wall.isInternal() ? Math.max(deepest, blank) : Math.min(deepest, blank);
    double beside = blank + Math.copySign(SETTLED, out - blank);
    if (out == blank || gap(theta, beside, z, stretches) <= 0) {
      return blank; // most of every ridge: the metal begins at the blank
    }
    double metal = out;
    for (int i = 0; i <= LOOKS; i++) {
      double at = out + (blank - out) * i / LOOKS;
      if (at > 0 && gap(theta, at, z, stretches) > 0) {
        return i == 0 ? at : between(theta, z, at, metal, stretches);
      }
      metal = at;
    }
    return blank;
  }

  /** Closes in on the wall between a radius in the open and one in metal. */
  private double between(double theta, double z, double open, double metal, double[] stretches) {
    double a = open;
    double b = metal;
    double fa = gap(theta, a, z, stretches);
    double fb = b > 0 ? gap(theta, b, z, stretches) : -Double.MAX_VALUE;
    for (int i = 0; i < MOST_STEPS && Math.abs(a - b) > SETTLED; i++) {
      boolean slopes = fa < Double.MAX_VALUE && fb > -Double.MAX_VALUE;
      double share = slopes && i % 3 != 2 ? fa / (fa - fb) : 0.5;
      double m = a + (b - a) * Math.max(1e-3, Math.min(1 - 1e-3, share));
      double fm = gap(theta, m, z, stretches);
      if (fm > 0) {
        a = m;
        fa = fm;
      } else {
        b = m;
        fb = fm;
      }
    }
    return a;
  }

  private double gap(double theta, double radius, double z, double[] stretches) {
    int n = Math.min(wall.open(theta, radius, stretches), ROOM / 2);
    return gap(wall, z, stretches, n);
  }

  /**
   * Distance of a height along a line to the nearest end of its stretch (mm), negative within
   * metal; the greatest number where the wall's own range cuts the stretch off, negative without
   * any stretch.
   */
  static double gap(Wall wall, double z, double[] stretches, int n) {
    double nearest = -Double.MAX_VALUE;
    for (int i = 0; i < n; i++) {
      double low = stretches[2 * i];
      double high = stretches[2 * i + 1];
      double below = low > wall.bottom() ? z - low : Double.MAX_VALUE;
      double above = high < wall.top() ? high - z : Double.MAX_VALUE;
      nearest = Math.max(nearest, Math.min(below, above));
    }
    return nearest;
  }
}
