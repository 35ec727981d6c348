package flankfit.cutting;

import flankfit.unit.Require;

/**
 * The feed of the cutting edge beside that of the cutter's centre: larger inside a hole, smaller
 * around a boss.
 *
 * @param internal whether the cutter runs inside a hole
 * @param pathRadius radius of the path of the cutter's centre (mm), above 0
 * @param cutterRadius radius over the teeth (mm), above 0; around a boss below the path radius
 * @see "computed from the definition: edge and centre turn about one axis at one rate"
 */
public record EdgeFeed(boolean internal, double pathRadius, double cutterRadius) {
  public EdgeFeed {
    Require.positive("pathRadius", pathRadius);
    Require.positive("cutterRadius", cutterRadius);
    if (!internal) {
      Require.positive("pathRadius less cutterRadius", pathRadius - cutterRadius);
    }
  }

  /** Feed of the edge for one of the centre (1). */
  public double ratio() {
    double edge = internal ? pathRadius + cutterRadius : pathRadius - cutterRadius;
    return edge / pathRadius;
  }

  /** Feed of the edge (mm/min) for a feed of the centre (mm/min). */
  public double edge(double centre) {
    return centre * ratio();
  }

  /** Feed of the centre (mm/min) that gives a feed of the edge (mm/min). */
  public double centreFor(double edge) {
    return edge / ratio();
  }
}
