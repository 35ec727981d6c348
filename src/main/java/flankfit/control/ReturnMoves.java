package flankfit.control;

import flankfit.finding.Code;
import flankfit.motion.Point;
import java.util.Optional;

/** G28, G30 and G53. Reports OF09 to OF12. */
final class ReturnMoves {
  private final Machine machine;
  private final BlockWords words;
  private final Report report;
  private final CompensationWords sides;
  private final Mover mover;
  private final ToolAndLength tool;
  private boolean assumptionNoted;

  ReturnMoves(Machine machine, CompensationWords sides, Mover mover, ToolAndLength tool) {
    this.machine = machine;
    this.words = machine.words;
    this.report = machine.report;
    this.sides = sides;
    this.mover = mover;
    this.tool = tool;
  }

  /** G28 or G30 of the block: by way of the intermediate point to the reference point. */
  void toReference(double[] target) {
    int code = words.g(GCode.ONE_BLOCK);
    int word = words.gWord(GCode.ONE_BLOCK);
    String function = GCode.text(code);
    if (!sides.offFor(Code.RC23, word, function)) {
      return;
    }
    if (!words.hasAxis()) {
      report.add(Code.OF12, word, function + " names no axis", "", "name the axes");
      return;
    }
    Point reference = code == 280 ? known(Optional.empty(), word) : other(word);
    if (report.stopped()) {
      return;
    }
    lowIntermediate(target, function);
    boolean assumedPoint = machine.switches.places().reference().isEmpty();
    tool.machineMove();
    mover.rapid(target);
    double[] end = target.clone();
    for (int axis = 0; axis < 3; axis++) {
      if (words.axis(axis) >= 0) {
        machine.assumed[axis] = false;
        end[axis] = reference.axis(axis);
      }
    }
    if (assumedPoint) {
      assumeNamedAxes();
    }
    mover.rapid(end);
  }

  private void assumeNamedAxes() {
    for (int axis = 0; axis < 3; axis++) {
      machine.assumed[axis] |= words.axis(axis) >= 0;
    }
  }

  private Point other(int word) {
    int number = words.word('P');
    var places = machine.switches.places();
    if (number < 0) {
      return known(places.reference2(), word);
    }
    if (!words.whole(number)) {
      return Point.ZERO;
    }
    int value = (int) Math.rint(words.block().value(number));
    return switch (value) {
      case 2 -> known(places.reference2(), word);
      case 3 -> known(places.reference3(), word);
      case 4 -> known(places.reference4(), word);
      default -> {
        report.add(
            Code.WD11,
            number,
            words.block().text(number) + " is out of range P2 to P4",
            "P is the number of the reference point",
            "correct it");
        yield Point.ZERO;
      }
    };
  }

  /** A point of the sheet, or the reference point, assumed if need be. */
  private Point known(Optional<Point> stated, int word) {
    if (stated.isPresent()) {
      return stated.get();
    }
    Point point = machine.reference();
    boolean assumed =
        machine.switches.places().reference().isEmpty() || words.g(GCode.ONE_BLOCK) == 300;
    if (assumed && !assumptionNoted) {
      assumptionNoted = true;
      report.add(
          Code.OF09,
          word,
          "reference point assumed at "
              + machine.coordinate(point.x())
              + ", "
              + machine.coordinate(point.y())
              + ", "
              + machine.coordinate(point.z()),
          "the sheet gives none",
          "enter reference-point");
    }
    return point;
  }

  private void lowIntermediate(double[] target, String function) {
    int z = words.axis(2);
    if (z < 0 || !machine.modes.absolute() || target[2] >= machine.surfaces.clearance()) {
      return;
    }
    report.add(
        Code.OF11,
        z,
        "goes to Z" + machine.coordinate(target[2]) + " first",
        "the words of " + function + " are an intermediate point",
        "write G91 " + function + " Z0");
  }

  /** Fills the target of a G53 block; false after an error. */
  boolean machineTarget(double[] target) {
    int word = words.gWord(GCode.ONE_BLOCK);
    if (!sides.offFor(Code.RC23, word, "G53")) {
      return false;
    }
    if (!machine.modes.absolute() || machine.modes.motion() > 1 || machine.cycle.isOn()) {
      report.add(
          Code.OF10,
          word,
          "G53 needs G90 and G0 or G1",
          "machine coordinates are absolute",
          "write G90 G0 G53");
      return false;
    }
    Optional<Point> zero = machine.switches.places().machineZero();
    Point origin = zero.orElseGet(() -> known(Optional.empty(), word));
    for (int axis = 0; axis < 3; axis++) {
      int at = words.axis(axis);
      target[axis] =
          at < 0
              ? machine.tip[axis]
              : origin.axis(axis) + machine.dimensions.millimetres(words.block(), at);
    }
    if (zero.isEmpty() && machine.switches.places().reference().isEmpty()) {
      assumeNamedAxes();
    }
    tool.machineMove();
    return !report.stopped();
  }
}
