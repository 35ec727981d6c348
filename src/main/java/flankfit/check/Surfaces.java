package flankfit.check;

import flankfit.control.Interpretation;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.motion.ModalState;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.setup.SetupSheet;
import flankfit.setup.Stock;
import java.util.Arrays;
import java.util.Optional;

/**
 * Heights of the part without a model of the metal: the top of the stock, or else Z0 of the work
 * offset in force, and the clearance plane above it. Without a stock, and in a program that sets
 * origins itself, the top is not known: it is not a number, and no comparison with it holds.
 */
final class Surfaces {
  /** The note that the top was assumed. */
  static final Code ASSUMED = Code.AS05;

  private final Tape tape;
  private final Interpretation done;
  private final Findings findings;
  private final Optional<Stock> stock;
  private final double[] tops;
  private final double clearance;
  private boolean told;

  Surfaces(Interpretation done, SetupSheet sheet, Findings findings) {
    this.tape = done.tape();
    this.done = done;
    this.findings = findings;
    this.stock = sheet.stock();
    this.tops = new double[tape.states().size()];
    this.clearance = sheet.control().places().clearance();
    told = stock.isPresent() || has(Code.AS05);
    if (stock.isEmpty() && has(Code.OF07)) {
      Arrays.fill(tops, Double.NaN);
      told = true;
      return;
    }
    for (int i = 0; i < tops.length; i++) {
      tops[i] = stock.isPresent() ? stock.get().top() : zero(sheet, tape.states().get(i));
    }
  }

  private boolean has(Code code) {
    return done.findings().stream().map(Finding::code).anyMatch(found -> found == code);
  }

  /** Z0 of a state's work offset (mm), without G52, G92 and tool length. */
  private static double zero(SetupSheet sheet, ModalState state) {
    return sheet.workOffsets().getOrDefault(state.workOffset(), Point.ZERO).z()
        + sheet.workOffsets().getOrDefault("common", Point.ZERO).z();
  }

  /** Top of the part during a move, part frame (mm); not a number when it is not known. */
  double top(int move) {
    if (!told) {
      told = true;
      findings.add(
          ASSUMED,
          Place.file(done.file()),
          "top of the part taken as Z0 of " + tape.state(move).workOffset(),
          "no stock in the sheet",
          "");
    }
    return tops[tape.stateIndex(move)];
  }

  /** Height above which everything counts as clear (mm). */
  double clearancePlane(int move) {
    return top(move) + clearance;
  }

  /** Height above the top that counts as clear (mm). */
  double clearance() {
    return clearance;
  }
}
