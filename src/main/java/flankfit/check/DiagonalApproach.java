package flankfit.check;

import flankfit.finding.Code;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;

/**
 * HZ03: the first motion after a tool change drops in Z and moves in the plane in one block. A
 * change to the tool that is in the spindle already leaves no trace on the tape and is not seen.
 */
final class DiagonalApproach implements Rule {
  private static final double DROP = 5;
  private static final double ASIDE = 1;

  private final Scene scene;
  private final Tape tape;
  private int tool;

  DiagonalApproach(Scene scene) {
    this.scene = scene;
    this.tape = scene.tape();
  }

  @Override
  public void look(int move) {
    if (tape.state(move).tool() == tool || tape.kind(move) == MoveKind.DWELL) {
      return;
    }
    tool = tape.state(move).tool();
    if (tape.kind(move) == MoveKind.ARC) {
      return;
    }
    int last = lastPiece(move);
    double drop = tape.fromZ(move) - tape.toZ(last);
    double aside = Math.hypot(tape.toX(last) - tape.fromX(move), tape.toY(last) - tape.fromY(move));
    if (drop > DROP && aside > ASIDE) {
      scene.report(
          Code.HZ03,
          move,
          "the first move after the tool change is diagonal: "
              + scene.text().length(drop)
              + " down and "
              + scene.text().length(aside)
              + " aside in one block",
          "with a dog-leg it is not even a straight one, and the length is tried out here first",
          "move X and Y first, then Z");
    }
  }

  /** Pieces of one diagonal rapid that runs as a dog-leg; otherwise the move itself. */
  private int lastPiece(int move) {
    boolean diagonal = scene.inPlane(move) > 0 && scene.climb(move) < 0;
    int last = move;
    if (diagonal && scene.isRapid(move) && scene.sheet().control().rapids().dogLeg()) {
      while (last + 1 < tape.size()
          && tape.block(last + 1) == tape.block(move)
          && scene.isRapid(last + 1)) {
        last++;
      }
    }
    return last;
  }
}
