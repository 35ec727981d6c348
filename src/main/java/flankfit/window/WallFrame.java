package flankfit.window;

import flankfit.motion.Extents;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.setup.Hole;
import flankfit.setup.SetupSheet;
import java.util.Optional;

/**
 * The wall of a hole laid flat: the angle about its axis runs across, as length along the wall, the
 * height upwards as it is, both to one scale. So a true helix is a straight line.
 *
 * @param name name of the hole
 * @param x axis, part frame (mm)
 * @param y axis, part frame (mm)
 * @param radius radius of the wall (mm), above 0
 * @param top height of the mouth, part frame (mm)
 * @param bottom height of the lower end, part frame (mm)
 */
record WallFrame(String name, double x, double y, double radius, double top, double bottom) {
  /** Nearer to the axis than this (mm) a point has no direction. */
  static final double ON_AXIS = 1e-3;

  /** The wall at a move: of the hole the tip is in or nearest to, else round the next arc. */
  static Optional<WallFrame> of(Tape tape, SetupSheet setup, int move) {
    if (!setup.holes().isEmpty()) {
      double x = move < 0 ? 0 : tape.toX(move);
      double y = move < 0 ? 0 : tape.toY(move);
      Hole best = setup.holes().get(0);
      for (Hole hole : setup.holes()) {
        if (Math.hypot(x - hole.x(), y - hole.y()) < Math.hypot(x - best.x(), y - best.y())) {
          best = hole;
        }
      }
      double depth = best.depth().orElse(2 * best.diameter());
      return Optional.of(
          new WallFrame(
              best.name(),
              best.x(),
              best.y(),
              best.diameter() / 2,
              best.top(),
              best.top() - depth));
    }
    for (int m = Math.max(0, move); m < tape.size(); m++) {
      if (tape.kind(m) == MoveKind.ARC
          && tape.state(m).plane() == Plane.XY
          && tape.radius(m) > ON_AXIS) {
        double r = tape.radius(m);
        double high = Math.max(tape.fromZ(m), tape.toZ(m));
        double low = Math.min(tape.fromZ(m), tape.toZ(m));
        return Optional.of(
            new WallFrame(
                "arc of line " + tape.line(m),
                tape.centreU(m),
                tape.centreV(m),
                r,
                high + r,
                low - r));
      }
    }
    return Optional.empty();
  }

  /** Length of the wall round the axis (mm). */
  double circumference() {
    return 2 * Math.PI * radius;
  }

  /** Angle of a point about the axis (rad), in [0, 2π). */
  double angle(double px, double py) {
    double a = Math.atan2(py - y, px - x);
    return a < 0 ? a + 2 * Math.PI : a;
  }

  /** Distance of a point from the axis (mm). */
  double distance(double px, double py) {
    return Math.hypot(px - x, py - y);
  }

  /** Where a point lies on the flat wall: across, 0, height (mm). */
  Point flat(double px, double py, double pz) {
    return new Point(angle(px, py) * radius, 0, pz);
  }

  /** The wall laid flat, as a box to look at. */
  Extents box() {
    return new Extents(new Point(0, 0, bottom), new Point(circumference(), 0, top));
  }
}
