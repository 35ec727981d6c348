package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Place;
import flankfit.motion.Point;
import flankfit.setup.Offsets;
import flankfit.setup.Offsets.Register;
import flankfit.setup.RadiusSetting;
import java.util.Optional;

/** G10: sets work offsets and registers. Reports OF05 to OF08. */
final class DataSetting {
  private static final int WORK = 2;
  private static final int EXTENDED = 20;
  private static final int LENGTH_GEOMETRY = 10;
  private static final int LENGTH_WEAR = 11;
  private static final int RADIUS_GEOMETRY = 12;
  private static final int RADIUS_WEAR = 13;
  private static final int FIRST_OFFSET = 53;

  private final Machine machine;
  private final BlockWords words;
  private final Report report;
  private final CompensationWords sides;
  private final ToolAndLength tool;

  DataSetting(Machine machine, CompensationWords sides, ToolAndLength tool) {
    this.machine = machine;
    this.words = machine.words;
    this.report = machine.report;
    this.sides = sides;
    this.tool = tool;
  }

  /** Executes G10 if the block has it. */
  void execute() {
    if (words.g(GCode.ONE_BLOCK) != 100) {
      return;
    }
    int kind = whole('L');
    if (!report.stopped()) {
      set(kind);
    }
  }

  private void set(int kind) {
    switch (kind) {
      case WORK -> workOffset(whole('P'), 0, 6);
      case EXTENDED -> workOffset(whole('P'), 1, 99);
      case LENGTH_GEOMETRY, LENGTH_WEAR, RADIUS_GEOMETRY, RADIUS_WEAR -> register(kind, whole('P'));
      default -> refuse(words.word('L'), "unknown", "L2, L20, or L10 to L13");
    }
  }

  /** Value of L or P; reports OF06 or WD10 when there is none. */
  private int whole(char letter) {
    int word = words.word(letter);
    if (word < 0) {
      refuse(words.gWord(GCode.ONE_BLOCK), "missing " + letter, "add " + letter);
      return -1;
    }
    return words.whole(word) ? (int) Math.rint(words.block().value(word)) : -1;
  }

  private void refuse(int word, String fault, String fix) {
    boolean unknown = fault.equals("unknown");
    String what = "G10: " + fault + (unknown ? " " + words.block().text(word) : "");
    report.add(
        Code.OF06, word, what, "L says what is set, P which one", unknown ? "write " + fix : fix);
  }

  private void workOffset(int number, int least, int most) {
    if (report.stopped()) {
      return;
    }
    if (number < least || number > most) {
      refuse(words.word('P'), "unknown", "P" + least + " to P" + most);
      return;
    }
    if (!words.hasAxis()) {
      refuse(words.gWord(GCode.ONE_BLOCK), "missing X, Y or Z", "add the coordinates");
      return;
    }
    Optional<Point> zero = machine.switches.places().machineZero();
    if (zero.isEmpty()) {
      report.add(
          Code.OF05,
          words.gWord(GCode.ONE_BLOCK),
          "machine coordinates cannot be placed",
          "the sheet does not say where machine zero lies",
          "enter machine-zero, or the offsets themselves");
      return;
    }
    String name = least == 1 ? "G54.1 P" + number : number == 0 ? "common" : ordinary(number);
    boolean acts = (number == 0 && least == 0) || name.equals(machine.modes.workOffset());
    if (!acts || sides.offFor(Code.RC24, words.gWord(GCode.ONE_BLOCK), "G10")) {
      // The common offset is a shift of the others and counts from none.
      place(name, name.equals("common") ? Point.ZERO : zero.get());
    }
  }

  private static String ordinary(int number) {
    return "G" + (FIRST_OFFSET + number);
  }

  private void place(String name, Point zero) {
    Point old = machine.frame.offset(name);
    double[] value = {old.x(), old.y(), old.z()};
    for (int axis = 0; axis < 3; axis++) {
      int word = words.axis(axis);
      if (word >= 0) {
        double length = machine.dimensions.millimetres(words.block(), word);
        value[axis] = machine.modes.absolute() ? zero.axis(axis) + length : value[axis] + length;
      }
    }
    if (report.stopped()) {
      return;
    }
    Point set = new Point(value[0], value[1], value[2]);
    boolean had = machine.frame.has(name);
    machine.frame.offset(name, set);
    adds(name);
    String text = had ? coordinates(old) : "without value";
    changes(name, !had || !set.equals(old), text, coordinates(set));
  }

  private String coordinates(Point p) {
    return machine.coordinate(p.x())
        + ", "
        + machine.coordinate(p.y())
        + ", "
        + machine.coordinate(p.z());
  }

  private void adds(String name) {
    if (!machine.modes.absolute()) {
      report.add(
          Code.OF08, words.gWord(GCode.ONE_BLOCK), "G10 adds to " + name, "G91 is on", "write G90");
    }
  }

  private void changes(String name, boolean changed, String old, String value) {
    if (changed) {
      report.add(
          Code.OF07,
          words.gWord(GCode.ONE_BLOCK),
          name + " " + old + " → " + value,
          "the program overrides what was entered",
          "none needed");
    }
  }

  private void register(int kind, int number) {
    if (report.stopped()) {
      return;
    }
    if (number < 1 || number > 999) {
      refuse(words.word('P'), "unknown", "P1 to P999");
      return;
    }
    if (!words.has('R')) {
      refuse(words.gWord(GCode.ONE_BLOCK), "missing R", "add R");
      return;
    }
    double value = machine.dimensions.millimetres(words.block(), words.word('R'));
    if (!report.stopped()) {
      enter(kind, number, value);
    }
  }

  private void enter(int kind, int number, double value) {
    boolean length = kind == LENGTH_GEOMETRY || kind == LENGTH_WEAR;
    boolean wear = kind == LENGTH_WEAR || kind == RADIUS_WEAR;
    Offsets offsets = machine.offsets;
    Optional<Register> entry = length ? offsets.length(number) : offsets.radius(number);
    Register old = entry.orElse(new Register(0, 0));
    double before = wear ? old.wear() : old.geometry();
    boolean adds = !machine.modes.absolute();
    Place place = report.place(words.word('R'));
    double now = (adds ? before : 0) + value + machine.setup.offsets().trial(place);
    Register changed = wear ? new Register(old.geometry(), now) : new Register(now, old.wear());
    machine.offsets =
        length ? offsets.withLength(number, changed) : offsets.withRadius(number, changed);
    if (length) {
      tool.registersChanged();
    } else {
      String word = words.block().text(words.word('R'));
      machine.settings.add(
          new RadiusSetting(number, wear, adds, now, machine.blockNumber, word, place));
    }
    String name = (length ? "H" : "D") + number + (wear ? " wear" : " geometry");
    adds(name);
    String text = entry.isPresent() ? machine.length(before) : "without value";
    changes(name, entry.isEmpty() || now != before, text, machine.length(now));
  }
}
