package flankfit.check;

import flankfit.finding.Code;
import flankfit.motion.Tape;
import flankfit.setup.Tool;
import flankfit.unit.Tolerance;

/**
 * HZ10: the tip goes more than a millimetre below the bottom of the stock. The point of a drill may
 * stand out by its own length. Each run below is told once, where it is deepest.
 */
final class BelowPart implements Rule {
  private static final double ALLOWED = 1;

  private final Scene scene;
  private final Tape tape;
  private final double bottom;
  private int deepest = -1;
  private double most;

  BelowPart(Scene scene) {
    this.scene = scene;
    this.tape = scene.tape();
    bottom = scene.stock().map(stock -> stock.bottom()).orElse(Double.NEGATIVE_INFINITY);
  }

  @Override
  public void look(int move) {
    double below = bottom - tape.toZ(move);
    if (below <= ALLOWED) {
      end();
      return;
    }
    double beyond = below - point(move);
    if (beyond > ALLOWED + Tolerance.MODEL.value() && (deepest < 0 || beyond > most)) {
      deepest = move;
      most = beyond;
    }
  }

  /** Length of a drill's point (mm). */
  private double point(int move) {
    return scene
        .tool(move)
        .filter(tool -> tool.kind() == Tool.Kind.DRILL && tool.pointAngle() < Math.PI)
        .map(tool -> tool.radius() / Math.tan(tool.pointAngle() / 2))
        .orElse(0.0);
  }

  @Override
  public void end() {
    if (deepest < 0) {
      return;
    }
    double point = point(deepest);
    scene.report(
        Code.HZ10,
        deepest,
        (point > 0 ? "the full diameter goes " : "the tip goes ")
            + scene.text().length(most)
            + " below the part, "
            + scene.text().length(ALLOWED)
            + " is allowed",
        "table, vice or parallels may be there",
        "check the depth");
    deepest = -1;
  }
}
