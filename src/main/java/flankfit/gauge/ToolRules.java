package flankfit.gauge;

import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.motion.ModalState;
import flankfit.standard.ThreadSpec;

/** Rules on the mill: whether it goes in, turns the right way, and how its edge runs. */
final class ToolRules {
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
