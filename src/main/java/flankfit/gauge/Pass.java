package flankfit.gauge;

import flankfit.motion.ModalState;
import flankfit.unit.Angles;

/**
 * One pass along a helix as found on the tape: consecutive arcs of one tool about one axis.
 *
 * @param first index of its first move
 * @param last index of its last move
 * @param line line of the first move
 * @param state state of the control in the first move
 * @param x axis, part frame (mm)
 * @param y axis, part frame (mm)
 * @param radius radius of the path (mm)
 * @param startAngle polar angle of the first point about the axis (rad)
 * @param sweep signed sweep (rad), positive anticlockwise seen from +Z
 * @param rise signed travel along Z over the sweep (mm)
 * @param zStart height of the tip at the first point, part frame (mm)
 */
record Pass(
    int first,
    int last,
    int line,
    ModalState state,
    double x,
    double y,
    double radius,
    double startAngle,
    double sweep,
    double rise,
    double zStart) {
  /** Travel along the axis in one turn, without sign (mm). */
  double lead() {
    return Math.abs(perRadian()) * Angles.TURN;
  }

  /** Signed rise of the helix for one radian anticlockwise (mm). */
  double perRadian() {
    return rise / sweep;
  }

  double turns() {
    return Math.abs(sweep) / Angles.TURN;
  }

  boolean isAnticlockwise() {
    return sweep > 0;
  }

  boolean isRightHanded() {
    return sweep * rise > 0;
  }

  double zLow() {
    return Math.min(zStart, zStart + rise);
  }

  double zHigh() {
    return Math.max(zStart, zStart + rise);
  }

  /** Height of the helix at polar angle 0 (mm). */
  double phase() {
    return zStart - perRadian() * startAngle;
  }
}
