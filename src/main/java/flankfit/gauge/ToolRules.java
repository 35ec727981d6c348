package flankfit.gauge;

import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.motion.ModalState;
import flankfit.setup.Tool.CutterForm;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.Flank;
import flankfit.sweep.RegularThread;
import flankfit.sweep.Tooth;
import flankfit.unit.Angles;
import flankfit.unit.Tolerance;

/** Rules on the mill: whether it goes in, turns the right way, and how its edge runs. */
final class ToolRules {
  /**
   * Difference of a flank's angle that is told (rad), half a degree: what a mill corrected for its
   * over-cut differs by is less, and a mill for another form of thread differs by 2.5 degrees at
   * least (no source).
   */
  private static final double OTHER_ANGLE = Angles.toRadians(0.5);

  /** Height of a flank as a share of the pitch times cot of its angle (1): 5/8 H. */
  private static final double FLANK_HEIGHT = 5.0 / 16;

  private final Scene scene;
  private final ThreadSpec spec;
  private final CutPass finish;
  private final Findings findings;
  private final Text text;

  ToolRules(Scene scene, Findings findings) {
    this.scene = scene;
    this.spec = scene.found().spec();
    this.finish = scene.found().model().finish();
    this.findings = findings;
    this.text = scene.found().text();
  }

  void check() {
    goesIn();
    flankAngle();
    crestFlat();
    spindle();
    edgeFeed();
  }

  private void goesIn() {
    double hole = scene.found().hole().diameter();
    double mill = 2 * finish.tooth().outsideRadius();
    if (spec.internal() && mill >= hole) {
      findings.add(
          Code.TH08,
          scene.at(finish.pass()),
          "tool " + text.length(mill) + " does not go into hole " + text.length(hole),
          "its teeth meet the wall on the way in",
          "take a mill smaller than the hole");
    }
  }

  private void flankAngle() {
    if (finish.teeth().form() instanceof CutterForm.GroundFor) {
      // Every standard read here has one angle; the tooth's own may stand far off it at large
      // leads.
      return;
    }
    double angle = angleOffFurthest();
    double wanted = spec.halfAngle();
    if (Math.abs(angle - wanted) <= OTHER_ANGLE) {
      return;
    }
    findings.add(
        Code.TH18,
        scene.at(finish.pass()),
        "a flank of tool "
            + finish.tool().number()
            + " stands at "
            + Text.degrees(angle)
            + ", that of the thread at "
            + Text.degrees(wanted),
        "screw and gauge bear on one end of the flank only" + lostByAngle(),
        "take a mill with a flank angle of "
            + Text.degrees(2 * wanted)
            + ", or correct the mill in the sheet");
  }

  /** Angle of the flank that is farther off (rad), over the middle half of the flank's height. */
  private double angleOffFurthest() {
    double outside = finish.tooth().outsideRadius();
    double height = FLANK_HEIGHT * spec.pitch() / Math.tan(spec.halfAngle());
    double high = outside - height / 4;
    double low = Math.max(finish.tooth().rootRadius(), outside - 3 * height / 4);
    double furthest = spec.halfAngle();
    if (low >= high) {
      return furthest;
    }
    for (Flank flank : Flank.values()) {
      double wider = finish.tooth().halfWidth(low, flank) - finish.tooth().halfWidth(high, flank);
      double angle = Math.atan(wider / (high - low));
      if (Math.abs(angle - spec.halfAngle()) > Math.abs(furthest - spec.halfAngle())) {
        furthest = angle;
      }
    }
    return furthest;
  }

  /** What it costs, where there is a thread to measure. */
  private String lostByAngle() {
    RegularThread thread = scene.found().model().thread();
    if (Judge.notMeasurable(scene.found(), thread).isPresent()) {
      return "";
    }
    Measurer measurer = new Measurer(spec);
    double lost = measurer.simple(thread) - measurer.fit(thread, 0).flanks();
    return "; GO loses " + text.length(Math.abs(lost)) + " of the pitch diameter by it";
  }

  /**
   * Where the flanks stand as far out as NO-GO lets them, a tooth with a wide tip still does not
   * reach the crest of the GO gauge: no entry makes both pass. True V flanks, no over-cut, which
   * takes away more.
   */
  private void crestFlat() {
    Tooth tooth = finish.tooth();
    double tip = 0;
    for (Flank flank : Flank.values()) {
      tip += tooth.halfWidth(tooth.outsideRadius(), flank);
    }
    double pitchLimit = Mate.noGoPitch(spec);
    double toCrest = Math.abs(2 * Mate.of(spec).crestRadius() - pitchLimit);
    double widest = spec.pitch() / 2 - toCrest * Math.tan(spec.halfAngle());
    if (tip <= widest + Tolerance.MODEL.value()) {
      return;
    }
    String gauge = spec.internal() ? "GO plug" : "GO ring";
    findings.add(
        Code.TH19,
        scene.at(finish.pass()),
        "the teeth of tool "
            + finish.tool().number()
            + " are "
            + text.length(tip)
            + " wide at the tip, this thread allows "
            + text.length(widest),
        "with the flanks at the NO-GO limit the groove does not yet reach the crest of the "
            + gauge
            + ": no entry makes both gauges pass",
        "take a mill with a crest flat of "
            + text.length(spec.pitch() / (spec.internal() ? 8 : 4))
            + " or less, or correct the mill in the sheet");
  }

  private void spindle() {
    ModalState.Spindle spindle = finish.pass().state().spindle();
    ModalState.Spindle usual =
        finish.tool().leftHand()
            ? ModalState.Spindle.COUNTER_CLOCKWISE
            : ModalState.Spindle.CLOCKWISE;
    boolean wrong = spindle != ModalState.Spindle.OFF && spindle != usual;
    if (wrong) {
      findings.add(
          Code.TH11,
          scene.at(finish.pass()),
          "the spindle turns " + spindle.word() + " with tool " + finish.tool().number(),
          "the edges rub: it is a " + (finish.tool().leftHand() ? "left" : "right") + "-hand mill",
          finish.tool().leftHand() ? "M4" : "M3");
    }
  }

  private void edgeFeed() {
    double path = finish.pass().radius();
    double feed = finish.pass().state().feed();
    double ratio = finish.reach(spec.internal()) / path;
    if (feed > 0) {
      findings.add(
          Code.TH12,
          scene.at(finish.pass()),
          "feed "
              + text.feed(feed)
              + " of the centre is "
              + text.feed(feed * ratio)
              + " at the edge",
          spec.internal()
              ? "inside a hole the edge runs faster than the centre"
              : "around a boss the edge runs slower than the centre",
          text.feed(feed / ratio) + " of the centre for " + text.feed(feed) + " at the edge");
    }
  }
}
