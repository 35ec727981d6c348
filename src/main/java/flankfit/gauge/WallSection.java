package flankfit.gauge;

import flankfit.sweep.Maximum;
import flankfit.sweep.Wall;
import java.util.HashMap;
import java.util.Map;

/** A wall in one direction: its lines, each read once, and its depth at heights. */
final class WallSection {
  /** Depths nearer than this are one: the bottom or crest is flat there (mm). */
  private static final double FLAT = 1e-7;

  private final Wall wall;
  private final Winding winding;
  private final boolean through;
  private final double theta;
  private final Map<Double, WallLine> lines = new HashMap<>();

  WallSection(Wall wall, Winding winding, boolean through, double theta) {
    this.wall = wall;
    this.winding = winding;
    this.through = through;
    this.theta = theta;
  }

  double theta() {
    return theta;
  }

  /** The line at a depth (mm). */
  WallLine at(double depth) {
    return lines.computeIfAbsent(
        depth, d -> WallLine.read(wall, through, theta, winding.turned(d)));
  }

  /** Depth of the wall at a height (mm), infinite where no metal ever was. */
  double depth(double z) {
    if (z > wall.top() || (through && z < wall.bottom())) {
      return Double.POSITIVE_INFINITY;
    }
    return winding.turned(wall.radius(theta, Math.max(z, wall.bottom())));
  }

  /** The greatest depth between two heights of the wall (mm). */
  double deepest(double low, double high) {
    return extreme(low, high, 1);
  }

  /** The least depth between two heights of the wall (mm). */
  double shallowest(double low, double high) {
    return -extreme(low, high, -1);
  }

  private double extreme(double low, double high, double sign) {
    double a = Math.max(low, wall.bottom());
    double b = Math.min(high, wall.top());
    double first = sign * depth(a + (b - a) / 4);
    double middle = sign * depth((a + b) / 2);
    double last = sign * depth(b - (b - a) / 4);
    boolean flat = Math.abs(first - middle) < FLAT && Math.abs(last - middle) < FLAT;
    if (flat || b <= a) {
      return Math.max(middle, Math.max(first, last));
    }
    double low0 = sign * depth(a);
    double high0 = sign * depth(b);
    if (rises(low0, first, middle, last, high0) || rises(high0, last, middle, first, low0)) {
      return Math.max(low0, high0); // a cone, as of a countersink: the extreme is at its end
    }
    double searched = Maximum.of(z -> sign * depth(z), a, b);
    return Math.max(searched, Math.max(middle, Math.max(first, last)));
  }

  private static boolean rises(double... values) {
    for (int i = 1; i < values.length; i++) {
      if (!(values[i] >= values[i - 1])) {
        return false;
      }
    }
    return true;
  }
}
