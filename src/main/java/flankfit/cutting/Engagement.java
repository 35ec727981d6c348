package flankfit.cutting;

import flankfit.unit.Require;

/**
 * How far round a cutter is in the metal, from the finished wall to where the metal ends. With the
 * centre's feed for one tooth everything equals straight milling at the equivalent radial depth.
 *
 * @param internal whether the cutter runs inside a hole
 * @param pathRadius radius of the path of the cutter's centre (mm), above 0
 * @param cutterRadius radius of the cutter at the height looked at (mm), above 0
 * @param metalRadius radius at which the metal begins (mm), above 0: that of the hole or boss, or
 *     what an earlier pass left
 * @see "derived from the triangle of axis, cutter's centre and edge"
 */
public record Engagement(
    boolean internal, double pathRadius, double cutterRadius, double metalRadius) {
  public Engagement {
    Require.positive("pathRadius", pathRadius);
    Require.positive("cutterRadius", cutterRadius);
    Require.positive("metalRadius", metalRadius);
  }

  /** Angle at the cutter's axis from the finished wall to where the metal ends (rad), in [0, π]. */
  public double angle() {
    double side = internal ? 1 : -1;
    double cosine =
        side
            * (metalRadius * metalRadius - pathRadius * pathRadius - cutterRadius * cutterRadius)
            / (2 * pathRadius * cutterRadius);
    return Math.acos(Math.max(-1, Math.min(1, cosine)));
  }

  /** Radial depth of straight milling with the same angle (mm). */
  public double equivalentDepth() {
    return cutterRadius * (1 - Math.cos(angle()));
  }

  /** Greatest chip on the crest (mm) for a feed of the centre for one tooth (mm). */
  public double greatestChip(double feedPerTooth) {
    return feedPerTooth * Math.sin(Math.min(angle(), Math.PI / 2));
  }

  /** Mean chip on the crest over the angle (mm); 0 when nothing is in cut. */
  public double meanChip(double feedPerTooth) {
    double angle = angle();
    return angle > 0 ? feedPerTooth * (1 - Math.cos(angle)) / angle : 0;
  }
}
