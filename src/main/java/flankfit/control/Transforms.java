package flankfit.control;

import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.unit.Angles;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Mirror, scale and rotation of program coordinates, in this order, before any offset is added. All
 * coordinates are in millimetres.
 */
final class Transforms {
  private static final double TURN_DEGREES = 360;
  private static final double QUARTER_DEGREES = 90;

  private final boolean[] mirrored = new boolean[3];
  private final double[] mirrorAt = new double[3];
  private boolean scaled;
  private final double[] scaleAt = new double[3];
  private final double[] factor = {1, 1, 1};
  private boolean rotated;
  private Plane plane = Plane.XY;
  private double centreU;
  private double centreV;
  private double degrees;
  private double cos = 1;
  private double sin;
  private boolean on;

  /** Whether any of them is on. */
  boolean isOn() {
    return on;
  }

  boolean isScaled() {
    return scaled;
  }

  boolean isRotated() {
    return rotated;
  }

  boolean isMirrored() {
    return mirrored[0] || mirrored[1] || mirrored[2];
  }

  boolean isMirrored(int axis) {
    return mirrored[axis];
  }

  /** Whether left and right change places in a plane. */
  boolean flips(Plane in) {
    return on && mirrored[in.u()] != mirrored[in.v()];
  }

  /** Whether the rotation mixes this axis with another. */
  boolean mixes(int axis) {
    return rotated && axis != plane.n();
  }

  /** Whether circles of a plane stay circles. */
  boolean keepsCircles(Plane in) {
    return factor[in.u()] == factor[in.v()];
  }

  /** What lengths in a plane grow by (1), when circles stay circles. */
  double factor(Plane in) {
    return factor[in.u()];
  }

  void mirror(int axis, double at) {
    mirrored[axis] = true;
    mirrorAt[axis] = at;
    update();
  }

  void endMirror(int axis) {
    mirrored[axis] = false;
    update();
  }

  /** Scales about a point by a factor above 0 on each axis. */
  void scale(double[] at, double[] by) {
    System.arraycopy(at, 0, scaleAt, 0, 3);
    System.arraycopy(by, 0, factor, 0, 3);
    scaled = true;
    update();
  }

  void endScale() {
    Arrays.fill(factor, 1);
    scaled = false;
    update();
  }

  /** Angle in force (degrees), anticlockwise; 0 when none is. */
  double degrees() {
    return rotated ? degrees : 0;
  }

  /** Rotates in a plane about a point by an angle (degrees), anticlockwise. */
  void rotate(Plane in, double atU, double atV, double byDegrees) {
    plane = in;
    centreU = atU;
    centreV = atV;
    degrees = byDegrees;
    double rest = byDegrees % TURN_DEGREES;
    double quarters = rest / QUARTER_DEGREES;
    if (quarters == Math.rint(quarters)) {
      int whole = Math.floorMod((int) quarters, 4);
      cos = whole == 0 ? 1 : whole == 2 ? -1 : 0;
      sin = whole == 1 ? 1 : whole == 3 ? -1 : 0;
    } else {
      cos = StrictMath.cos(Angles.toRadians(rest));
      sin = StrictMath.sin(Angles.toRadians(rest));
    }
    rotated = true;
    update();
  }

  void endRotation() {
    rotated = false;
    update();
  }

  /** Takes over what is on in another frame. */
  void takeOver(Transforms other) {
    System.arraycopy(other.mirrored, 0, mirrored, 0, 3);
    System.arraycopy(other.mirrorAt, 0, mirrorAt, 0, 3);
    scaled = other.scaled;
    System.arraycopy(other.scaleAt, 0, scaleAt, 0, 3);
    System.arraycopy(other.factor, 0, factor, 0, 3);
    rotated = other.rotated;
    plane = other.plane;
    centreU = other.centreU;
    centreV = other.centreV;
    degrees = other.degrees;
    cos = other.cos;
    sin = other.sin;
    update();
  }

  private void update() {
    on = scaled || rotated || isMirrored();
  }

  /** Where each of X, Y, Z is mirrored (mm); empty for an axis that is not. */
  List<OptionalDouble> mirrors() {
    List<OptionalDouble> mirrors = new ArrayList<>();
    for (int axis = 0; axis < 3; axis++) {
      mirrors.add(mirrored[axis] ? OptionalDouble.of(mirrorAt[axis]) : OptionalDouble.empty());
    }
    return mirrors;
  }

  /** The scaling in force. */
  Optional<ControlState.Scale> scaling() {
    Point centre = new Point(scaleAt[0], scaleAt[1], scaleAt[2]);
    return scaled
        ? Optional.of(new ControlState.Scale(centre, factor[0], factor[1], factor[2]))
        : Optional.empty();
  }

  /** The rotation in force. */
  Optional<ControlState.Rotation> rotation() {
    return rotated
        ? Optional.of(new ControlState.Rotation(plane, centreU, centreV, degrees))
        : Optional.empty();
  }

  /** Program coordinates to coordinates from which only offsets are missing, in place. */
  void forward(double[] p) {
    for (int axis = 0; axis < 3; axis++) {
      p[axis] = forward(axis, p[axis]);
    }
    if (rotated) {
      double du = p[plane.u()] - centreU;
      double dv = p[plane.v()] - centreV;
      p[plane.u()] = centreU + cos * du - sin * dv;
      p[plane.v()] = centreV + sin * du + cos * dv;
    }
  }

  /** Mirror and scale of one axis; all there is for an axis that the rotation does not mix. */
  double forward(int axis, double coordinate) {
    double c = mirrored[axis] ? 2 * mirrorAt[axis] - coordinate : coordinate;
    return scaled ? scaleAt[axis] + factor[axis] * (c - scaleAt[axis]) : c;
  }

  /** Undoes {@link #forward(double[])}, in place. */
  void back(double[] p) {
    unrotate(p);
    for (int axis = 0; axis < 3; axis++) {
      p[axis] = back(axis, p[axis]);
    }
  }

  /** Undoes {@link #forward(int, double)}. */
  double back(int axis, double coordinate) {
    double c = unscale(axis, coordinate);
    return mirrored[axis] ? 2 * mirrorAt[axis] - c : c;
  }

  /** Undoes the scaling of an axis alone. */
  double unscale(int axis, double coordinate) {
    return scaled ? scaleAt[axis] + (coordinate - scaleAt[axis]) / factor[axis] : coordinate;
  }

  /** Undoes the rotation alone, in place. */
  void unrotate(double[] p) {
    if (rotated) {
      double du = p[plane.u()] - centreU;
      double dv = p[plane.v()] - centreV;
      p[plane.u()] = centreU + cos * du + sin * dv;
      p[plane.v()] = centreV - sin * du + cos * dv;
    }
  }

  /** A distance instead of a point, in place. */
  void turn(double[] d) {
    for (int axis = 0; axis < 3; axis++) {
      d[axis] *= (mirrored[axis] ? -1 : 1) * factor[axis];
    }
    if (rotated) {
      double du = d[plane.u()];
      double dv = d[plane.v()];
      d[plane.u()] = cos * du - sin * dv;
      d[plane.v()] = sin * du + cos * dv;
    }
  }
}
