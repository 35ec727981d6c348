package flankfit.lesson;

import flankfit.control.BlockTrace;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import java.util.Objects;
import java.util.Optional;

/**
 * The arc of a step, as told: before radius compensation.
 *
 * @param plane plane of the arc
 * @param centre its centre at the height of its start, program coordinates (mm)
 * @param toCentre the way there from the start, program distances (mm)
 * @param partToCentre the same along the part's axes (mm)
 * @param radius radius at the start (mm)
 * @param sweep signed sweep on the part (rad), positive anticlockwise
 * @param rise travel along the plane's normal on the part (mm)
 */
public record ArcStep(
    Plane plane,
    Point centre,
    Point toCentre,
    Point partToCentre,
    double radius,
    double sweep,
    double rise) {
  public ArcStep {
    Objects.requireNonNull(plane, "plane");
    Objects.requireNonNull(centre, "centre");
    Objects.requireNonNull(toCentre, "toCentre");
    Objects.requireNonNull(partToCentre, "partToCentre");
  }

  /** The arc that a block told the tool to make, if it made one. */
  static Optional<ArcStep> of(BlockTrace block) {
    Tape moves = block.moves();
    for (int i = 0; i < moves.size(); i++) {
      if (moves.kind(i) == MoveKind.ARC && !moves.inserted(i)) {
        return Optional.of(of(block, i));
      }
    }
    return Optional.empty();
  }

  private static ArcStep of(BlockTrace block, int move) {
    Tape moves = block.moves();
    Plane plane = moves.state(move).plane();
    double[] centre = new double[3];
    centre[plane.u()] = moves.centreU(move);
    centre[plane.v()] = moves.centreV(move);
    Point from = block.way().from();
    centre[plane.n()] = from.axis(plane.n());
    Point part = new Point(centre[0], centre[1], centre[2]);
    Point way = new Point(part.x() - from.x(), part.y() - from.y(), part.z() - from.z());
    // Compensation keeps centre and sweep, trims a corner apart: the sweep told is that from the
    // programmed ends, which the tape does not hold; it is worked out from them.
    return new ArcStep(
        plane,
        block.way().frame().coordinates(part),
        block.way().frame().distances(way),
        way,
        Math.hypot(way.axis(plane.u()), way.axis(plane.v())),
        sweep(block, plane, part, moves.sweep(move)),
        block.way().partWay().axis(plane.n()));
  }

  /** The sweep between the programmed ends that is nearest to the one made (rad). */
  private static double sweep(BlockTrace block, Plane plane, Point centre, double made) {
    double first = angle(block.way().from(), plane, centre);
    double last = angle(block.way().to(), plane, centre);
    double turns = Math.rint((made - (last - first)) / (2 * Math.PI));
    return last - first + turns * 2 * Math.PI;
  }

  private static double angle(Point p, Plane plane, Point centre) {
    return StrictMath.atan2(
        p.axis(plane.v()) - centre.axis(plane.v()), p.axis(plane.u()) - centre.axis(plane.u()));
  }
}
