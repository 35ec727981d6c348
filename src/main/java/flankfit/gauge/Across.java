package flankfit.gauge;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/**
 * Readings across a diameter: the depth at one side and, at the same height, between the grooves on
 * the other side. An axis off centre does not show in them.
 */
final class Across {
  private final WallField field;
  private final PitchLine line;
  private final int[][] inDirection;

  Across(WallField field, PitchLine line) {
    this.field = field;
    this.line = line;
    this.inDirection = new int[field.directions()][0];
    for (int i = 0; i < line.count(); i++) {
      int d = field.direction(line.element(i));
      int[] longer = Arrays.copyOf(inDirection[d], inDirection[d].length + 1);
      longer[longer.length - 1] = i;
      inDirection[d] = longer;
    }
  }

  /**
   * Sum of both sides (mm) at the i-th element of full form; not a number where the other side has
   * no groove within a pitch.
   *
   * @param depths depth read at the i-th element (mm)
   */
  double at(int i, IntToDoubleFunction depths) {
    int e = line.element(i);
    double z = field.height(e);
    int n = field.directions();
    int[] others = inDirection[(field.direction(e) + n / 2) % n];
    double near = field.spec().pitch() * 1.001;
    int above = -1;
    int below = -1;
    for (int other : others) {
      double apart = field.height(line.element(other)) - z;
      if (apart >= 0 && apart <= near) {
        above = other;
      }
      if (apart <= 0 && apart >= -near && below < 0) {
        below = other;
      }
    }
    return depths.applyAsDouble(i) + between(above, below, z, depths);
  }

  private double between(int above, int below, double z, IntToDoubleFunction depths) {
    if (above < 0 || below < 0) {
      int only = Math.max(above, below);
      return only < 0 ? Double.NaN : depths.applyAsDouble(only);
    }
    double high = field.height(line.element(above));
    double low = field.height(line.element(below));
    double share = high > low ? (z - low) / (high - low) : 0;
    return depths.applyAsDouble(below)
        + share * (depths.applyAsDouble(above) - depths.applyAsDouble(below));
  }
}
