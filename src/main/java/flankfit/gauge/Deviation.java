package flankfit.gauge;

import flankfit.unit.Require;

/**
 * How a thread's making departs from what sheet and program say.
 *
 * @param depth the finishing pass's path lies so much deeper in the metal (mm on the radius); other
 *     passes move as the register moves them
 * @param cutter the mill is so much larger over its teeth (mm on the radius), with the same form
 * @param crest its teeth are so much wider, crest and flanks alike (mm)
 * @param bending bending is so many times what was reckoned (1), not below 0
 * @param hole the hole is so much larger, a boss so much thicker, before the thread (mm on the
 *     radius)
 */
public record Deviation(double depth, double cutter, double crest, double bending, double hole) {
  public Deviation {
    Require.finite("depth", depth);
    Require.finite("cutter", cutter);
    Require.finite("crest", crest);
    Require.notNegative("bending", bending);
    Require.finite("hole", hole);
  }

  /** As sheet and program say. */
  public static Deviation none() {
    return new Deviation(0, 0, 0, 1, 0);
  }

  /** The same with the path so much deeper (mm on the radius). */
  public Deviation deeper(double more) {
    return new Deviation(depth + more, cutter, crest, bending, hole);
  }
}
