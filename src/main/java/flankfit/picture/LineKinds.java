package flankfit.picture;

import flankfit.motion.ModalState.Distance;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import java.util.Optional;

/**
 * Which kinds of line the moves of a tape make.
 *
 * @param absolute whether a feed move was made in absolute mode
 * @param incremental whether one was made in incremental mode
 * @param rapid the distance mode of the first rapid; empty for no rapid
 * @param programmed whether a move ends elsewhere than its block said
 */
record LineKinds(
    boolean absolute, boolean incremental, Optional<Distance> rapid, boolean programmed) {
  static final LineKinds NONE = new LineKinds(false, false, Optional.empty(), false);

  /**
   * These and those of further moves.
   *
   * @param from first of them
   */
  LineKinds and(Tape tape, int from) {
    boolean absoluteToo = absolute;
    boolean incrementalToo = incremental;
    boolean programmedToo = programmed;
    Optional<Distance> rapidToo = rapid;
    for (int move = from; move < tape.size(); move++) {
      MoveKind kind = tape.kind(move);
      if (kind == MoveKind.RAPID) {
        if (rapidToo.isEmpty()) {
          rapidToo = Optional.of(tape.state(move).distance());
        }
      } else if (kind != MoveKind.DWELL) {
        boolean isAbsolute = tape.state(move).distance() == Distance.ABSOLUTE;
        absoluteToo |= isAbsolute;
        incrementalToo |= !isAbsolute;
        programmedToo = programmedToo || !tape.programmedTo(move).equals(tape.to(move));
      }
    }
    return new LineKinds(absoluteToo, incrementalToo, rapidToo, programmedToo);
  }
}
