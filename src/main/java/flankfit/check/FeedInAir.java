package flankfit.check;

import flankfit.finding.Code;
import flankfit.motion.Tape;

/**
 * HZ15: a straight feed runs far above the clearance plane. Without a stock the top is only
 * assumed, and nothing is told.
 */
final class FeedInAir implements Rule {
  private static final double LONG = 50;

  private final Scene scene;
  private final Tape tape;
  private final double plane;

  FeedInAir(Scene scene) {
    this.scene = scene;
    this.tape = scene.tape();
    double clearance = scene.sheet().control().places().clearance();
    plane = scene.stock().map(s -> s.top() + clearance).orElse(Double.POSITIVE_INFINITY);
  }

  @Override
  public void look(int move) {
    if (!scene.isLine(move) || Math.max(tape.fromZ(move), tape.toZ(move)) <= plane) {
      return;
    }
    double share = 1 - Below.of(tape.fromZ(move), tape.toZ(move), plane).share();
    double inAir = share * tape.length(move);
    if (inAir > LONG) {
      scene.report(
          Code.HZ15,
          move,
          scene.text().length(inAir)
              + " at feed in the air, "
              + scene.text().length(LONG)
              + " is allowed",
          "it takes time and cuts nothing",
          "G0");
    }
  }
}
