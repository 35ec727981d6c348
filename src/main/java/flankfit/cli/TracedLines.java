package flankfit.cli;

import flankfit.control.BlockTrace;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import java.util.Optional;

/**
 * Which lines of the program a trace shows. Blocks of another file are shown with the block of the
 * program that led to them.
 */
final class TracedLines {
  private final int from;
  private final int to;
  private boolean shown;

  private TracedLines(int from, int to) {
    this.from = from;
    this.to = to;
  }

  /**
   * The lines asked for.
   *
   * @throws RequestException if they are no range, or asked for without a trace
   */
  static TracedLines of(boolean trace, Optional<Integer> from, Optional<Integer> to)
      throws RequestException {
    if (!trace && (from.isPresent() || to.isPresent())) {
      throw wrong("--from and --to need --trace", "they limit what is traced", "add --trace");
    }
    int first = from.orElse(1);
    int last = to.orElse(Integer.MAX_VALUE);
    if (first < 1 || last < first) {
      throw wrong(
          "lines " + first + " to " + last + " are no range",
          "lines count from 1, and the last is not before the first",
          "correct --from or --to");
    }
    return new TracedLines(first, last);
  }

  private static RequestException wrong(String what, String why, String fix) {
    return RequestException.wrong(Finding.of(Code.RQ04, Place.file(""), what, why, fix));
  }

  /**
   * Whether a block is shown; to be asked for every block in order.
   *
   * @param program name of the program's file
   */
  boolean shows(BlockTrace block, String program) {
    Place place = block.place();
    if (place.file().equals(program)) {
      shown = place.line() >= from && place.line() <= to;
    }
    return shown;
  }
}
