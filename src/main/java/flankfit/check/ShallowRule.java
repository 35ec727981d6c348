package flankfit.check;

import flankfit.finding.Code;
import flankfit.finding.Place;
import flankfit.metal.Metal;
import flankfit.motion.Tape;
import flankfit.setup.Hole;
import flankfit.setup.Tool;
import flankfit.standard.Designations;
import flankfit.standard.InvalidDesignationException;
import flankfit.standard.ThreadSpec;
import java.util.Optional;
import java.util.Set;

/**
 * HZ18: a hole or its thread ends less deep in the metal than the sheet says. A hole is asked on
 * its axis and just inside its wall all round; a thread, where a thread mill or tap has been in the
 * hole, just outside the wall: how far down any of it is cut away.
 */
final class ShallowRule {
  /** Depth that may be missing before it is told (mm): drill points differ by as much. */
  private static final double SLACK = 0.05;

  /** Distance inside the wall at which a hole is asked, as a share of its radius (1). */
  private static final double INSIDE = 0.02;

  /** Where a thread is asked, as a share of the way from the drilled wall to its outside (1). */
  private static final double IN_THREAD = 0.25;

  private static final int ROUND = 12;
  private static final Set<Tool.Kind> THREADERS = Set.of(Tool.Kind.THREAD_MILL, Tool.Kind.TAP);

  private final Scene scene;
  private final Tape tape;
  private final Metal left;
  private final double bottom;

  ShallowRule(Scene scene, Metal metal) {
    this.scene = scene;
    this.tape = scene.tape();
    this.left = metal;
    this.bottom = metal.stock().box().min().z();
  }

  /** Asks for every hole. */
  void check() {
    for (Hole hole : scene.sheet().holes()) {
      if (!hole.boss()) {
        checkHole(hole);
        checkThread(hole);
      }
    }
  }

  private void checkHole(Hole hole) {
    double wanted = Math.max(bottom, hole.depth().map(d -> hole.top() - d).orElse(bottom));
    double metal =
        Descent.toMetal(left, tape.size(), hole.x(), hole.y(), hole.top() + 1, wanted + SLACK);
    double aside = hole.diameter() / 2 * (1 - INSIDE);
    for (int i = 0; i < ROUND; i++) {
      double a = 2 * Math.PI * i / ROUND;
      double x = hole.x() + aside * Math.cos(a);
      double y = hole.y() + aside * Math.sin(a);
      metal =
          Math.max(
              metal, Descent.toMetal(left, tape.size(), x, y, hole.top() - SLACK, wanted + SLACK));
    }
    if (metal > wanted + SLACK) {
      tell(
          hole,
          hole.name() + " is " + depth(hole, metal) + " deep at its full diameter",
          wanted,
          "drill or mill it deeper, to the sheet's depth");
    }
  }

  private void checkThread(Hole hole) {
    Optional<ThreadSpec> spec = spec(hole);
    if (spec.isEmpty() || hole.threadDepth().isEmpty() || !isThreaded(hole)) {
      return;
    }
    double radius = hole.diameter() / 2;
    double pitch = spec.get().pitch();
    double aside = radius + IN_THREAD * (spec.get().nominal() / 2 - radius);
    double wanted = Math.max(bottom, hole.top() - hole.threadDepth().get());
    double deepest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < ROUND; i++) {
      double a = 2 * Math.PI * i / ROUND;
      double x = hole.x() + aside * Math.cos(a);
      double y = hole.y() + aside * Math.sin(a);
      deepest =
          Math.min(deepest, Descent.toAir(left, tape.size(), x, y, wanted - pitch, hole.top()));
    }
    // A groove whose middle stands on the wanted depth is cut up to half a pitch about it.
    if (deepest > wanted + pitch / 2 + SLACK) {
      boolean none = deepest >= hole.top();
      tell(
          hole,
          "the thread of "
              + hole.name()
              + (none ? " is not cut" : " is " + depth(hole, deepest) + " deep"),
          wanted,
          "cut the thread deeper, to the sheet's thread-depth");
    }
  }

  private String depth(Hole hole, double z) {
    return scene.text().length(Math.max(0, hole.top() - z));
  }

  private void tell(Hole hole, String what, double wanted, String fix) {
    scene.report(
        Code.HZ18,
        new Place(scene.sheet().file(), hole.line(), 0, 0),
        what + ", " + depth(hole, wanted) + " is wanted",
        "the metal is still there at X"
            + scene.text().coordinate(hole.x())
            + " Y"
            + scene.text().coordinate(hole.y())
            + " when the program ends",
        fix);
  }

  private static Optional<ThreadSpec> spec(Hole hole) {
    try {
      return hole.thread().isPresent()
          ? Optional.of(Designations.parse(hole.thread().get()))
          : Optional.empty();
    } catch (InvalidDesignationException e) {
      return Optional.empty();
    }
  }

  /** Whether a tool for threads has been in the hole. */
  private boolean isThreaded(Hole hole) {
    for (int move = 0; move < tape.size(); move++) {
      boolean threads = scene.tool(move).map(Tool::kind).filter(THREADERS::contains).isPresent();
      double aside = Math.hypot(tape.toX(move) - hole.x(), tape.toY(move) - hole.y());
      if (threads && aside < hole.diameter() / 2 && tape.toZ(move) < hole.top()) {
        return true;
      }
    }
    return false;
  }
}
