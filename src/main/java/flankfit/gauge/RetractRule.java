package flankfit.gauge;

import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.setup.Hole;
import flankfit.standard.ThreadSpec;
import java.util.Set;
import java.util.TreeSet;

/** Moves along Z, and rapids, while the teeth stand in the thread. */
final class RetractRule {
  /** Places looked at along a move. */
  private static final int STEPS = 64;

  /** Depth of the teeth in the wall that counts as engaged (mm). */
  private static final double IN_WALL = 0.02;

  private final Scene scene;
  private final Findings findings;
  private final ThreadSpec spec;
  private final Hole hole;
  private final CutPass finish;
  private final double[] at = new double[3];

  RetractRule(Scene scene, Findings findings) {
    this.scene = scene;
    this.findings = findings;
    this.spec = scene.found().spec();
    this.hole = scene.found().hole();
    this.finish = scene.found().model().finish();
  }

  /** Looks at the moves before and after each pass, as far as the teeth stand in the thread. */
  void check() {
    Tape tape = scene.tape();
    Set<Integer> moves = new TreeSet<>();
    for (CutPass cut : scene.found().model().passes()) {
      int move = cut.pass().first() - 1;
      while (move >= 0 && isEngaged(tape, move, 1)) {
        moves.add(move--);
      }
      move = cut.pass().last() + 1;
      while (move < tape.size() && isEngaged(tape, move, 0)) {
        moves.add(move++);
      }
    }
    for (int move : moves) {
      MoveKind kind = tape.kind(move);
      if (kind == MoveKind.RAPID || kind == MoveKind.LINE) {
        checkMove(tape, move, kind);
      }
    }
  }

  private boolean isEngaged(Tape tape, int move, double share) {
    tape.pointAt(move, share, at);
    return isEngaged();
  }

  private void checkMove(Tape tape, int move, MoveKind kind) {
    double travel = Math.abs(tape.toZ(move) - tape.fromZ(move));
    int engaged = 0;
    for (int i = 0; i <= STEPS; i++) {
      engaged += isEngaged(tape, move, (double) i / STEPS) ? 1 : 0;
    }
    double along = travel * engaged / (STEPS + 1);
    boolean tears = along > spec.pitch() / 2;
    boolean rapid = kind == MoveKind.RAPID && isEngaged(tape, move, 0);
    if (tears || rapid) {
      findings.add(
          Code.HZ07,
          scene.at(tape.line(move)),
          tears
              ? "moves "
                  + scene.found().text().length(along)
                  + " along Z while the teeth stand in the thread"
              : "rapid while the teeth stand in the thread",
          tears ? "tears the thread out" : "the teeth leave the cut at rapid",
          "leave the wall radially at feed first");
    }
  }

  private boolean isEngaged() {
    double fromAxis = Math.hypot(at[0] - hole.x(), at[1] - hole.y());
    double outside = finish.tooth().outsideRadius();
    double wall = hole.diameter() / 2;
    boolean inWall =
        spec.internal() ? fromAxis + outside > wall + IN_WALL : fromAxis - outside < wall - IN_WALL;
    double low = finish.lowestRow(at[2]) - spec.pitch() / 2;
    double high = low + spec.pitch() + (finish.teeth().rows() - 1) * finish.rowPitch();
    double depth = hole.depth().orElse(Double.POSITIVE_INFINITY);
    return inWall && low < hole.top() && high > hole.top() - depth && isNear(fromAxis);
  }

  /** A mill far from the hole stands in other metal, or in none. */
  private boolean isNear(double fromAxis) {
    return fromAxis < hole.diameter() / 2 + finish.tooth().outsideRadius();
  }
}
