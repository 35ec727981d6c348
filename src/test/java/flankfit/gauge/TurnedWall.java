package flankfit.gauge;

import flankfit.standard.Designations;
import flankfit.standard.InvalidDesignationException;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.Wall;
import java.util.function.DoubleBinaryOperator;

/**
 * A wall of straight flanks for tests, exact by its formula: a helical groove whose pitch diameter,
 * place along the axis and axis may change with direction and height. Its deviations are looked up
 * at the groove's own helix, so that flanks stay straight lines in every axial section.
 */
final class TurnedWall implements Wall {
  final ThreadSpec spec;
  double top = 0;
  double bottom = -16;

  /** Added to the pitch diameter at (direction, height of the groove's middle) (mm). */
  DoubleBinaryOperator larger = (theta, z) -> 0;

  /** Height by which a groove stands above its helix (mm). */
  DoubleBinaryOperator raised = (theta, z) -> 0;

  /** Further room on the upper flank (mm). */
  DoubleBinaryOperator upperWider = (theta, z) -> 0;

  /** Added to the half angle of the upper and the lower flank (rad). */
  double upperAngle;

  double lowerAngle;
  double axisX;
  double axisY;

  /** Height of the helix in direction 0 (mm). */
  double phase = -0.3;

  /** Radius of the groove's bottom, and of the blank. */
  double major;

  double minor;

  /** Grooves whose middle lies outside are not there. */
  double firstGroove = Double.POSITIVE_INFINITY;

  double lastGroove = Double.NEGATIVE_INFINITY;

  /** Shift of the groove along its own flanks into the metal, by place (mm). */
  DoubleBinaryOperator shallower = (theta, z) -> 0;

  /** Radial width of a chamfer of 45 degrees at the mouth beyond the blank (mm). */
  double chamfer;

  TurnedWall(String designation) {
    spec = spec(designation);
    double beyond = 0.05;
    major = spec.internal() ? spec.nominal() / 2 + beyond : spec.basicMinor() / 2 - beyond;
    minor = spec.internal() ? spec.basicMinor() / 2 + beyond : spec.nominal() / 2 - beyond;
  }

  static ThreadSpec spec(String designation) {
    try {
      return Designations.parse(designation);
    } catch (InvalidDesignationException e) {
      throw new AssertionError(e);
    }
  }

  /** Pitch diameter of the groove without deviations (mm): the basic one. */
  double pitchDiameter() {
    return spec.basicPitch();
  }

  @Override
  public boolean isInternal() {
    return spec.internal();
  }

  @Override
  public double top() {
    return top;
  }

  @Override
  public double bottom() {
    return bottom;
  }

  private double sign() {
    return spec.internal() ? 1 : -1;
  }

  private double helix(double theta, int n) {
    double hand = spec.leftHand() ? -1 : 1;
    double turn = theta - 2 * Math.PI * Math.floor(theta / (2 * Math.PI));
    return phase + hand * spec.lead() * turn / (2 * Math.PI) + n * spec.pitch();
  }

  private int lowestGroove(double theta) {
    return (int) Math.floor((bottom - helix(theta, 0)) / spec.pitch()) - 2;
  }

  private int highestGroove(double theta) {
    return (int) Math.ceil((top - helix(theta, 0)) / spec.pitch()) + 2;
  }

  /** Lower (0) or upper (1) end of a groove on a cylinder; NaN where it is not. */
  private double end(double theta, double radius, int n, int which) {
    double z = helix(theta, n);
    double depth = sign() * radius;
    double into = sign() * major - shallower.applyAsDouble(theta, z);
    if (z > firstGroove || z < lastGroove || depth > into + 1e-12) {
      return Double.NaN;
    }
    double pitchDepth = (sign() * pitchDiameter() + larger.applyAsDouble(theta, z)) / 2;
    double angle = spec.halfAngle() + (which == 1 ? upperAngle : lowerAngle);
    double more = which == 1 ? upperWider.applyAsDouble(theta, z) : 0;
    double half = spec.pitch() / 4 + (pitchDepth - depth) * Math.tan(angle) + more;
    double middle = z + raised.applyAsDouble(theta, z);
    return which == 1 ? middle + half : middle - half;
  }

  @Override
  public int open(double theta, double radius, double[] stretches) {
    double x = radius * Math.cos(theta) - axisX;
    double y = radius * Math.sin(theta) - axisY;
    return openAboutAxis(Math.atan2(y, x), Math.hypot(x, y), stretches);
  }

  private int openAboutAxis(double theta, double radius, double[] stretches) {
    double depth = sign() * radius;
    if (depth <= sign() * minor) {
      return put(stretches, 0, bottom, top);
    }
    int count = 0;
    double low = Double.NaN;
    double high = Double.NaN;
    double cone = top - Math.max(0, chamfer - (depth - sign() * minor));
    int last = highestGroove(theta);
    for (int n = lowestGroove(theta); n <= last + 1; n++) {
      boolean isCone = n == last + 1;
      double from = isCone ? cone : Math.max(bottom, end(theta, radius, n, 0));
      double to = isCone ? top : Math.min(cone, end(theta, radius, n, 1));
      if (to > from) {
        if (from <= high) {
          high = Math.max(high, to);
        } else {
          count = Double.isNaN(low) ? count : put(stretches, count, low, high);
          low = from;
          high = to;
        }
      }
    }
    return Double.isNaN(low) ? count : put(stretches, count, low, high);
  }

  private static int put(double[] stretches, int count, double low, double high) {
    if (2 * count + 1 < stretches.length) {
      stretches[2 * count] = low;
      stretches[2 * count + 1] = high;
    }
    return count + 1;
  }

  @Override
  public double radius(double theta, double z) {
    double radius = radiusAboutAxis(theta, z);
    for (int i = 0; i < 20 && (axisX != 0 || axisY != 0); i++) {
      double x = radius * Math.cos(theta) - axisX;
      double y = radius * Math.sin(theta) - axisY;
      radius += radiusAboutAxis(Math.atan2(y, x), z) - Math.hypot(x, y);
    }
    return radius;
  }

  private double radiusAboutAxis(double theta, double z) {
    double depth = Math.max(sign() * minor, sign() * minor + chamfer - (top - z));
    for (int n = lowestGroove(theta); n <= highestGroove(theta); n++) {
      depth = Math.max(depth, depthOf(theta, z, n));
    }
    return sign() * depth;
  }

  private double depthOf(double theta, double z, int n) {
    double middle = helix(theta, n);
    double deepest = sign() * major - shallower.applyAsDouble(theta, middle);
    if (middle > firstGroove || middle < lastGroove) {
      return Double.NEGATIVE_INFINITY;
    }
    double from = z - middle - raised.applyAsDouble(theta, middle);
    double angle = spec.halfAngle() + (from > 0 ? upperAngle : lowerAngle);
    double more = from > 0 ? upperWider.applyAsDouble(theta, middle) : 0;
    double pitchDepth = (sign() * pitchDiameter() + larger.applyAsDouble(theta, middle)) / 2;
    double onFlank = pitchDepth - (Math.abs(from) - spec.pitch() / 4 - more) / Math.tan(angle);
    return Math.min(deepest, onFlank);
  }
}
