package flankfit.setup;

import flankfit.motion.Extents;
import flankfit.motion.Point;
import java.util.Objects;

/**
 * The stock, in the part frame.
 *
 * @param shape block, cylinder or tube, standing along Z
 * @param box the box that holds it, part frame (mm)
 * @param bore diameter of a tube's bore (mm); 0 for none
 */
public record Stock(Shape shape, Extents box, double bore) {
  public Stock {
    Objects.requireNonNull(shape, "shape");
    Objects.requireNonNull(box, "box");
  }

  /** Height of the top, part frame (mm). */
  public double top() {
    return box.max().z();
  }

  /** Height of the bottom, part frame (mm). */
  public double bottom() {
    return box.min().z();
  }

  /** Middle of the top face. */
  public Point topMiddle() {
    Point middle = box.middle();
    return new Point(middle.x(), middle.y(), top());
  }

  /** Shapes of stock. */
  public enum Shape {
    BLOCK,
    CYLINDER,
    TUBE
  }
}
