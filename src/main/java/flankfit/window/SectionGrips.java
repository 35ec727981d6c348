package flankfit.window;

import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.picture.Camera;

/** Where the grips of section planes are seen, and what a drag of one does. */
final class SectionGrips {
  /** Below this a plane is looked at so straight that its way is hardly seen (1). */
  private static final double STRAIGHT = 0.12;

  private SectionGrips() {}

  /** A corner of a plane's rectangle in the stock's box, 0 to 3 round it. */
  static Point corner(Sections sections, int axis, int corner) {
    Extents box = sections.box();
    int u = (axis + 1) % 3;
    int v = (axis + 2) % 3;
    double[] p = new double[3];
    p[axis] = sections.at(axis);
    p[u] = corner == 0 || corner == 3 ? box.min().axis(u) : box.max().axis(u);
    p[v] = corner < 2 ? box.min().axis(v) : box.max().axis(v);
    return new Point(p[0], p[1], p[2]);
  }

  /** The middle of that side of the rectangle which is seen highest, then farthest to the right. */
  static Point grip(Sections sections, int axis, Camera camera) {
    Point best = Point.ZERO;
    double most = Double.NEGATIVE_INFINITY;
    for (int side = 0; side < 4; side++) {
      Point a = corner(sections, axis, side);
      Point b = corner(sections, axis, (side + 1) % 4);
      Point middle =
          new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2, (a.z() + b.z()) / 2);
      double seen =
          camera.row(middle.x(), middle.y(), middle.z())
              + 0.01 * camera.column(middle.x(), middle.y(), middle.z());
      if (seen > most + 1e-6) {
        most = seen;
        best = middle;
      }
    }
    return best;
  }

  /**
   * The plane whose grip lies at a place of the scene, or -1.
   *
   * @param column px
   * @param row px, upwards
   * @param reach px
   */
  static int at(Sections sections, Camera camera, double column, double row, double reach) {
    int found = -1;
    double nearest = reach;
    for (int axis = 0; axis < 3; axis++) {
      if (sections.isOn(axis)) {
        Point grip = grip(sections, axis, camera);
        double off =
            Math.hypot(
                camera.column(grip.x(), grip.y(), grip.z()) - column,
                camera.row(grip.x(), grip.y(), grip.z()) - row);
        if (off <= nearest) {
          nearest = off;
          found = axis;
        }
      }
    }
    return found;
  }

  /**
   * How far a plane goes when the pointer does (mm): so that the grip stays under it. A plane looked
   * at straight goes to the eye as the pointer goes up.
   *
   * @param columns way of the pointer (px)
   * @param rows way of the pointer upwards (px)
   */
  static double way(Camera camera, int axis, double columns, double rows) {
    double across = camera.right(axis);
    double upward = camera.up(axis);
    double square = across * across + upward * upward;
    if (square < STRAIGHT * STRAIGHT) {
      return Math.signum(camera.eye(axis)) * rows * camera.millimetresPerPixel();
    }
    return (across * columns + upward * rows) / square * camera.millimetresPerPixel();
  }

  /**
   * A place near one that is a round figure in the unit at the scale of the picture (mm).
   *
   * @param perUnit millimetres a unit
   */
  static double rounded(double place, double millimetresPerPixel, double perUnit) {
    double step =
        StrictMath.pow(10, Math.floor(StrictMath.log10(millimetresPerPixel / perUnit)))
            * perUnit;
    return Math.rint(place / step) * step;
  }
}
