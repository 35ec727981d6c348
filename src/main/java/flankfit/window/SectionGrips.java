package flankfit.window;

import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.picture.Camera;

/** Where the grips of section planes are seen, and what a drag of one does. */
final class SectionGrips {
  /** Below this a plane is looked at so straight that its way is hardly seen (1). */
  private static final double STRAIGHT = 0.12;

  /** Places along a side where a grip may be: beside what lies in the middle. */
  private static final double[] SHARES = {0.07, 0.2, 0.36, 0.64, 0.8, 0.93};

  /** Room that the scene leaves to rules, as a share of its shorter side (1). */
  private static final double ROOM = 0.08;

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

  /**
   * Where the grip is: on a side of the rectangle, near a corner, as high as can be seen; in the
   * middle of what is seen where no side is.
   */
  static Point grip(Sections sections, int axis, Camera camera) {
    Point best = inMiddle(sections, axis, camera);
    double most = Double.NEGATIVE_INFINITY;
    for (int side = 0; side < 4; side++) {
      Point a = corner(sections, axis, side);
      Point b = corner(sections, axis, (side + 1) % 4);
      for (double share : SHARES) {
        Point p = between(a, b, share);
        double row = camera.row(p.x(), p.y(), p.z());
        double column = camera.column(p.x(), p.y(), p.z());
        double seen = row - camera.height() * Math.abs(share - 0.5) * 0.02 + 0.001 * column;
        if (seen > most + 1e-6 && isSeen(camera, column, row)) {
          most = seen;
          best = p;
        }
      }
    }
    return best;
  }

  private static Point between(Point a, Point b, double share) {
    return new Point(
        a.x() + share * (b.x() - a.x()),
        a.y() + share * (b.y() - a.y()),
        a.z() + share * (b.z() - a.z()));
  }

  private static boolean isSeen(Camera camera, double column, double row) {
    double room = ROOM * Math.min(camera.width(), camera.height());
    return column > 1.9 * room
        && row > 1.4 * room
        && column < camera.width() - room
        && row < camera.height() - room;
  }

  private static Point inMiddle(Sections sections, int axis, Camera camera) {
    Point c = camera.centre();
    double at = sections.at(axis);
    return new Point(axis == 0 ? at : c.x(), axis == 1 ? at : c.y(), axis == 2 ? at : c.z());
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
   * How far a plane goes when the pointer does (mm): so that the grip stays under it. A plane
   * looked at straight goes to the eye as the pointer goes up.
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
        StrictMath.pow(10, Math.floor(StrictMath.log10(millimetresPerPixel / perUnit))) * perUnit;
    return Math.rint(place / step) * step;
  }
}
