package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Place;
import flankfit.motion.Plane;
import flankfit.nc.Block;
import flankfit.setup.ControlSwitches.ScaleReading;

/** G50.1, G51.1, G50, G51, G68 and G69. Reports OF22 to OF24, MD05, and WD11 for their words. */
final class TransformWords {
  private static final double LARGE = 100;
  private static final double SMALL = 0.01;
  private static final double THOUSAND = 1000;

  private final Machine machine;
  private final BlockWords words;
  private final Report report;
  private final CompensationWords sides;
  private final Transforms transforms;

  TransformWords(Machine machine, CompensationWords sides) {
    this.machine = machine;
    this.words = machine.words;
    this.report = machine.report;
    this.sides = sides;
    this.transforms = machine.frame.transforms();
  }

  /** MD05 when the block changes the unit or the plane while that is in use. */
  void forbidChange(int word, String what) {
    String mode = modeInUse();
    if (!mode.isEmpty()) {
      report.add(
          Code.MD05,
          word,
          what + " changed while " + mode + " is on",
          "the data of the " + mode + " would change meaning",
          "end the " + mode + " first");
    }
  }

  private String modeInUse() {
    if (machine.cycle.isOn() && !words.endsCycle()) {
      return "cycle";
    }
    if (transforms.isRotated() && words.g(GCode.ROTATION) != 690) {
      return "rotation";
    }
    return transforms.isScaled() && words.g(GCode.SCALE) != 500 ? "scaling" : "";
  }

  /** Executes the words of the block. */
  void execute() {
    mirror();
    if (!report.stopped()) {
      scale();
    }
    if (!report.stopped()) {
      rotate();
    }
  }

  /** Whether compensation lets a group of the block act; ending what is not on is no change. */
  private boolean allowed(int group, boolean isOn) {
    int code = words.g(group);
    boolean ends = code == 500 || code == 501 || code == 690;
    return (ends && !isOn) || sides.offFor(Code.RC24, words.gWord(group), GCode.text(code));
  }

  private double length(int word) {
    return machine.dimensions.millimetres(words.block(), word);
  }

  private void mirror() {
    int code = words.g(GCode.MIRROR);
    if (code < 0 || !allowed(GCode.MIRROR, transforms.isMirrored())) {
      return;
    }
    int word = words.gWord(GCode.MIRROR);
    if (code == 511 && !words.hasAxis()) {
      report.add(
          Code.WD11,
          word,
          "G51.1 without X, Y or Z is out of range: one axis or more",
          "each names an axis and where it is mirrored",
          "name the axes");
      return;
    }
    for (int axis = 0; axis < 3; axis++) {
      int at = words.axis(axis);
      if (code == 511 && at >= 0) {
        transforms.mirror(axis, length(at));
      } else if (code == 501 && (at >= 0 || !words.hasAxis())) {
        transforms.endMirror(axis);
      }
    }
    if (code == 511 && transforms.flips(machine.modes.plane())) {
      report.add(
          Code.OF24,
          word,
          "mirrored: left and right change places",
          "climb milling becomes conventional",
          "check the side");
    }
  }

  /** Where the tool stands in the coordinates that the scaling or the rotation gets (mm). */
  private double[] present(boolean forScale) {
    double[] at = machine.tip.clone();
    for (int axis = 0; axis < 3; axis++) {
      at[axis] -= machine.frame.zero(axis);
    }
    if (forScale) {
      transforms.unrotate(at);
    }
    return at;
  }

  private void scale() {
    int code = words.g(GCode.SCALE);
    if (code < 0 || !allowed(GCode.SCALE, transforms.isScaled())) {
      return;
    }
    if (code == 500) {
      transforms.endScale();
      return;
    }
    double[] factors = factors(words.gWord(GCode.SCALE));
    double[] centre = present(true);
    for (int axis = 0; axis < 3; axis++) {
      if (words.axis(axis) >= 0) {
        centre[axis] = length(words.axis(axis));
      }
    }
    if (!report.stopped()) {
      transforms.scale(centre, factors);
    }
  }

  private double[] factors(int word) {
    double[] factors = {1, 1, 1};
    if (words.has('P') == words.hasCentre()) {
      boolean both = words.has('P');
      report.add(
          both ? Code.WD04 : Code.WD11,
          both ? words.word('P') : word,
          both
              ? "P and I J K both give the scale factor"
              : "G51 without P is out of range: a factor above 0",
          both ? "only one can be meant" : "P is the factor, or I J K one for each axis",
          both ? "keep one" : "add P");
      return factors;
    }
    for (int axis = 0; axis < 3 && !report.stopped(); axis++) {
      int at = words.has('P') ? words.word('P') : words.centre(axis);
      if (at >= 0) {
        factors[axis] = factor(at, axis == 0 || !words.has('P'));
      }
    }
    return factors;
  }

  private double factor(int word, boolean first) {
    Block block = words.block();
    double value = block.value(word);
    if (value <= 0) {
      report.add(
          Code.WD11,
          word,
          block.text(word) + " is out of range above 0",
          "a scale factor does not mirror",
          "write G51.1 to mirror");
    }
    if (machine.switches.scaleReading() == ScaleReading.THOUSANDTHS) {
      return value / THOUSAND;
    }
    if (first && value > 0 && (value >= LARGE || value <= SMALL)) {
      report.add(
          Code.OF23,
          word,
          "scale factor " + Wording.number(value) + ", usual are 0.01 to 100",
          "thousandths are perhaps meant",
          "set scale-reading, or write the factor with a point");
    }
    return value;
  }

  private void rotate() {
    int code = words.g(GCode.ROTATION);
    if (code < 0 || !allowed(GCode.ROTATION, transforms.isRotated())) {
      return;
    }
    if (code == 690) {
      transforms.endRotation();
      return;
    }
    if (!words.has('R')) {
      report.add(
          Code.WD11,
          words.gWord(GCode.ROTATION),
          "G68 without R is out of range: an angle",
          "R is the angle in degrees",
          "add R");
      return;
    }
    Plane plane = machine.modes.plane();
    double[] centre = present(false);
    for (int axis : new int[] {plane.u(), plane.v()}) {
      if (words.axis(axis) >= 0) {
        centre[axis] = length(words.axis(axis));
      }
    }
    double angle = words.value('R') + (machine.modes.absolute() ? 0 : transforms.degrees());
    if (!report.stopped()) {
      transforms.rotate(plane, centre[plane.u()], centre[plane.v()], angle);
    }
  }

  /** OF22 at a tool change or at the end. */
  void left(Place place, String where) {
    left(transforms.isRotated() && words.g(GCode.ROTATION) != 690, "rotation", "G69", place, where);
    left(transforms.isScaled() && words.g(GCode.SCALE) != 500, "scale", "G50", place, where);
    left(transforms.isMirrored() && !endsMirrors(), "mirror", "G50.1", place, where);
  }

  /** Whether the block ends the mirror of every axis: also at M6, which acts before it. */
  private boolean endsMirrors() {
    boolean ends = words.g(GCode.MIRROR) == 501;
    for (int axis = 0; axis < 3 && words.hasAxis(); axis++) {
      ends &= !transforms.isMirrored(axis) || words.axis(axis) >= 0;
    }
    return ends;
  }

  private void left(boolean on, String what, String end, Place place, String where) {
    if (on) {
      report.add(Code.OF22, place, what + " still on at " + where, "", "write " + end);
    }
  }
}
