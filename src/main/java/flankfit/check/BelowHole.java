package flankfit.check;

import flankfit.finding.Code;
import flankfit.motion.Tape;
import flankfit.setup.Hole;
import flankfit.setup.Tool;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * HZ14: the tip goes below the depth of a declared hole, where nothing has been drilled. A hole
 * with a point is deeper in its middle. Tools that drill are not meant, nor a hole that the program
 * has made deeper, nor a tip that stands in a deeper hole too. Each run is told once, where it is
 * deepest.
 */
final class BelowHole implements Rule {
  /** What a length is never known better than (mm). */
  private static final double SLACK = 0.01;

  private static final Set<Tool.Kind> DRILLS =
      EnumSet.of(Tool.Kind.DRILL, Tool.Kind.SPOT_DRILL, Tool.Kind.COUNTERSINK);

  private final Scene scene;
  private final Tape tape;
  private final double highestBottom;
  private int deepest = -1;
  private double most;
  private String name = "";

  BelowHole(Scene scene) {
    this.scene = scene;
    this.tape = scene.tape();
    highestBottom =
        scene.sheet().holes().stream()
            .filter(hole -> !hole.boss() && hole.depth().isPresent())
            .mapToDouble(hole -> hole.top() - hole.depth().get())
            .max()
            .orElse(Double.NEGATIVE_INFINITY);
  }

  @Override
  public void look(int move) {
    if (tape.toZ(move) >= highestBottom) {
      end();
      return;
    }
    Optional<Tool> tool = scene.tool(move);
    if (tool.isEmpty() || DRILLS.contains(tool.get().kind())) {
      return;
    }
    double below = Double.POSITIVE_INFINITY;
    String shallow = "";
    for (Hole hole : scene.sheet().holes()) {
      double here = below(hole, move, tool.get().radius());
      if (here < below) {
        below = here;
        shallow = hole.name();
      }
    }
    boolean first = deepest < 0 || below > most;
    if (below > SLACK && below < Double.POSITIVE_INFINITY && first && isUncut(move)) {
      deepest = move;
      most = below;
      name = shallow;
    }
  }

  /** How far the tip is below a hole's ground (mm); infinite when its axis is not in the hole. */
  private double below(Hole hole, int move, double radius) {
    double aside = Math.hypot(tape.toX(move) - hole.x(), tape.toY(move) - hole.y());
    if (hole.boss() || aside >= hole.diameter() / 2) {
      return Double.POSITIVE_INFINITY;
    }
    if (hole.depth().isEmpty()) {
      return Double.NEGATIVE_INFINITY;
    }
    double room = Math.max(0, hole.diameter() / 2 - aside - radius);
    double point = hole.bottomAngle() < Math.PI ? room / Math.tan(hole.bottomAngle() / 2) : 0;
    return hole.top() - hole.depth().get() - point - tape.toZ(move);
  }

  /** Whether no move before has gone as deep; without a stock that is not known, and taken so. */
  private boolean isUncut(int move) {
    double left =
        scene
            .planBefore(move)
            .highestAlong(tape.toX(move), tape.toY(move), tape.toX(move), tape.toY(move), 0);
    return left > tape.toZ(move) + SLACK;
  }

  @Override
  public void end() {
    if (deepest < 0) {
      return;
    }
    scene.report(
        Code.HZ14,
        deepest,
        "the tip goes " + scene.text().length(most) + " below the drilled depth of " + name,
        "the tip meets uncut metal",
        "go less deep, or drill deeper");
    deepest = -1;
  }
}
