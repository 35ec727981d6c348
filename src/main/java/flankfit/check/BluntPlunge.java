package flankfit.check;

import flankfit.finding.Code;
import flankfit.motion.Tape;
import flankfit.setup.Tool;
import flankfit.unit.Tolerance;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * HZ08: a tool that does not cut at its centre is fed straight down into solid metal. Of end mills
 * and bull-nose mills nobody has said whether they do, so they are left alone.
 */
final class BluntPlunge implements Rule {
  static final Set<Tool.Kind> BLUNT =
      EnumSet.of(
          Tool.Kind.FACE_MILL,
          Tool.Kind.THREAD_MILL,
          Tool.Kind.BORING_BAR,
          Tool.Kind.REAMER,
          Tool.Kind.TAP);

  private final Scene scene;
  private final Tape tape;

  BluntPlunge(Scene scene) {
    this.scene = scene;
    this.tape = scene.tape();
  }

  @Override
  public void look(int move) {
    Optional<Tool> tool = scene.tool(move);
    if (tool.isEmpty() || !scene.isLine(move) || !BLUNT.contains(tool.get().kind())) {
      return;
    }
    if (scene.climb(move) >= 0 || scene.inPlane(move) > Tolerance.MODEL.value()) {
      return;
    }
    double metal = scene.planBefore(move).certainBelow(tape.toX(move), tape.toY(move), 0);
    double into = metal - tape.toZ(move);
    if (into > Tolerance.MODEL.value()) {
      scene.report(
          Code.HZ08,
          move,
          "tool "
              + tool.get().number()
              + " plunges "
              + scene.text().length(into)
              + " into solid metal",
          "the centre of a " + tool.get().kind().word() + " does not cut",
          "go in on a helix or a ramp, or drill first");
    }
  }
}
