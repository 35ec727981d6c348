package flankfit.check;

import flankfit.finding.Code;
import flankfit.motion.Tape;
import flankfit.unit.Tolerance;

/**
 * HZ01: a rapid runs through stock that no move at feed has removed and that lies in no declared
 * hole. Only what is certain is told; without a stock in the sheet nothing is.
 */
final class RapidIntoStock implements Rule {
  private final Scene scene;
  private final Tape tape;
  private final double[] from = new double[3];
  private final double[] to = new double[3];
  private final double[] met = new double[3];

  RapidIntoStock(Scene scene) {
    this.scene = scene;
    this.tape = scene.tape();
  }

  @Override
  public void look(int move) {
    if (scene.stock().isEmpty() || !scene.isRapid(move)) {
      return;
    }
    boolean straightUp = scene.inPlane(move) <= Tolerance.MODEL.value() && scene.climb(move) >= 0;
    if (scene.low(move) >= scene.stock().get().top() || straightUp || scene.isShift(move)) {
      return;
    }
    tape.pointAt(move, 0, from);
    tape.pointAt(move, 1, to);
    CutPlan plan = scene.planBefore(move);
    if (plan.metalAlong(from, to, scene.body(move), met)) {
      scene.report(
          Code.HZ01,
          move,
          "rapid through material at " + scene.at(met),
          "no move at feed has removed it, and no hole is declared there: the tool breaks",
          "raise the level, or feed with G1");
      plan.enter(move);
      scene.collides(move);
    }
  }
}
