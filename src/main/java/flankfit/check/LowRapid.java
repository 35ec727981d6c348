package flankfit.check;

import flankfit.finding.Code;
import flankfit.finding.Severity;
import flankfit.motion.Tape;
import flankfit.setup.Hole;
import flankfit.unit.Tolerance;

/**
 * HZ02: a rapid in X and Y with the tip below the clearance plane. Not in a hole that is wider than
 * the tool by the clearance, and not where metal has been cut to the clearance below the tip or the
 * stock does not reach. An error when it runs below the top over metal that is still there.
 */
final class LowRapid implements Rule {
  /** Way below the plane that a rounded end point makes (mm). */
  private static final double ROUNDING = 0.01;

  private final Scene scene;
  private final Tape tape;

  LowRapid(Scene scene) {
    this.scene = scene;
    this.tape = scene.tape();
  }

  @Override
  public void look(int move) {
    if (!scene.isRapid(move) || scene.inPlane(move) <= ROUNDING) {
      return;
    }
    if (scene.isCollision(move) || scene.isShift(move)) {
      return;
    }
    double plane = scene.surfaces().clearancePlane(move) - Tolerance.MODEL.value();
    Below part = Below.of(tape.fromZ(move), tape.toZ(move), plane);
    if (part.share() * scene.inPlane(move) <= ROUNDING || isInHole(move, part)) {
      return;
    }
    double low = scene.low(move);
    double left = left(move, part);
    if (left + scene.surfaces().clearance() <= low + Tolerance.MODEL.value()) {
      return;
    }
    double top = scene.surfaces().top(move);
    boolean below = low < top - Tolerance.MODEL.value();
    boolean metal = below && left > low + Tolerance.MODEL.value();
    scene.report(
        Code.HZ02,
        metal ? Severity.ERROR : Severity.WARNING,
        move,
        "rapid at Z"
            + scene.text().coordinate(low)
            + ", "
            + scene.text().length(Math.abs(low - top))
            + (below ? " below the top" : " above the top"),
        metal ? "what has not been cut is in the way" : "a clamp or a burr is higher",
        "retract first, to "
            + scene.text().length(scene.surfaces().clearance())
            + " above the top at least");
  }

  /** The greatest height that may be left under the part of a move (mm). */
  private double left(int move, Below part) {
    return scene
        .planBefore(move)
        .highestAlong(
            x(move, part.from()),
            y(move, part.from()),
            x(move, part.to()),
            y(move, part.to()),
            scene.body(move));
  }

  private boolean isInHole(int move, Below part) {
    for (Hole hole : scene.sheet().holes()) {
      boolean wide = hole.diameter() - 2 * scene.radius(move) >= scene.surfaces().clearance();
      boolean deep = hole.depth().map(d -> scene.low(move) >= hole.top() - d).orElse(true);
      if (!hole.boss() && wide && deep && holds(hole, move, part)) {
        return true;
      }
    }
    return false;
  }

  private boolean holds(Hole hole, int move, Below part) {
    return distance(hole, move, part.from()) <= hole.diameter() / 2
        && distance(hole, move, part.to()) <= hole.diameter() / 2;
  }

  private double distance(Hole hole, int move, double share) {
    return Math.hypot(x(move, share) - hole.x(), y(move, share) - hole.y());
  }

  private double x(int move, double share) {
    return tape.fromX(move) + share * (tape.toX(move) - tape.fromX(move));
  }

  private double y(int move, double share) {
    return tape.fromY(move) + share * (tape.toY(move) - tape.fromY(move));
  }
}
