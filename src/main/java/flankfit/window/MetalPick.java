package flankfit.window;

import flankfit.motion.Point;
import flankfit.picture.Camera;
import flankfit.solid.Crossing;
import flankfit.solid.Solid;
import java.util.Objects;
import java.util.Optional;

/**
 * A place of the metal that the pointer met.
 *
 * @param place on its surface, or on the face of a section
 * @param maker move that made the surface there, or {@link Crossing#STOCK}
 * @param isCut whether it lies on the face of a section, where nothing is made
 */
record MetalPick(Point place, int maker, boolean isCut) {
  /** Steps of the look along a ray, at most. */
  private static final int MOST_STEPS = 40_000;

  MetalPick {
    Objects.requireNonNull(place, "place");
  }

  /** What the eye sees first at a place of the scene (px, rows upwards). */
  static Optional<MetalPick> at(
      MetalPicture picture, Camera camera, Sections sections, double column, double row) {
    Ray ray = new Ray(camera, column, row);
    double[] reach = ray.within(picture.of().subject());
    double step = Math.max(picture.metal().cell() / 2, (reach[1] - reach[0]) / MOST_STEPS);
    Solid solid = picture.solid();
    double before = reach[1] + step;
    boolean taken = sections.takes(camera, ray.at(0, before), ray.at(1, before), ray.at(2, before));
    for (double t = reach[1]; t > reach[0] - step; t -= step) {
      double x = ray.at(0, t);
      double y = ray.at(1, t);
      double z = ray.at(2, t);
      boolean takenNow = sections.takes(camera, x, y, z);
      if (!takenNow && solid.isMetal(x, y, z)) {
        return Optional.of(met(solid, ray, sections, camera, t, before, taken));
      }
      before = t;
      taken = takenNow;
    }
    return Optional.empty();
  }

  private static MetalPick met(
      Solid solid,
      Ray ray,
      Sections sections,
      Camera camera,
      double metal,
      double air,
      boolean taken) {
    double high = air;
    if (taken) {
      // The plane lies between: metal there is the face of the cut.
      double low = metal;
      for (int i = 0; i < 60; i++) {
        double middle = (low + high) / 2;
        boolean away =
            sections.takes(camera, ray.at(0, middle), ray.at(1, middle), ray.at(2, middle));
        low = away ? low : middle;
        high = away ? middle : high;
      }
      high = low;
      if (solid.isMetal(ray.at(0, high), ray.at(1, high), ray.at(2, high))) {
        return new MetalPick(ray.point(high), Crossing.STOCK, true);
      }
    }
    Crossing crossing = new Crossing();
    solid.crossing(
        ray.at(0, metal),
        ray.at(1, metal),
        ray.at(2, metal),
        ray.at(0, high),
        ray.at(1, high),
        ray.at(2, high),
        crossing);
    return new MetalPick(
        new Point(crossing.x(), crossing.y(), crossing.z()), crossing.maker(), false);
  }

  /** From a pixel into the scene; the way along it counts to the eye (mm). */
  private static final class Ray {
    private final double[] from = new double[3];
    private final double[] way = new double[3];

    Ray(Camera camera, double column, double row) {
      double right = (column - camera.width() / 2.0) * camera.millimetresPerPixel();
      double up = (row - camera.height() / 2.0) * camera.millimetresPerPixel();
      for (int axis = 0; axis < 3; axis++) {
        from[axis] = camera.centre().axis(axis) + right * camera.right(axis) + up * camera.up(axis);
        way[axis] = camera.eye(axis);
      }
    }

    double at(int axis, double t) {
      return from[axis] + t * way[axis];
    }

    Point point(double t) {
      return new Point(at(0, t), at(1, t), at(2, t));
    }

    /** Where the ray enters and leaves the stock's box; an empty stretch where it misses it. */
    double[] within(MetalSubject subject) {
      double low = -1e9;
      double high = 1e9;
      for (int axis = 0; axis < 3; axis++) {
        double a = subject.stock().min().axis(axis) - from[axis];
        double b = subject.stock().max().axis(axis) - from[axis];
        if (Math.abs(way[axis]) < 1e-12) {
          boolean misses = a > 0 || b < 0;
          high = misses ? low - 1 : high;
        } else {
          low = Math.max(low, Math.min(a / way[axis], b / way[axis]));
          high = Math.min(high, Math.max(a / way[axis], b / way[axis]));
        }
      }
      return high < low ? new double[] {0, -1e6} : new double[] {low, high};
    }
  }
}
