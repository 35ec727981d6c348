package flankfit.picture;

import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.motion.TapeBuilder;
import flankfit.unit.LengthUnit;

/** A surface milled in rows, with more moves than are drawn with all their points. */
final class LongPaths {
  private static final int PER_ROW = 500;

  private LongPaths() {}

  static Tape surface(int moves) {
    TapeBuilder tape = new TapeBuilder(new Point(0, 0, 20), new double[] {9000, 9000, 9000});
    ModalState state = ModalState.initial(LengthUnit.MILLIMETRE);
    tape.straight(MoveKind.RAPID, 0, 0, 2, 1, 1, state);
    for (int i = 0; i < moves; i++) {
      int row = i / PER_ROW;
      int step = row % 2 == 0 ? i % PER_ROW : PER_ROW - 1 - i % PER_ROW;
      double x = step * 0.2;
      double y = row * 0.4;
      double z = -2 + StrictMath.sin(x / 9) * StrictMath.cos(y / 7);
      tape.straight(MoveKind.LINE, x, y, z, i + 2, i + 2, state);
    }
    return tape.build();
  }

  /** The first moves of a tape. */
  static Tape first(Tape tape, int moves) {
    TapeBuilder part = new TapeBuilder(tape.start(), new double[] {9000, 9000, 9000});
    for (int move = 0; move < moves; move++) {
      part.straight(
          tape.kind(move),
          tape.toX(move),
          tape.toY(move),
          tape.toZ(move),
          tape.line(move),
          tape.block(move),
          tape.state(move));
    }
    return part.build();
  }
}
