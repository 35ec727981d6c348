package flankfit.check;

import flankfit.finding.Code;
import flankfit.motion.Tape;
import flankfit.unit.Tolerance;

/** HZ11: a rapid straight down ends less than half a millimetre above stock that is still uncut. */
final class CloseApproach implements Rule {
  private static final double LEAST = 0.5;

  private final Scene scene;
  private final Tape tape;

  CloseApproach(Scene scene) {
    this.scene = scene;
    this.tape = scene.tape();
  }

  @Override
  public void look(int move) {
    if (scene.stock().isEmpty() || !scene.isRapid(move) || scene.climb(move) >= 0) {
      return;
    }
    double tolerance = Tolerance.MODEL.value();
    double top = scene.stock().get().top();
    double above = tape.toZ(move) - top;
    if (above >= LEAST - tolerance || above < -tolerance || scene.inPlane(move) > tolerance) {
      return;
    }
    double metal =
        scene.planBefore(move).certainBelow(tape.toX(move), tape.toY(move), scene.body(move));
    if (metal >= top - tolerance) {
      scene.report(
          Code.HZ11,
          move,
          "rapid down to "
              + scene.text().length(Math.max(0, above))
              + " above metal, "
              + scene.text().length(LEAST)
              + " are wanted",
          "stock and tool length vary by that much",
          "leave the clearance, and feed from there");
    }
  }
}
