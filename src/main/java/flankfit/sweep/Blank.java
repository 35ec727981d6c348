package flankfit.sweep;

import flankfit.setup.Hole;
import flankfit.unit.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * What stands before the thread is cut: a bored hole in metal or a turned boss, round about the
 * thread's axis. Its radius is linear from corner to corner; above the last it stays, below the
 * first there is metal inside a hole, and a boss goes on.
 *
 * @param internal whether it is a hole
 * @param corners heights, part frame, and radii (mm), from below upwards; heights may repeat
 */
public record Blank(boolean internal, List<Corner> corners) {
  public Blank {
    corners = List.copyOf(corners);
    if (corners.isEmpty()) {
      throw new IllegalArgumentException("corners must not be empty");
    }
    for (int i = 1; i < corners.size(); i++) {
      Require.notNegative("rise of corners", corners.get(i).z() - corners.get(i - 1).z());
    }
  }

  /** A corner of its outline. */
  public record Corner(double z, double radius) {
    public Corner {
      Require.finite("z", z);
      Require.notNegative("radius", radius);
    }
  }

  /** A cylindrical hole through everything down to a height (mm). */
  public static Blank hole(double radius, double bottom) {
    return new Blank(true, List.of(new Corner(bottom, radius)));
  }

  /** A cylindrical boss. */
  public static Blank boss(double radius, double bottom) {
    return new Blank(false, List.of(new Corner(bottom, radius)));
  }

  /**
   * The hole or boss of a setup sheet. A depth is that of the full diameter, the drill's point
   * beyond it; a countersink is a chamfer on a boss.
   *
   * @param bottom how far down a hole that goes through, or a boss, is looked at (mm, part frame)
   */
  public static Blank of(Hole hole, double bottom) {
    double radius = hole.diameter() / 2;
    List<Corner> corners = new ArrayList<>();
    double floor =
        hole.depth().map(depth -> hole.top() - depth).orElse(Math.min(bottom, hole.top()));
    if (!hole.boss() && hole.depth().isPresent() && hole.bottomAngle() < Math.PI) {
      corners.add(new Corner(floor - radius / Math.tan(hole.bottomAngle() / 2), 0));
    }
    corners.add(new Corner(floor, radius));
    hole.countersink()
        .ifPresent(
            cone -> {
              double across = Math.abs(cone.diameter() / 2 - radius);
              double deep = across / Math.tan(cone.angle() / 2);
              corners.add(new Corner(Math.max(floor, hole.top() - deep), radius));
              corners.add(new Corner(hole.top(), cone.diameter() / 2));
            });
    return new Blank(!hole.boss(), corners);
  }

  /** Radius at a height (mm); 0 below a hole. */
  public double radius(double z) {
    Corner first = corners.get(0);
    if (z < first.z()) {
      return internal ? 0 : first.radius();
    }
    for (int i = corners.size() - 1; i >= 0; i--) {
      Corner low = corners.get(i);
      if (z >= low.z()) {
        return i == corners.size() - 1 ? low.radius() : between(low, corners.get(i + 1), z);
      }
    }
    return first.radius();
  }

  private static double between(Corner low, Corner high, double z) {
    return low.radius() + (z - low.z()) / (high.z() - low.z()) * (high.radius() - low.radius());
  }

  /** Adds the stretches of a line parallel to the axis that lie in no metal. */
  void open(double radius, Openings out) {
    Corner first = corners.get(0);
    if (!internal && radius > first.radius()) {
      out.add(Double.NEGATIVE_INFINITY, first.z());
    }
    for (int i = 1; i < corners.size(); i++) {
      segment(corners.get(i - 1), corners.get(i), radius, out);
    }
    Corner last = corners.get(corners.size() - 1);
    if (isOpen(radius, last.radius())) {
      out.add(last.z(), Double.POSITIVE_INFINITY);
    }
  }

  private boolean isOpen(double radius, double outline) {
    return internal ? radius < outline : radius > outline;
  }

  private void segment(Corner low, Corner high, double radius, Openings out) {
    boolean below = isOpen(radius, low.radius());
    boolean above = isOpen(radius, high.radius());
    if (!below && !above) {
      return;
    }
    double meet =
        low.z() + (radius - low.radius()) / (high.radius() - low.radius()) * (high.z() - low.z());
    out.add(below ? low.z() : meet, above ? high.z() : meet);
  }
}
