package flankfit.window;

import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.motion.TapeBuilder;
import flankfit.unit.LengthUnit;

/** Tapes of plain moves, one a line. */
final class PlainTapes {
  private PlainTapes() {}

  /** So many rapids, to and fro, from line 2 on. */
  static Tape lines(int moves) {
    TapeBuilder tape = new TapeBuilder(Point.ZERO, new double[] {9000, 9000, 9000});
    ModalState state = ModalState.initial(LengthUnit.MILLIMETRE);
    for (int i = 0; i < moves; i++) {
      tape.straight(MoveKind.RAPID, i % 100, 0, 0, i + 2, i + 1, state);
    }
    return tape.build();
  }
}
