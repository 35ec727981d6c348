package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Place;
import flankfit.motion.ModalState.Spindle;
import flankfit.motion.Plane;

/**
 * What must not be left on at a tool change or at the end: CY15, MD07, MD10, MD11, OF04, OF22,
 * RC21, RC22.
 */
final class EndChecks {
  private final Machine machine;
  private final Modes modes;
  private final Report report;
  private final WorkOffsets offsets;
  private final CompensationWords sides;
  private final IncrementalRun run;
  private final TransformWords transforms;
  private final Cycles cycles;

  EndChecks(
      Machine machine,
      WorkOffsets offsets,
      CompensationWords sides,
      IncrementalRun run,
      TransformWords transforms,
      Cycles cycles) {
    this.machine = machine;
    this.modes = machine.modes;
    this.report = machine.report;
    this.offsets = offsets;
    this.sides = sides;
    this.run = run;
    this.transforms = transforms;
    this.cycles = cycles;
  }

  void atToolChange(int word) {
    Place place = report.place(word);
    left(place, "the tool change");
    if (modes.feedMode() != 940) {
      String mode = GCode.text(modes.feedMode());
      report.add(
          Code.MD10,
          place,
          mode + " is still on at the tool change",
          "F of the next tool would be read otherwise",
          "write G94");
    }
    sides.atToolChange(word);
  }

  void atEnd(Place place, String where) {
    run.ends();
    left(place, where);
    sides.atEnd(place);
    int stop = machine.words.m(MCode.STOP);
    if (stop == 2 || stop == 30) {
      machine.frame.endLocal();
      modes.spindle(Spindle.OFF);
      modes.mist(false);
      modes.flood(false);
    }
  }

  private void left(Place place, String where) {
    if (!modes.absolute()) {
      report.add(
          Code.MD07,
          place,
          "incremental mode is still on at " + where,
          "the next coordinates would be distances",
          "write G90");
    }
    if (modes.plane() != Plane.XY) {
      report.add(
          Code.MD11,
          place,
          "plane " + Wording.plane(modes.plane()) + " is still selected at " + where,
          "arcs and cycles of the next tool would lie in it",
          "write G17");
    }
    offsets.left(place, where);
    transforms.left(place, where);
    cycles.left(place, where);
  }
}
