package flankfit.check;

import flankfit.finding.Code;
import flankfit.metal.Contacts;
import flankfit.metal.Metal;
import flankfit.motion.Tape;
import flankfit.setup.Tool;
import flankfit.unit.Tolerance;
import java.util.Set;
import java.util.TreeSet;

/** HZ08 by the metal: a tool that does not cut at its centre is fed straight down onto metal. */
final class PlungeRule {
  private final Scene scene;
  private final Metal metal;
  private final Tape tape;
  private final Set<Integer> told = new TreeSet<>();

  PlungeRule(Scene scene, Metal metal) {
    this.scene = scene;
    this.metal = metal;
    this.tape = scene.tape();
  }

  /** Looks at so many moves from the first. */
  void check(int moves) {
    for (int move = 0; move < moves; move++) {
      boolean blunt =
          scene.tool(move).map(Tool::kind).filter(BluntPlunge.BLUNT::contains).isPresent();
      boolean down = scene.climb(move) < 0 && scene.inPlane(move) <= Tolerance.MODEL.value();
      if (blunt && down && scene.isLine(move)) {
        look(move);
      }
    }
  }

  /** Moves that were told. */
  Set<Integer> told() {
    return told;
  }

  private void look(int move) {
    double x = tape.toX(move);
    double y = tape.toY(move);
    double top = Descent.toMetal(metal, move, x, y, tape.fromZ(move), tape.toZ(move));
    double into = top - tape.toZ(move);
    if (into <= Contacts.LEAST) {
      return;
    }
    told.add(move);
    Tool tool = scene.tool(move).orElseThrow();
    scene.report(
        Code.HZ08,
        move,
        "tool "
            + tool.number()
            + " plunges "
            + scene.text().length(into)
            + " into solid metal at "
            + scene.at(new double[] {x, y, top}),
        "the centre of a " + tool.kind().word() + " does not cut",
        "go in on a helix or a ramp, or drill first");
  }
}
