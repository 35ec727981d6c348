package flankfit.control;

import flankfit.control.SwitchChoice.Value;
import flankfit.setup.ControlSwitches;
import flankfit.setup.ControlSwitches.Arcs;
import flankfit.setup.ControlSwitches.BoreShift;
import flankfit.setup.ControlSwitches.CallForm;
import flankfit.setup.ControlSwitches.CancelReference;
import flankfit.setup.ControlSwitches.Compensation;
import flankfit.setup.ControlSwitches.Cycles;
import flankfit.setup.ControlSwitches.Entry;
import flankfit.setup.ControlSwitches.Flow;
import flankfit.setup.ControlSwitches.Rapids;
import flankfit.setup.ControlSwitches.RepeatWord;
import flankfit.setup.ControlSwitches.ScaleReading;
import flankfit.setup.ControlSwitches.StartUp;
import flankfit.setup.ControlSwitches.Tools;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/** The switches that can be tried at another value, in the order of the sheet. */
final class SwitchChoices {
  static final List<SwitchChoice> ALL = all();

  private SwitchChoices() {}

  private static List<SwitchChoice> all() {
    List<SwitchChoice> all = new ArrayList<>();
    ReadingChoices.addTo(all);
    motion(all);
    tools(all);
    compensation(all);
    cycles(all);
    flow(all);
    return List.copyOf(all);
  }

  static SwitchChoice choice(
      String name, String usual, Predicate<ProgramWords> mayMatter, Value... others) {
    return new SwitchChoice(name, usual, List.of(others), mayMatter);
  }

  static Value to(String word, UnaryOperator<ControlSwitches> set) {
    return new Value(word, set);
  }

  private static void motion(List<SwitchChoice> all) {
    all.add(
        choice(
            "arc-centre",
            "incremental",
            words -> isTurned(words) && words.anyOf("IJK"),
            to("absolute", s -> arcs(s, true, s.arcs().longArcByNegativeR(), feedInPlane(s)))));
    all.add(
        choice(
            "long-arc-by-negative-r",
            "true",
            words -> isTurned(words) && words.negativeRadius(),
            to("false", s -> arcs(s, s.arcs().absoluteCentre(), false, feedInPlane(s)))));
    all.add(
        choice(
            "helix-feed",
            "along-path",
            ProgramWords::helices,
            to(
                "in-plane",
                s -> arcs(s, s.arcs().absoluteCentre(), s.arcs().longArcByNegativeR(), true))));
    all.add(
        choice(
            "rapid-path",
            "straight",
            ProgramWords::slantedRapids,
            to(
                "dog-leg",
                s -> s.with(new Rapids(true, s.rapids().rates(), s.rapids().maxFeed())))));
    all.add(
        choice(
            "scale-reading",
            "factor",
            words -> words.g(510),
            to("thousandths", s -> s.with(ScaleReading.THOUSANDTHS))));
  }

  private static boolean isTurned(ProgramWords words) {
    return words.arcs() || words.g(20) || words.g(30);
  }

  private static boolean feedInPlane(ControlSwitches s) {
    return s.arcs().inPlaneFeed();
  }

  private static ControlSwitches arcs(
      ControlSwitches s, boolean absolute, boolean longByR, boolean inPlane) {
    Arcs a = s.arcs();
    return s.with(new Arcs(absolute, a.closureLimit(), a.turns(), longByR, inPlane));
  }

  private static void tools(List<SwitchChoice> all) {
    all.add(
        choice(
            "tool-change",
            "t-then-m6",
            words -> words.anyOf("T"),
            to("t-alone", s -> s.with(tools(s.tools(), true, s.tools().changeGoesHome())))));
    all.add(
        choice(
            "tool-change-moves",
            "none",
            words -> words.m(6) || words.anyOf("T"),
            to("z-home", s -> s.with(tools(s.tools(), s.tools().changeByT(), true)))));
    all.add(
        choice(
            "geometry-entry",
            "radius",
            SwitchChoices::isCompensated,
            to("diameter", s -> s.with(registers(s.tools(), Entry.DIAMETER, wear(s), byTool(s))))));
    all.add(
        choice(
            "wear-entry",
            "radius",
            SwitchChoices::isCompensated,
            to(
                "diameter",
                s -> s.with(registers(s.tools(), geometry(s), Entry.DIAMETER, byTool(s))))));
    all.add(
        choice(
            "d-default",
            "modal",
            SwitchChoices::isCompensated,
            to("tool-number", s -> s.with(registers(s.tools(), geometry(s), wear(s), true)))));
  }

  private static Entry geometry(ControlSwitches s) {
    return s.tools().geometryEntry();
  }

  private static Entry wear(ControlSwitches s) {
    return s.tools().wearEntry();
  }

  private static boolean byTool(ControlSwitches s) {
    return s.tools().registerByTool();
  }

  private static Tools tools(Tools t, boolean byT, boolean home) {
    return new Tools(
        byT, home, t.geometryEntry(), t.wearEntry(), t.registerByTool(), t.wearLimit());
  }

  private static Tools registers(Tools t, Entry geometry, Entry wear, boolean byTool) {
    return new Tools(t.changeByT(), t.changeGoesHome(), geometry, wear, byTool, t.wearLimit());
  }

  private static boolean isCompensated(ProgramWords words) {
    return words.gWithin(410, 420);
  }

  private static void compensation(List<SwitchChoice> all) {
    all.add(
        choice(
            "compensation-start",
            "next-normal",
            SwitchChoices::isCompensated,
            to("own-normal", s -> s.with(starting(s.compensation(), StartUp.OWN_NORMAL))),
            to("tangent", s -> s.with(starting(s.compensation(), StartUp.TANGENT)))));
    all.add(
        choice(
            "compensation-cancel-reference",
            "programmed",
            words -> isCompensated(words) && words.g(910),
            to("actual", s -> s.with(fromActual(s.compensation())))));
    all.add(
        choice(
            "outside-corner",
            "round",
            SwitchChoices::isCompensated,
            to("mitre", s -> s.with(corners(s.compensation(), true, inside(s.compensation()))))));
    all.add(
        choice(
            "inside-corner",
            "trim",
            SwitchChoices::isCompensated,
            to("error", s -> s.with(corners(s.compensation(), s.compensation().mitre(), true)))));
  }

  private static boolean inside(Compensation c) {
    return c.insideCornerIsError();
  }

  private static Compensation starting(Compensation c, StartUp start) {
    return new Compensation(start, c.startOnArc(), c.cancelReference(), c.mitre(), inside(c));
  }

  private static Compensation fromActual(Compensation c) {
    return new Compensation(
        c.startUp(), c.startOnArc(), CancelReference.ACTUAL, c.mitre(), inside(c));
  }

  private static Compensation corners(Compensation c, boolean mitre, boolean error) {
    return new Compensation(c.startUp(), c.startOnArc(), c.cancelReference(), mitre, error);
  }

  static boolean isCycled(ProgramWords words) {
    return words.gWithin(730, 760) || words.gWithin(810, 890);
  }

  private static void cycles(List<SwitchChoice> all) {
    all.add(
        choice(
            "cycle-repeat",
            "either",
            words -> isCycled(words) && words.anyOf("KL"),
            to("K", s -> s.with(repeating(s.cycles(), RepeatWord.K))),
            to("L", s -> s.with(repeating(s.cycles(), RepeatWord.L)))));
    all.add(
        choice(
            "after-g80",
            "previous-motion",
            words -> words.g(800),
            to("error", s -> s.with(strict(s.cycles())))));
    all.add(
        choice(
            "peck-clearance",
            Wording.number(ControlSwitches.defaults().cycles().peckClearance()),
            words -> words.g(830),
            to("another value", s -> s.with(pecking(s.cycles(), 2, 1)))));
    all.add(
        choice(
            "chip-break-retract",
            Wording.number(ControlSwitches.defaults().cycles().chipBreakRetract()),
            words -> words.g(730),
            to("another value", s -> s.with(pecking(s.cycles(), 1, 2)))));
    all.add(
        choice(
            "bore-shift",
            BoreShift.MINUS_X.word(),
            words -> words.g(760) || words.g(870),
            shift(BoreShift.PLUS_X),
            shift(BoreShift.MINUS_Y),
            shift(BoreShift.PLUS_Y)));
    all.add(
        choice(
            "back-bore",
            "R-bottom",
            words -> words.g(870),
            to("Z-bottom", s -> s.with(boring(s.cycles(), s.cycles().boreShift(), true)))));
  }

  private static Cycles repeating(Cycles c, RepeatWord word) {
    return new Cycles(
        word,
        c.axisWordsAfterG80AreError(),
        c.peckClearance(),
        c.chipBreakRetract(),
        c.boreShift(),
        c.backBoreFromDepth());
  }

  private static Cycles strict(Cycles c) {
    return new Cycles(
        c.repeat(),
        true,
        c.peckClearance(),
        c.chipBreakRetract(),
        c.boreShift(),
        c.backBoreFromDepth());
  }

  private static Cycles pecking(Cycles c, int clearances, int retracts) {
    return new Cycles(
        c.repeat(),
        c.axisWordsAfterG80AreError(),
        clearances * c.peckClearance(),
        retracts * c.chipBreakRetract(),
        c.boreShift(),
        c.backBoreFromDepth());
  }

  private static Value shift(BoreShift shift) {
    return to(shift.word(), s -> s.with(boring(s.cycles(), shift, s.cycles().backBoreFromDepth())));
  }

  private static Cycles boring(Cycles c, BoreShift shift, boolean fromDepth) {
    return new Cycles(
        c.repeat(),
        c.axisWordsAfterG80AreError(),
        c.peckClearance(),
        c.chipBreakRetract(),
        shift,
        fromDepth);
  }

  private static void flow(List<SwitchChoice> all) {
    all.add(
        choice(
            "m98-form",
            "auto",
            words -> words.m(98),
            to("4+4", s -> s.with(flow(s.flow(), CallForm.SPLIT, s.flow().fixDown()))),
            to("plain", s -> s.with(flow(s.flow(), CallForm.PLAIN, s.flow().fixDown())))));
    all.add(
        choice(
            "fix-rounding",
            "toward-zero",
            words -> words.says("FIX") || words.says("FUP"),
            to("down", s -> s.with(flow(s.flow(), s.flow().callForm(), true)))));
  }

  private static Flow flow(Flow f, CallForm form, boolean fixDown) {
    return new Flow(
        form,
        f.subprograms(),
        fixDown,
        f.loopLimit(),
        f.blockLimit(),
        f.moveLimit(),
        f.keepsState());
  }
}
