package flankfit.setup;

import flankfit.motion.Extents;
import flankfit.motion.Point;
import java.util.Objects;
import java.util.Optional;

/**
 * The stock, in the part frame.
 *
 * @param shape block, cylinder or tube, standing along Z, or a mesh
 * @param box the box that holds it, part frame (mm)
 * @param bore diameter of a tube's bore (mm); 0 for none
 * @param file name of the mesh file beside the sheet; empty for other shapes
 */
public record Stock(Shape shape, Extents box, double bore, Optional<String> file) {
  public Stock {
    Objects.requireNonNull(shape, "shape");
    Objects.requireNonNull(box, "box");
    if (file.isPresent() != (shape == Shape.MESH)) {
      throw new IllegalArgumentException("a mesh has a file, other shapes have none: " + shape);
    }
  }

  /** Stock that is no mesh. */
  public Stock(Shape shape, Extents box, double bore) {
    this(shape, box, bore, Optional.empty());
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
    TUBE,
    /** What a closed mesh holds; the box is the mesh's. */
    MESH
  }
}
