package flankfit.window;

import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import java.util.Objects;

/**
 * An arc's centre as its words give it: from the start that the block knows, before radius
 * compensation moved it.
 *
 * @param start where the arc begins as programmed
 * @param centre the centre, at the height of the start
 */
record ArcVectors(Point start, Point centre) {
  ArcVectors {
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(centre, "centre");
  }

  /** Those of an arc of a tape. */
  static ArcVectors of(Tape tape, int move) {
    Point start = move == 0 ? tape.start() : tape.programmedTo(move - 1);
    Plane plane = tape.state(move).plane();
    double[] c = {start.x(), start.y(), start.z()};
    c[plane.u()] = tape.centreU(move);
    c[plane.v()] = tape.centreV(move);
    return new ArcVectors(start, new Point(c[0], c[1], c[2]));
  }

  /** I, J or K (mm), by axis: 0 X, 1 Y, 2 Z. */
  double word(int axis) {
    return centre.axis(axis) - start.axis(axis);
  }

  /** The corner between start and centre: the words laid one after the other. */
  Point corner(int axes) {
    return new Point(
        axes > 0 ? centre.x() : start.x(),
        axes > 1 ? centre.y() : start.y(),
        axes > 2 ? centre.z() : start.z());
  }
}
