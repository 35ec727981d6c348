package flankfit.gauge;

import flankfit.unit.Angles;
import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/**
 * Readings across a diameter: the depth at one side and, at the same height, between the grooves on
 * the other side. An axis off centre does not show in them.
 */
final class Across {
  /** Directions nearer than this are one (rad). */
  private static final double SAME = 1e-9;

  private final WallField field;
  private final PitchLine line;
  private final int[][] inDirection;

  /** The direction opposite or next before it, and the share of the way to the one behind. */
  private final int[] opposite;

  private final double[] behind;

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
    this.opposite = new int[field.directions()];
    this.behind = new double[field.directions()];
    for (int d = 0; d < opposite.length; d++) {
      oppose(d);
    }
  }

  private void oppose(int d) {
    int n = field.directions();
    double wanted = Angles.normalised(field.angle(d) + Math.PI + SAME);
    int low = 0;
    int high = n;
    while (high - low > 1) {
      int middle = (low + high) >> 1;
      if (field.angle(middle) <= wanted) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double width =
        (low + 1 < n ? field.angle(low + 1) : field.angle(0) + Angles.TURN) - field.angle(low);
    double share = (wanted - field.angle(low)) / width;
    opposite[d] = low;
    behind[d] = wanted - field.angle(low) > 2 * SAME ? share : 0;
  }

  /**
   * Sum of both sides (mm) at the i-th element of full form; not a number where the other side has
   * no groove within a pitch. The other side is between two directions where none is opposite.
   *
   * @param depths depth read at the i-th element (mm)
   */
  double at(int i, IntToDoubleFunction depths) {
    int e = line.element(i);
    int before = opposite[field.direction(e)];
    double share = behind[field.direction(e)];
    double z = field.height(e);
    double there = across(before, z, depths);
    if (share > 0) {
      int after = (before + 1) % field.directions();
      there += share * (across(after, z, depths) - there);
    }
    return depths.applyAsDouble(i) + there;
  }

  private double across(int direction, double z, IntToDoubleFunction depths) {
    double near = field.spec().pitch() * 1.001;
    int above = -1;
    int below = -1;
    for (int other : inDirection[direction]) {
      double apart = field.height(line.element(other)) - z;
      if (apart >= 0 && apart <= near) {
        above = other;
      }
      if (apart <= 0 && apart >= -near && below < 0) {
        below = other;
      }
    }
    return between(above, below, z, depths);
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
