package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Severity;
import flankfit.setup.Offsets.Register;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** T, M6, G43, G44, G49 and H, and where the tip stands by them. Reports the family TL. */
final class ToolAndLength {
  private final Machine machine;
  private final Modes modes;
  private final BlockWords words;
  private final Report report;
  private final Set<Integer> unknownTools = new HashSet<>();
  private boolean everChanged;
  private boolean lookForLength;
  private boolean lookForCut = true;
  private boolean cancelled;

  ToolAndLength(Machine machine) {
    this.machine = machine;
    this.modes = machine.modes;
    this.words = machine.words;
    this.report = machine.report;
  }

  /** T of the block; returns whether it changes the tool by itself. */
  boolean select() {
    int word = words.word('T');
    if (word < 0) {
      return false;
    }
    double value = words.block().value(word);
    if (value < -0.5 || value > 99_999_999) {
      report.add(
          Code.WD11,
          word,
          words.block().text(word) + " is out of range 0 to 99999999",
          "it is the number of a tool",
          "correct it");
      return false;
    }
    int selected = (int) Math.rint(value);
    modes.selectedTool(selected);
    modes.selectedSinceChange(true);
    if (selected != 0 && machine.setup.tool(selected).isEmpty() && unknownTools.add(selected)) {
      report.add(
          Code.TL02,
          word,
          "tool " + selected + " is not in the setup sheet",
          "its size is unknown: no metal, no gauge",
          "enter it");
    }
    return machine.switches.tools().changeByT();
  }

  /** Tool selected last. */
  int selected() {
    return machine.modes.selectedTool();
  }

  /** TL01 when M6 has nothing to change to. */
  void checkSelected(int word) {
    if (!modes.selectedSinceChange()) {
      report.add(Code.TL01, word, "M6 and no tool selected", "", "add T");
    }
  }

  /** TL10, where the tip stands at the change. */
  void checkHeight(int word) {
    double z = machine.tip[2];
    double clear = machine.surfaces.clearance();
    if (z < clear) {
      report.add(
          Code.TL10,
          word,
          "tool change at Z" + machine.coordinate(z) + ", clear is Z" + machine.coordinate(clear),
          "the arm would swing through the part",
          "retract first (G91 G28 Z0)");
    }
  }

  /** Puts the selected tool into the spindle. */
  void change() {
    modes.tool(modes.selectedTool());
    modes.selectedSinceChange(false);
    everChanged = true;
    lookForLength = modes.tool() != 0;
    cancelled = false;
    machine.findLengthDifference();
  }

  /** The words of the block about length. */
  void length() {
    int code = words.g(GCode.LENGTH);
    int word = words.word('H');
    if (word >= 0) {
      modes.lengthWord((int) Math.rint(words.block().value(word)));
    }
    if (code == 490) {
      cancelled = modes.lengthMode() != 490;
      modes.lengthMode(490);
    } else if (code > 0) {
      switchOn(code);
    } else if (word < 0) {
      return;
    }
    if (report.stopped()) {
      return;
    }
    if (modes.lengthMode() != 490 && modes.lengthWord() != modes.lengthRegister()) {
      modes.lengthRegister(modes.lengthWord());
    }
    if (modes.lengthMode() != 490) {
      checkRegister(word >= 0 ? word : words.gWord(GCode.LENGTH));
    }
    machine.findLengthDifference();
  }

  private void switchOn(int code) {
    int word = words.gWord(GCode.LENGTH);
    if (modes.lengthWord() < 0) {
      report.add(
          Code.TL13,
          word,
          GCode.text(code) + " without H",
          "",
          modes.tool() > 0 ? "add H" + modes.tool() : "add H");
      return;
    }
    if (code == 440) {
      report.add(Code.TL08, word, "G44 subtracts the length", "hardly ever meant", "write G43");
    }
    if (!words.has('Z')) {
      report.add(
          Code.TL07,
          word,
          GCode.text(code) + " without Z",
          "controls differ: some move at once",
          "add a Z word");
    }
    modes.lengthMode(code);
    modes.lengthRegister(modes.lengthWord());
    lookForLength = false;
    cancelled = false;
  }

  private void checkRegister(int word) {
    int register = modes.lengthRegister();
    Optional<Register> entry = machine.offsets.length(register);
    String name = "H" + register;
    if (register == 0) {
      report.add(
          Code.TL12,
          word,
          GCode.text(modes.lengthMode()) + " H0 is no length",
          "",
          "write H" + (modes.tool() > 0 ? modes.tool() : ""));
      return;
    }
    if (entry.isEmpty()) {
      report.add(Code.TL06, word, name + " has no value", "taken as 0", "enter it");
    }
    if (modes.tool() != 0 && register != modes.tool()) {
      report.add(
          Code.TL05,
          word,
          name + " with tool " + modes.tool(),
          "a register of another tool",
          "write H" + modes.tool());
      shifted(word, name, entry);
    }
    noteLength();
  }

  private void shifted(int word, String name, Optional<Register> entry) {
    Optional<Register> own = machine.setup.offsets().length(modes.tool());
    if (own.isEmpty()) {
      return;
    }
    double used = entry.map(ToolAndLength::total).orElse(0.0);
    double shift = used - own.get().geometry();
    if (Math.abs(shift) > 1e-6) {
      report.add(
          Code.TL09,
          word,
          "tip " + machine.length(Math.abs(shift)) + " too " + (shift > 0 ? "high" : "low"),
          name
              + " = "
              + machine.length(used)
              + ", tool "
              + modes.tool()
              + " needs "
              + machine.length(own.get().geometry()),
          "write H" + modes.tool());
    }
  }

  private void noteLength() {
    int tool = modes.tool();
    if (tool == 0) {
      return;
    }
    boolean known = machine.setup.offsets().length(tool).isPresent();
    machine.assumptions.once(
        Code.AS04,
        "H" + tool,
        known
            ? "length of tool " + tool + " taken from register H" + tool
            : "length of tool " + tool + " unknown: the tip stands where Z says",
        known ? "" : "H" + tool + " is not in the sheet");
  }

  private static double total(Register register) {
    return register.geometry() + register.wear();
  }

  /** Registers have been given other values. */
  void registersChanged() {
    machine.findLengthDifference();
  }

  /** Before a motion with a Z word: TL04, TL11. */
  void beforeZ(double toZ) {
    boolean down = toZ < machine.tip[2] - 1e-9;
    if (lookForLength && down && modes.lengthMode() == 490) {
      lookForLength = false;
      withoutLength();
    }
    if (cancelled) {
      cancelled = false;
      if (down) {
        report.add(
            Code.TL11,
            words.word('Z'),
            "length cancelled, then Z" + Wording.number(words.value('Z')),
            "the tip drops by the tool length",
            "go to the reference point instead");
      }
    }
  }

  private void withoutLength() {
    int tool = modes.tool();
    Optional<Register> own = machine.setup.offsets().length(tool);
    report.add(
        Code.TL04,
        own.isPresent() ? Severity.ERROR : Severity.WARNING,
        report.place(words.word('Z')),
        own.isPresent()
            ? "no tool length offset: the tip stands "
                + machine.length(own.get().geometry())
                + " lower"
            : "no tool length offset: where the tip of tool " + tool + " stands is not known",
        "G43 H" + tool + " is missing",
        "add G43 H" + tool);
  }

  /** A return or machine-coordinate move goes without the length. */
  void machineMove() {
    cancelled = false;
    if (modes.tool() != 0) {
      machine.assumptions.once(
          Code.AS04,
          "machine",
          "G28, G30 and G53 bring the tip itself to the machine position",
          "the length of the tool is not subtracted there");
    }
  }

  /** Whether no motion can give a finding. */
  boolean isSettled() {
    boolean length = lookForLength && modes.lengthMode() == 490;
    return !length && !cancelled && !lookForCut;
  }

  /** TL03 at the first feed motion. */
  void beforeCut() {
    if (!lookForCut) {
      return;
    }
    lookForCut = false;
    int selected = modes.selectedTool();
    if (!everChanged && selected != modes.tool()) {
      report.add(
          Code.TL03,
          -1,
          "T" + selected + " selected, never changed",
          "tool " + modes.tool() + " is still in the spindle",
          "add M6");
    }
  }
}
