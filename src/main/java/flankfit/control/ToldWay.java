package flankfit.control;

import flankfit.motion.Point;
import java.util.Objects;

/**
 * From where to where a block told the tool to go, before radius compensation.
 *
 * @param from where the program had told it to be, part frame (mm)
 * @param to where the program now tells it to be, part frame (mm)
 * @param frame program coordinates as the block left them, by which its own words were read
 */
public record ToldWay(Point from, Point to, ProgramFrame frame) {
  public ToldWay {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
    Objects.requireNonNull(frame, "frame");
  }

  /** Program coordinates where it began (mm). */
  public Point begin() {
    return frame.coordinates(from);
  }

  /** Program coordinates where it ends (mm). */
  public Point end() {
    return frame.coordinates(to);
  }

  /** The way along the part's axes (mm). */
  public Point partWay() {
    return new Point(to.x() - from.x(), to.y() - from.y(), to.z() - from.z());
  }

  /** The way in program distances (mm). */
  public Point way() {
    return frame.distances(partWay());
  }

  /** Whether it leads nowhere. */
  public boolean isStill() {
    return from.equals(to);
  }
}
