package flankfit.gauge;

import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Tape;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.EntryMark;
import flankfit.sweep.InvoluteFlank;
import flankfit.unit.Angles;

/**
 * Marks of entry and exit arcs that touch the helix from inside. An arc must rise by lead ·
 * sweep/360 · (its radius / path radius) to leave none.
 */
final class EntryRule {
  private static final double VISIBLE = 0.010;
  private static final double TOLERANCE_SHARE = 0.05;

  private EntryRule() {}

  static void check(Scene scene, Findings findings) {
    ThreadModel model = scene.found().model();
    Pass pass = model.finish().pass();
    if (!scene.found().spec().internal() || pass.lead() == 0) {
      return;
    }
    checkArc(scene, findings, pass.first() - 1, "entry");
    checkArc(scene, findings, pass.last() + 1, "exit");
  }

  private static void checkArc(Scene scene, Findings findings, int move, String name) {
    Tape tape = scene.tape();
    if (move < 0
        || move >= tape.size()
        || tape.kind(move) != MoveKind.ARC
        || tape.state(move).plane() != Plane.XY) {
      return;
    }
    CutPass finish = scene.found().model().finish();
    Pass pass = finish.pass();
    ThreadSpec spec = scene.found().spec();
    double arc = tape.radius(move);
    double between = Math.hypot(tape.centreU(move) - pass.x(), tape.centreV(move) - pass.y());
    boolean touches = PassFinder.ONE_AXIS.near(between + arc, pass.radius());
    double base = InvoluteFlank.baseRadius(pass.lead(), finish.teeth().halfAngle());
    if (!touches || between <= PassFinder.ONE_AXIS.value() || base >= pass.radius()) {
      return;
    }
    InvoluteFlank flank = new InvoluteFlank(base, pass.radius(), finish.teeth().halfAngle());
    double ratio = tape.rise(move) / tape.sweep(move) / pass.perRadian();
    double lag = flank.lag(Math.max(spec.basicPitch() / 2, flank.baseRadius()));
    EntryMark mark = EntryMark.of(flank.baseRadius(), lag, pass.radius(), arc, ratio);
    double tolerance = spec.limits().pitchMax() - spec.limits().pitchMin();
    if (mark.depth() > Math.min(VISIBLE, TOLERANCE_SHARE * tolerance)) {
      double clean = pass.lead() * Math.abs(tape.sweep(move)) / Angles.TURN * arc / pass.radius();
      findings.add(
          Code.TH05,
          scene.at(tape.line(move)),
          "the "
              + name
              + " arc rises "
              + scene.found().text().length(Math.abs(tape.rise(move)))
              + ": it leaves a mark "
              + scene.found().text().length(mark.depth())
              + " deep "
              + Text.degrees(mark.angle())
              + (name.equals("entry") ? " before" : " after")
              + " the point of contact",
          "the teeth cut across the flank where they do not yet follow the groove",
          "let Z travel "
              + scene.found().text().length(clean)
              + " over this arc: lead · sweep/360 · arc radius / path radius");
    }
  }
}
