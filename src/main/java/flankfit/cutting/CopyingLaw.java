package flankfit.cutting;

import flankfit.unit.Require;

/**
 * The copying of errors in its linear form: a tool of stiffness K that cuts stock a with a force C
 * a + F0 leaves (C a + F0)/(C + K) behind, and the next pass starts with that.
 *
 * @param cutting cutting stiffness C, force for one millimetre of stock (N/mm), not below 0
 * @param tool stiffness of the tool K (N/mm), above 0
 * @param edge force of the edge without chip F0 (N), not below 0
 * @see "texts on manufacturing engineering: reduction of errors from pass to pass (from memory)"
 */
public record CopyingLaw(double cutting, double tool, double edge) {
  public CopyingLaw {
    Require.notNegative("cutting", cutting);
    Require.positive("tool", tool);
    Require.notNegative("edge", edge);
  }

  /** What a pass leaves of its stock, without edge force (1). */
  public double factor() {
    return cutting / (cutting + tool);
  }

  /** Stock that no further pass takes (mm). */
  public double floor() {
    return edge / tool;
  }

  /** What is left behind after so many passes on one path (mm). */
  public double left(double stock, int passes) {
    double left = stock;
    for (int i = 0; i < passes; i++) {
      left = (cutting * left + edge) / (cutting + tool);
    }
    return left;
  }
}
