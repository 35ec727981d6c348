package flankfit.motion;

/**
 * The box that a path fills.
 *
 * @param min low corner, part frame (mm)
 * @param max high corner, part frame (mm)
 */
public record Extents(Point min, Point max) {
  public Extents {
    if (min.x() > max.x() || min.y() > max.y() || min.z() > max.z()) {
      throw new IllegalArgumentException("min must not exceed max: " + min + ", " + max);
    }
  }

  /** The smallest box that holds both. */
  public Extents union(Extents o) {
    return new Extents(
        new Point(
            Math.min(min.x(), o.min.x()),
            Math.min(min.y(), o.min.y()),
            Math.min(min.z(), o.min.z())),
        new Point(
            Math.max(max.x(), o.max.x()),
            Math.max(max.y(), o.max.y()),
            Math.max(max.z(), o.max.z())));
  }

  /** The middle of the box. */
  public Point middle() {
    return new Point((min.x() + max.x()) / 2, (min.y() + max.y()) / 2, (min.z() + max.z()) / 2);
  }

  /** The diagonal of the box (mm). */
  public double diagonal() {
    return min.distance(max);
  }
}
