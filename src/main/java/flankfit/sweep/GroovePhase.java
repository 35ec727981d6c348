package flankfit.sweep;

import flankfit.unit.Require;

/**
 * Where the grooves of a thread lie: their middles go up and down with the angle, evenly spaced.
 * Groove 0 is the one whose middle stands at the height given; the numbers grow downwards. An angle
 * a turn on finds the same groove under another height: the angle is never reduced.
 *
 * @param z height of the middle of groove 0 at angle 0 (mm)
 * @param perRadian signed rise of a groove for one radian anticlockwise (mm): lead over 2π,
 *     negative for a left-hand thread
 * @param spacing axial distance from groove to groove (mm), above 0
 */
public record GroovePhase(double z, double perRadian, double spacing) {
  public GroovePhase {
    Require.finite("z", z);
    Require.finite("perRadian", perRadian);
    Require.positive("spacing", spacing);
  }

  /** Height of a groove's middle at an angle (mm). */
  public double middle(long groove, double theta) {
    return z + perRadian * theta - groove * spacing;
  }

  /** The groove whose middle is nearest to a height at an angle. */
  public long nearest(double height, double theta) {
    return Math.round((middle(0, theta) - height) / spacing);
  }

  /** The same grooves counted from another one. */
  public GroovePhase from(long groove) {
    return new GroovePhase(z - groove * spacing, perRadian, spacing);
  }
}
