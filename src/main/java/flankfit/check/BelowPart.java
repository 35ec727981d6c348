package flankfit.check;

import flankfit.finding.Code;
import flankfit.motion.Tape;
import flankfit.setup.Tool;
import flankfit.unit.Tolerance;

/**
 * HZ10: the tip goes more than a millimetre below the bottom of the stock. The point of a drill may
 * stand out by its own length, and so may what a thread mill or tap has below its teeth. Each run
 * below is told once, where it is deepest.
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

  /** Length of a drill's point, or of what a thread mill or tap has below its teeth (mm). */
  private double point(int move) {
    return scene.tool(move).map(BelowPart::point).orElse(0.0);
  }

  private static double point(Tool tool) {
    boolean pointed = tool.kind() == Tool.Kind.DRILL && tool.pointAngle() < Math.PI;
    double cone = pointed ? tool.radius() / Math.tan(tool.pointAngle() / 2) : 0;
    return tool.teeth().map(Tool.Teeth::tip).orElse(cone);
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
        (point > 0 ? "all but the point goes " : "the tip goes ")
            + scene.text().length(most)
            + " below the part, "
            + scene.text().length(ALLOWED)
            + " is allowed",
        "table, vice or parallels may be there",
        "check the depth");
    deepest = -1;
  }
}
