package flankfit.check;

import flankfit.finding.Code;
import flankfit.motion.ModalState.Spindle;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.setup.Hole;
import flankfit.setup.Tool;
import flankfit.unit.Tolerance;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * HZ13: the spindle stops or turns round while a mill stands in metal: with its teeth in the wall
 * of a declared hole or boss, or at the end of a feed in the plane with uncut stock right before
 * it. A cycle stops the spindle on the ground of a hole on purpose; vertical feeds are not looked
 * at.
 */
final class StopInCut implements Rule {
  private static final Set<Tool.Kind> MILLS =
      EnumSet.of(
          Tool.Kind.FACE_MILL,
          Tool.Kind.END_MILL,
          Tool.Kind.BALL_MILL,
          Tool.Kind.BULL_NOSE_MILL,
          Tool.Kind.THREAD_MILL);

  /** Depth of the teeth in the wall that counts as engaged (mm). */
  private static final double IN_WALL = 0.02;

  /** Share of a move from which its direction at the end is taken. */
  private static final double BEFORE_END = 0.999;

  private final Scene scene;
  private final Tape tape;
  private final double[] before = new double[3];

  StopInCut(Scene scene) {
    this.scene = scene;
    this.tape = scene.tape();
  }

  @Override
  public void look(int move) {
    if (move == 0 || tape.stateIndex(move) == tape.stateIndex(move - 1)) {
      return;
    }
    Spindle was = tape.state(move - 1).spindle();
    boolean changed = was != Spindle.OFF && was != tape.state(move).spindle();
    if (!changed || tape.state(move).tool() != tape.state(move - 1).tool()) {
      return;
    }
    int cut = move - 1;
    while (cut > 0 && tape.kind(cut) == MoveKind.DWELL) {
      cut--;
    }
    Optional<Tool> mill = scene.tool(cut).filter(tool -> MILLS.contains(tool.kind()));
    if (mill.isEmpty() || !scene.isFeed(cut)) {
      return;
    }
    boolean teeth = mill.get().kind() == Tool.Kind.THREAD_MILL;
    if ((teeth && isInWall(cut, mill.get())) || isBeforeStock(cut, mill.get().radius())) {
      boolean stops = tape.state(move).spindle() == Spindle.OFF;
      scene.report(
          Code.HZ13,
          cut,
          stops ? "the spindle is stopped in the cut" : "the spindle is reversed in the cut",
          "the edges stand in metal where this move ends, and chip",
          "leave the cut first");
    }
  }

  private boolean isInWall(int cut, Tool mill) {
    double low = tape.toZ(cut);
    for (Hole hole : scene.sheet().holes()) {
      double distance = Math.hypot(tape.toX(cut) - hole.x(), tape.toY(cut) - hole.y());
      double wall = hole.diameter() / 2;
      boolean reaches =
          hole.boss()
              ? distance - mill.radius() < wall - IN_WALL && distance + mill.radius() > wall
              : distance + mill.radius() > wall + IN_WALL && distance < wall;
      double bottom = hole.depth().map(d -> hole.top() - d).orElse(Double.NEGATIVE_INFINITY);
      if (reaches && low < hole.top() && low + mill.fluteLength() > bottom) {
        return true;
      }
    }
    return false;
  }

  /** Whether stock stands for certain right before a tool that has fed in the plane. */
  private boolean isBeforeStock(int cut, double radius) {
    tape.pointAt(cut, BEFORE_END, before);
    double wayX = tape.toX(cut) - before[0];
    double wayY = tape.toY(cut) - before[1];
    double way = Math.hypot(wayX, wayY);
    if (way <= Tolerance.MODEL.value()) {
      return false;
    }
    CutPlan plan = scene.planBefore(cut + 1);
    double ahead = radius + 3 * plan.cell();
    double metal =
        plan.certainBelow(
            tape.toX(cut) + wayX / way * ahead, tape.toY(cut) + wayY / way * ahead, 0);
    return metal > tape.toZ(cut) + IN_WALL;
  }
}
