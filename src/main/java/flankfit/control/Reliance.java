package flankfit.control;

import flankfit.finding.Code;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.List;

/** Notes where a program relies on the state at power-up: MD06, OF01, WD12. Each once. */
final class Reliance {
  private final Machine machine;
  private final Modes modes;
  private final List<String> functions = new ArrayList<>();
  private boolean unitUsed;
  private boolean planeUsed;
  private boolean distanceUsed;
  private boolean moved;
  private boolean ruleless;

  Reliance(Machine machine) {
    this.machine = machine;
    this.modes = machine.modes;
  }

  /** A dimension is about to be read. */
  void dimension() {
    if (!unitUsed) {
      unitUsed = true;
      relyOn(modes.unitStated(), modes.unit() == LengthUnit.INCH ? "G20" : "G21");
    }
  }

  /** The plane is about to matter. */
  void plane() {
    if (!planeUsed) {
      planeUsed = true;
      relyOn(modes.planeStated(), Wording.planeFunction(modes.plane()));
    }
  }

  /** The axis words of the block are about to move the tool. */
  void motion() {
    if (!modes.motionStated() && !ruleless) {
      ruleless = true;
      machine.report.add(
          Code.WD12,
          -1,
          "motion begins without G0 or G1",
          "the control decides from its state at power-up",
          "write G0 or G1");
    }
    if (moved) {
      return;
    }
    moved = true;
    distance();
    if (!modes.offsetStated() && machine.words.g(GCode.ONE_BLOCK) != 530) {
      machine.report.add(
          Code.OF01, -1, "no work offset stated", "G54 of power-up is used", "write G54");
    }
  }

  /** Axis words are about to be read as coordinates or distances. */
  void distance() {
    if (!distanceUsed) {
      distanceUsed = true;
      relyOn(modes.distanceStated(), modes.absolute() ? "G90" : "G91");
    }
  }

  /** Whether no straight motion relies on anything that is not noted yet. */
  boolean isSettled() {
    return unitUsed && moved && (modes.motionStated() || ruleless) && functions.isEmpty();
  }

  private void relyOn(boolean stated, String function) {
    if (!stated) {
      functions.add(function);
    }
  }

  /** Words what the block relied on. */
  void afterBlock() {
    if (functions.isEmpty()) {
      return;
    }
    machine.report.add(
        Code.MD06,
        -1,
        "relies on " + String.join(", ", functions) + " at power-up",
        "another state was perhaps left by another program",
        "start with a line that states them");
    functions.clear();
  }
}
