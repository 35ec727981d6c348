package flankfit.cutting;

import flankfit.unit.Require;

/**
 * Metal with a groove in it, repeated along the axis, from its half widths on cylinders; between
 * them straight lines.
 */
public final class GrooveMetal implements Metal {
  private final double blank;
  private final double spacing;
  private final double[] radius;
  private final double[] up;
  private final double[] down;

  /**
   * Makes the metal.
   *
   * @param blank radius of the hole or boss before the thread (mm)
   * @param spacing axial distance from groove to groove (mm), above 0
   * @param radius cylinders from the groove's bottom towards the blank (mm), two or more
   * @param up axial distance from the groove's middle to its upper wall on each (mm), not falling
   * @param down the same to its lower wall
   */
  public GrooveMetal(double blank, double spacing, double[] radius, double[] up, double[] down) {
    this.blank = Require.positive("blank", blank);
    this.spacing = Require.positive("spacing", spacing);
    if (radius.length < 2 || up.length != radius.length || down.length != radius.length) {
      throw new IllegalArgumentException("radius, up and down must be alike and two or more");
    }
    this.radius = radius.clone();
    this.up = up.clone();
    this.down = down.clone();
  }

  @Override
  public double blank() {
    return blank;
  }

  @Override
  public double radius(double height) {
    double from = height - spacing * Math.rint(height / spacing);
    double away = Math.abs(from);
    double own = wall(away, from >= 0 ? up : down);
    double next = wall(spacing - away, from >= 0 ? down : up);
    return deeper(own, next);
  }

  private double deeper(double a, double b) {
    boolean inside = radius[0] > radius[radius.length - 1];
    return inside ? Math.max(a, b) : Math.min(a, b);
  }

  private double wall(double away, double[] width) {
    int last = width.length - 1;
    if (away >= width[last]) {
      return blank;
    }
    if (away <= width[0]) {
      return radius[0];
    }
    int low = 0;
    int high = last;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (width[middle] <= away) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double share = (away - width[low]) / (width[high] - width[low]);
    return radius[low] + share * (radius[high] - radius[low]);
  }
}
