package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Place;
import java.util.HashSet;
import java.util.Set;

/** G54 to G59.3, G52, G92: which zero is in force. Reports OF02 to OF04. */
final class WorkOffsets {
  private static final int MOST_EXTENDED = 99;

  private final Machine machine;
  private final BlockWords words;
  private final Report report;
  private final CompensationWords sides;
  private final Set<String> withoutValue = new HashSet<>();

  WorkOffsets(Machine machine, CompensationWords sides) {
    this.machine = machine;
    this.words = machine.words;
    this.report = machine.report;
    this.sides = sides;
  }

  /** The work offset that the block selects. */
  void select() {
    int code = words.g(GCode.WORK_OFFSET);
    if (code < 0) {
      return;
    }
    int word = words.gWord(GCode.WORK_OFFSET);
    if (!sides.offFor(Code.RC24, word, GCode.text(code))) {
      return;
    }
    String name = code == 541 ? extended(word) : GCode.text(code);
    if (report.stopped()) {
      return;
    }
    machine.frame.select(name);
    machine.modes.workOffset(name);
    if (!machine.frame.has(name) && withoutValue.add(name)) {
      report.add(Code.OF02, word, name + " has no value in the sheet", "taken as zero", "enter it");
    }
  }

  private String extended(int word) {
    int number = words.word('P');
    if (number < 0) {
      report.add(
          Code.WD11,
          word,
          "G54.1 without P is out of range P1 to P99",
          "P is the number of the work offset",
          "add P");
      return "";
    }
    if (!words.whole(number)) {
      return "";
    }
    double value = Math.rint(words.block().value(number));
    if (value < 1 || value > MOST_EXTENDED) {
      report.add(
          Code.WD11,
          number,
          words.block().text(number) + " is out of range P1 to P99",
          "P is the number of the work offset",
          "correct it");
      return "";
    }
    return "G54.1 P" + (int) value;
  }

  /** G52 and the family of G92. */
  void shift() {
    int code = words.g(GCode.ONE_BLOCK);
    int word = words.gWord(GCode.ONE_BLOCK);
    boolean local = code == 520;
    boolean present = code == 920;
    if (!local && (code < 920 || code > 923)) {
      return;
    }
    if (!sides.offFor(Code.RC24, word, GCode.text(code))) {
      return;
    }
    for (int axis = 0; axis < 3 && !report.stopped() && local; axis++) {
      int at = words.axis(axis);
      if (at >= 0) {
        machine.frame.local(axis, machine.dimensions.millimetres(words.block(), at));
      }
    }
    if (present) {
      presentPoint();
    }
    if (code == 921) {
      machine.frame.endShift();
    } else if (code > 921) {
      machine.frame.suspendShift(code == 922);
    } else if (present) {
      report.add(
          Code.OF03,
          word,
          "G92 shifts every work offset",
          "a stop in mid program leaves it in force",
          "use G52 or another work offset");
    }
  }

  /** The present point gets the coordinates of the block. */
  private void presentPoint() {
    double[] point = machine.tip.clone();
    machine.frame.toProgram(point);
    boolean mixed = false;
    for (int axis = 0; axis < 3 && !report.stopped(); axis++) {
      int at = words.axis(axis);
      if (at >= 0) {
        point[axis] = machine.dimensions.millimetres(words.block(), at);
        mixed |= machine.frame.transforms().mixes(axis);
      }
    }
    machine.frame.transforms().forward(point);
    for (int axis = 0; axis < 3; axis++) {
      if (words.axis(axis) >= 0 || (mixed && machine.frame.transforms().mixes(axis))) {
        machine.frame.shiftTo(axis, machine.tip[axis], point[axis]);
      }
    }
  }

  /** OF04 at a tool change or at the end. */
  void left(Place place, String where) {
    Frame frame = machine.frame;
    if (!frame.isLocal() && !frame.isShifted()) {
      return;
    }
    String shift =
        machine.coordinate(frame.shifted(0))
            + ", "
            + machine.coordinate(frame.shifted(1))
            + ", "
            + machine.coordinate(frame.shifted(2));
    report.add(
        Code.OF04,
        place,
        "shift " + shift + " still in force at " + where,
        "the next part would be displaced",
        "write " + (frame.isLocal() ? "G52 X0 Y0 Z0" : "G92.1"));
  }
}
