package flankfit.cli;

import flankfit.motion.MoveKind;
import flankfit.motion.Tape;

/**
 * Sums over a tape.
 *
 * @param feedLength length of lines and arcs (mm)
 * @param rapidLength length of rapids (mm)
 * @param seconds time without acceleration and tool changes (s)
 */
record Totals(double feedLength, double rapidLength, double seconds) {
  /** The sums of a tape. */
  static Totals of(Tape tape) {
    double feed = 0;
    double rapid = 0;
    double seconds = 0;
    for (int i = 0; i < tape.size(); i++) {
      if (tape.kind(i) == MoveKind.RAPID) {
        rapid += tape.length(i);
      } else {
        feed += tape.length(i);
      }
      seconds += tape.seconds(i);
    }
    return new Totals(feed, rapid, seconds);
  }
}
