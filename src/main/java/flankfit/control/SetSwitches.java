package flankfit.control;

import flankfit.setup.ControlSwitches;
import flankfit.unit.LengthUnit;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** The switches that differ from their defaults, by their names in the sheet. */
final class SetSwitches {
  private final Map<String, String> set = new LinkedHashMap<>();

  private SetSwitches() {}

  /** Name and value of every switch that differs, in the order of the sheet. */
  static Map<String, String> of(ControlSwitches now) {
    SetSwitches switches = new SetSwitches();
    ControlSwitches usual = ControlSwitches.defaults();
    switches.reading(now.reading(), usual.reading());
    switches.motion(now, usual);
    switches.places(now.places(), usual.places());
    switches.tools(now.tools(), usual.tools());
    switches.compensation(now.compensation(), usual.compensation());
    switches.compare("scale-reading", now.scaleReading(), usual.scaleReading());
    switches.cycles(now.cycles(), usual.cycles());
    switches.flow(now.flow(), usual.flow());
    return switches.set;
  }

  private void compare(String name, Object now, Object usual) {
    if (!now.equals(usual)) {
      set.put(name, now.toString());
    }
  }

  private void compare(String name, Enum<?> now, Enum<?> usual) {
    if (now != usual) {
      set.put(name, now.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
  }

  private void choose(String name, boolean now, boolean usual, String whenTrue, String whenFalse) {
    if (now != usual) {
      set.put(name, now ? whenTrue : whenFalse);
    }
  }

  private void reading(ControlSwitches.Reading now, ControlSwitches.Reading usual) {
    compare("number-reading", now.numbers(), usual.numbers());
    choose(
        "input-rounding",
        now.roundToLeastIncrement(),
        usual.roundToLeastIncrement(),
        "least-increment",
        "none");
    compare("least-increment-mm", now.leastIncrementMm(), usual.leastIncrementMm());
    if (now.leastIncrementInch() != usual.leastIncrementInch()) {
      set.put(
          "least-increment-inch",
          Wording.number(LengthUnit.INCH.fromMillimetres(now.leastIncrementInch())));
    }
    choose(
        "power-up-units",
        now.powerUpUnit() == LengthUnit.INCH,
        usual.powerUpUnit() == LengthUnit.INCH,
        "inch",
        "mm");
    compare("semicolon", now.semicolon(), usual.semicolon());
    compare("block-delete", now.blockDelete(), usual.blockDelete());
    compare("optional-stop", now.optionalStop(), usual.optionalStop());
    compare("dwell-p", now.dwellP(), usual.dwellP());
  }

  private void motion(ControlSwitches now, ControlSwitches usual) {
    choose(
        "arc-centre",
        now.arcs().absoluteCentre(),
        usual.arcs().absoluteCentre(),
        "absolute",
        "incremental");
    compare("arc-closure-limit", now.arcs().closureLimit(), usual.arcs().closureLimit());
    compare("arc-turns", now.arcs().turns(), usual.arcs().turns());
    compare(
        "long-arc-by-negative-r",
        now.arcs().longArcByNegativeR(),
        usual.arcs().longArcByNegativeR());
    choose(
        "helix-feed",
        now.arcs().inPlaneFeed(),
        usual.arcs().inPlaneFeed(),
        "in-plane",
        "along-path");
    choose("rapid-path", now.rapids().dogLeg(), usual.rapids().dogLeg(), "dog-leg", "straight");
    compare("rapid-rates", now.rapids().rates(), usual.rapids().rates());
    compare("max-feed", now.rapids().maxFeed(), usual.rapids().maxFeed());
  }

  private void places(ControlSwitches.Places now, ControlSwitches.Places usual) {
    compare("clearance", now.clearance(), usual.clearance());
  }

  private void tools(ControlSwitches.Tools now, ControlSwitches.Tools usual) {
    choose("tool-change", now.changeByT(), usual.changeByT(), "t-alone", "t-then-m6");
    choose("tool-change-moves", now.changeGoesHome(), usual.changeGoesHome(), "z-home", "none");
    compare("geometry-entry", now.geometryEntry(), usual.geometryEntry());
    compare("wear-entry", now.wearEntry(), usual.wearEntry());
    choose("d-default", now.registerByTool(), usual.registerByTool(), "tool-number", "modal");
  }

  private void cycles(ControlSwitches.Cycles now, ControlSwitches.Cycles usual) {
    if (now.repeat() != usual.repeat()) {
      set.put("cycle-repeat", now.repeat().name());
    }
    choose(
        "after-g80",
        now.axisWordsAfterG80AreError(),
        usual.axisWordsAfterG80AreError(),
        "error",
        "previous-motion");
    compare("peck-clearance", now.peckClearance(), usual.peckClearance());
    compare("chip-break-retract", now.chipBreakRetract(), usual.chipBreakRetract());
    if (now.boreShift() != usual.boreShift()) {
      set.put("bore-shift", now.boreShift().word());
    }
    choose("back-bore", now.backBoreFromDepth(), usual.backBoreFromDepth(), "Z-bottom", "R-bottom");
  }

  private void compensation(ControlSwitches.Compensation now, ControlSwitches.Compensation usual) {
    compare("compensation-start", now.startUp(), usual.startUp());
    compare("compensation-start-on-arc", now.startOnArc(), usual.startOnArc());
    compare("compensation-cancel-reference", now.cancelReference(), usual.cancelReference());
    choose("outside-corner", now.mitre(), usual.mitre(), "mitre", "round");
    choose(
        "inside-corner", now.insideCornerIsError(), usual.insideCornerIsError(), "error", "trim");
  }

  private void flow(ControlSwitches.Flow now, ControlSwitches.Flow usual) {
    if (now.callForm() != usual.callForm()) {
      set.put("m98-form", now.callForm() == ControlSwitches.CallForm.SPLIT ? "4+4" : "plain");
    }
    compare("subprograms", now.subprograms(), usual.subprograms());
    choose("fix-rounding", now.fixDown(), usual.fixDown(), "down", "toward-zero");
    compare("loop-limit", now.loopLimit(), usual.loopLimit());
    compare("block-limit", now.blockLimit(), usual.blockLimit());
    choose("end-reset", now.keepsState(), usual.keepsState(), "keep", "power-up");
    compare("move-limit", now.moveLimit(), usual.moveLimit());
  }
}
