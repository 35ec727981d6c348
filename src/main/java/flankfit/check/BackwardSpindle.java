package flankfit.check;

import flankfit.finding.Code;
import flankfit.motion.ModalState.Spindle;
import flankfit.motion.Tape;
import flankfit.setup.Tool;
import java.util.Optional;

/**
 * HZ05: a right-hand tool cuts while the spindle turns counter-clockwise. A tap turns back on its
 * way out; thread mills are left to the rules of gauging.
 */
final class BackwardSpindle implements Rule {
  private final Scene scene;
  private final Tape tape;
  private int told;

  BackwardSpindle(Scene scene) {
    this.scene = scene;
    this.tape = scene.tape();
  }

  @Override
  public void look(int move) {
    if (tape.state(move).spindle() != Spindle.COUNTER_CLOCKWISE) {
      told = 0;
      return;
    }
    Optional<Tool> tool = scene.tool(move);
    if (tool.isEmpty() || !scene.isFeed(move) || tool.get().number() == told) {
      return;
    }
    Tool.Kind kind = tool.get().kind();
    boolean goesOut = kind == Tool.Kind.TAP && scene.climb(move) >= 0;
    if (tool.get().leftHand() || kind == Tool.Kind.THREAD_MILL || goesOut) {
      return;
    }
    told = tool.get().number();
    scene.report(
        Code.HZ05,
        move,
        "the spindle runs backwards with tool " + told,
        "tool " + told + " cuts with M3; its edges rub and break",
        "M3");
  }
}
