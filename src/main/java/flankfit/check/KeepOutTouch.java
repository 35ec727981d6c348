package flankfit.check;

import flankfit.finding.Code;
import flankfit.motion.Chords;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.setup.KeepOut;
import java.util.List;

/**
 * HZ01: the tool, as a cylinder from its tip upwards, enters a body that nothing may touch, at
 * rapid or at feed. Each visit is told once. A tool that the sheet does not know counts as its
 * axis.
 */
final class KeepOutTouch implements Rule {
  /** How far chords may leave an arc (mm). */
  private static final double CHORD = 0.005;

  private final Scene scene;
  private final Tape tape;
  private final List<KeepOut> bodies;
  private final boolean[] inside;
  private final double[] from = new double[3];
  private double[] stops = new double[3];

  KeepOutTouch(Scene scene) {
    this.scene = scene;
    this.tape = scene.tape();
    this.bodies = scene.sheet().keepOuts();
    this.inside = new boolean[bodies.size()];
  }

  @Override
  public void look(int move) {
    if (bodies.isEmpty() || tape.kind(move) == MoveKind.DWELL) {
      return;
    }
    int count = Chords.count(tape, move, CHORD);
    if (stops.length < 3 * count) {
      stops = new double[3 * count];
    }
    Chords.write(tape, move, count, stops, 0);
    tape.pointAt(move, 0, from);
    for (int body = 0; body < inside.length; body++) {
      boolean touches = touches(bodies.get(body), from, stops, count, scene.radius(move));
      if (touches && !inside[body]) {
        tell(move, bodies.get(body));
      }
      if (touches && scene.isRapid(move)) {
        scene.collides(move);
      }
      inside[body] = touches;
    }
  }

  /**
   * Whether a tool enters a body on its way along straight lines.
   *
   * @param from start (mm), 3 long
   * @param stops end of each line (mm), 3 numbers each
   * @param count number of lines
   */
  static boolean touches(KeepOut body, double[] from, double[] stops, int count, double radius) {
    Rectangle plan = Rectangle.within(body.box());
    double top = body.box().max().z();
    double x = from[0];
    double y = from[1];
    double z = from[2];
    for (int i = 0; i < 3 * count; i += 3) {
      Below part = Below.of(z, stops[i + 2], top);
      double wayX = stops[i] - x;
      double wayY = stops[i + 1] - y;
      if (!part.isEmpty()
          && plan.distance(
                  x + part.from() * wayX,
                  y + part.from() * wayY,
                  x + part.to() * wayX,
                  y + part.to() * wayY)
              <= radius) {
        return true;
      }
      x = stops[i];
      y = stops[i + 1];
      z = stops[i + 2];
    }
    return false;
  }

  private void tell(int move, KeepOut body) {
    scene.report(
        Code.HZ01,
        move,
        (scene.isRapid(move) ? "rapid into " : "feeds into ") + body.name(),
        "nothing may touch it; it reaches up to Z" + scene.text().coordinate(body.box().max().z()),
        "go round it, or raise the level");
  }
}
