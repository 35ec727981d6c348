package flankfit.control;

import flankfit.motion.Point;
import flankfit.setup.SetupSheet;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Where program coordinates lie in the part frame: mirror, scale and rotation, then work offset,
 * common offset, G52 and G92 shift, and the length difference along Z.
 */
final class Frame {
  private static final String COMMON = "common";

  private final Map<String, Point> offsets;
  private final Transforms transforms = new Transforms();
  private Point common;
  private String workName = "G54";
  private Point work;
  private final double[] local = new double[3];
  private final double[] shift = new double[3];
  private boolean suspended;
  private double lengthDifference;

  /** Program zero on each axis, worked out when something it depends on changes. */
  private final double[] zero = new double[3];

  Frame(SetupSheet setup) {
    offsets = new HashMap<>(setup.workOffsets());
    common = offsets.getOrDefault(COMMON, Point.ZERO);
    work = offsets.getOrDefault("G54", Point.ZERO);
    findZero();
  }

  /** Whether the sheet gives this work offset a value. */
  boolean has(String name) {
    return offsets.containsKey(name);
  }

  /** Mirror, scale and rotation. */
  Transforms transforms() {
    return transforms;
  }

  /** Value of a work offset or the common one; zero without a value. */
  Point offset(String name) {
    return offsets.getOrDefault(name, Point.ZERO);
  }

  /** Gives a work offset or the common one another value. */
  void offset(String name, Point value) {
    offsets.put(name, value);
    if (name.equals(COMMON)) {
      common = value;
    } else if (name.equals(workName)) {
      work = value;
    }
    findZero();
  }

  /** Program coordinates to the part frame (mm), in place. */
  void toPart(double[] p) {
    transforms.forward(p);
    for (int axis = 0; axis < 3; axis++) {
      p[axis] += zero(axis);
    }
  }

  /** Part frame to program coordinates (mm), in place. */
  void toProgram(double[] p) {
    for (int axis = 0; axis < 3; axis++) {
      p[axis] -= zero(axis);
    }
    if (transforms.isOn()) {
      transforms.back(p);
    }
  }

  /** Where program coordinates lie now, for an observer. */
  ProgramFrame told() {
    if (!transforms.isOn()) {
      return ProgramFrame.shifted(zero[0], zero[1], zero[2]);
    }
    double[][] images = {{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    for (double[] image : images) {
      toProgram(image);
    }
    return new ProgramFrame(
        point(images[0]),
        difference(images[1], images[0]),
        difference(images[2], images[0]),
        difference(images[3], images[0]),
        true);
  }

  private static Point point(double[] p) {
    return new Point(p[0], p[1], p[2]);
  }

  private static Point difference(double[] a, double[] b) {
    return new Point(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
  }

  /** A program coordinate of an axis that no rotation mixes, in the part frame (mm). */
  double level(int axis, double coordinate) {
    return transforms.forward(axis, coordinate) + zero(axis);
  }

  /** Undoes {@link #level}. */
  double coordinate(int axis, double position) {
    return transforms.back(axis, position - zero(axis));
  }

  void select(String name) {
    workName = name;
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

  /** Shifts so that a part-frame position gets this coordinate before anything else is added. */
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

  /** Takes over the G52 and the G92 shift of another frame. */
  void takeOverShifts(Frame other) {
    System.arraycopy(other.local, 0, local, 0, 3);
    System.arraycopy(other.shift, 0, shift, 0, 3);
    suspended = other.suspended;
    findZero();
  }

  /** Takes over the values of the work offsets of another frame. */
  void takeOverOffsets(Frame other) {
    other.offsets.forEach(this::offset);
  }

  /** Names of the work offsets that have another value in another frame, or none. */
  SortedSet<String> offsetsOtherThan(Frame other) {
    SortedSet<String> names = new TreeSet<>(offsets.keySet());
    names.removeIf(name -> offsets.get(name).equals(other.offsets.get(name)));
    return names;
  }

  /** Whether the shifts are those of another frame. */
  boolean isShiftedLike(Frame other) {
    return Arrays.equals(local, other.local)
        && Arrays.equals(shift, other.shift)
        && suspended == other.suspended;
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

  /** Where the zero of the work offset lies, the common offset included, part frame (mm). */
  Point workZero() {
    return new Point(unshifted(0), unshifted(1), unshifted(2));
  }

  /** Shift by G52 (mm). */
  Point local() {
    return new Point(local[0], local[1], local[2]);
  }

  /** Shift by G92 in force (mm). */
  Point shift() {
    return suspended ? Point.ZERO : new Point(shift[0], shift[1], shift[2]);
  }

  void lengthDifference(double value) {
    lengthDifference = value;
    findZero();
  }
}
