package flankfit.control;

import flankfit.motion.Point;
import flankfit.setup.SetupSheet;
import java.util.Arrays;
import java.util.Map;

/**
 * Where program coordinates lie in the part frame: work offset, common offset, G52 and G92 shift,
 * and the length difference along Z.
 */
final class Frame {
  private final Map<String, Point> offsets;
  private final Point common;
  private Point work;
  private final double[] local = new double[3];
  private final double[] shift = new double[3];
  private boolean suspended;
  private double lengthDifference;

  /** Program zero on each axis, worked out when something it depends on changes. */
  private final double[] zero = new double[3];

  Frame(SetupSheet setup) {
    offsets = setup.workOffsets();
    common = offsets.getOrDefault("common", Point.ZERO);
    work = offsets.getOrDefault("G54", Point.ZERO);
    findZero();
  }

  /** Whether the sheet gives this work offset a value. */
  boolean has(String name) {
    return offsets.containsKey(name);
  }

  void select(String name) {
    work = offsets.getOrDefault(name, Point.ZERO);
    findZero();
  }

  /** Program zero on an axis, part frame (mm). */
  double zero(int axis) {
    return zero[axis];
  }

  private void findZero() {
    for (int axis = 0; axis < 3; axis++) {
      zero[axis] = zeroNow(axis);
    }
  }

  private double zeroNow(int axis) {
    return unshifted(axis)
        + local[axis]
        + (suspended ? 0 : shift[axis])
        + (axis == 2 ? lengthDifference : 0);
  }

  /** Zero of the work offset with the common offset (mm). */
  double unshifted(int axis) {
    return work.axis(axis) + common.axis(axis);
  }

  void local(int axis, double value) {
    local[axis] = value;
    findZero();
  }

  void endLocal() {
    Arrays.fill(local, 0);
    findZero();
  }

  /** Shifts so that a part-frame position gets this coordinate. */
  void shiftTo(int axis, double position, double coordinate) {
    suspended = false;
    shift[axis] += position - zeroNow(axis) - coordinate;
    findZero();
  }

  void endShift() {
    Arrays.fill(shift, 0);
    suspended = false;
    findZero();
  }

  void suspendShift(boolean on) {
    suspended = on;
    findZero();
  }

  boolean isLocal() {
    return local[0] != 0 || local[1] != 0 || local[2] != 0;
  }

  boolean isShifted() {
    return !suspended && (shift[0] != 0 || shift[1] != 0 || shift[2] != 0);
  }

  /** Sum of G52 and G92 shift on an axis (mm). */
  double shifted(int axis) {
    return local[axis] + (suspended ? 0 : shift[axis]);
  }

  void lengthDifference(double value) {
    lengthDifference = value;
    findZero();
  }
}
