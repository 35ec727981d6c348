package flankfit.cutting;

import flankfit.unit.Require;

/**
 * The edge of one row as straight lines in the axial plane: axial distance from the middle of the
 * tooth (mm), rising, and distance from the cutter's axis (mm).
 */
public final class EdgeLine {
  private final double[] height;
  private final double[] radius;

  private EdgeLine(double[] height, double[] radius) {
    this.height = height;
    this.radius = radius;
  }

  /**
   * An edge through points.
   *
   * @param height axial distances from the middle of the tooth (mm), not falling, two or more
   * @param radius distances from the cutter's axis (mm), not below 0; as many
   * @throws IllegalArgumentException if the numbers differ or the heights fall
   */
  public static EdgeLine through(double[] height, double[] radius) {
    if (height.length != radius.length || height.length < 2) {
      throw new IllegalArgumentException(
          "height and radius must be alike and two or more: "
              + height.length
              + ", "
              + radius.length);
    }
    for (int i = 0; i < height.length; i++) {
      Require.finite("height", height[i]);
      Require.notNegative("radius", radius[i]);
      if (i > 0 && height[i] < height[i - 1]) {
        throw new IllegalArgumentException("height must not fall: " + height[i]);
      }
    }
    return new EdgeLine(height.clone(), radius.clone());
  }

  /**
   * A true V with a flat crest.
   *
   * @param outside radius over the teeth (mm)
   * @param crestFlat width of the crest (mm)
   * @param halfAngle half the angle between the flanks (rad)
   * @param half axial distance from the middle at which the row ends (mm), such as half the pitch
   */
  public static EdgeLine straight(double outside, double crestFlat, double halfAngle, double half) {
    double drop = (half - crestFlat / 2) / Math.tan(halfAngle);
    double end = Math.max(0, outside - drop);
    double reach = crestFlat / 2 + (outside - end) * Math.tan(halfAngle);
    return through(
        new double[] {-reach, -crestFlat / 2, crestFlat / 2, reach},
        new double[] {end, outside, outside, end});
  }

  int lines() {
    return height.length - 1;
  }

  double height(int line, double share) {
    return height[line] + share * (height[line + 1] - height[line]);
  }

  double radius(int line, double share) {
    return radius[line] + share * (radius[line + 1] - radius[line]);
  }

  /** Radius over the teeth (mm). */
  double outside() {
    double outside = 0;
    for (double r : radius) {
      outside = Math.max(outside, r);
    }
    return outside;
  }

  /**
   * Where the part of a line that reaches beyond a radius begins or ends (1): shares of the line
   * from its lower end; the beginning lies beyond the end when nothing does.
   */
  double shareAt(int line, double least, boolean begin) {
    double low = radius[line];
    double high = radius[line + 1];
    double edge = begin ? 0 : 1;
    boolean inside = (begin ? low : high) >= least;
    if (inside) {
      return edge;
    }
    return Math.max(low, high) <= least ? 1 - edge : (least - low) / (high - low);
  }

  /** Length of a line (mm). */
  double length(int line) {
    return Math.hypot(height[line + 1] - height[line], radius[line + 1] - radius[line]);
  }

  /** Radial part of a line's outward normal (1); 1 on the crest, sin α on a flank. */
  double normalRadial(int line) {
    return (height[line + 1] - height[line]) / length(line);
  }

  /** Axial part of a line's outward normal (1), positive upwards. */
  double normalAxial(int line) {
    return (radius[line] - radius[line + 1]) / length(line);
  }
}
