package flankfit.window;

import flankfit.motion.Point;
import flankfit.picture.Camera;
import java.util.Optional;

/** Where points of the part are seen in the window, before the part as before an unrolled wall. */
final class Sight {
  private final Camera camera;
  private final Optional<WallFrame> wall;
  private final float top;
  private final float pixels;

  /**
   * What the eye sees now.
   *
   * @param top row of the window where the scene begins (window units)
   * @param pixels pixels a window unit (1)
   */
  Sight(Camera camera, Optional<WallFrame> wall, float top, float pixels) {
    this.camera = camera;
    this.wall = wall;
    this.top = top;
    this.pixels = pixels;
  }

  private Point seen(Point p) {
    return wall.isPresent() ? wall.get().flat(p.x(), p.y(), p.z()) : p;
  }

  /** Column of a point (window units). */
  float x(Point p) {
    Point at = seen(p);
    return (float) (camera.column(at.x(), at.y(), at.z()) / pixels);
  }

  /** Row of a point, downwards (window units). */
  float y(Point p) {
    Point at = seen(p);
    return (float) (top + (camera.height() - camera.row(at.x(), at.y(), at.z())) / pixels);
  }
}
