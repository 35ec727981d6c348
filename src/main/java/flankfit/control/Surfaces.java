package flankfit.control;

import flankfit.finding.Code;
import flankfit.setup.Stock;
import java.util.Optional;

/** Heights of the part that rules use without a model of the metal. */
final class Surfaces {
  private final Machine machine;

  Surfaces(Machine machine) {
    this.machine = machine;
  }

  /** Top of the stock, or else Z0 of the active work offset (mm). */
  double top() {
    Optional<Stock> stock = machine.setup.stock();
    if (stock.isPresent()) {
      return stock.get().top();
    }
    machine.assumptions.once(
        Code.AS05,
        "",
        "top of the part taken as Z0 of " + machine.modes.workOffset(),
        "no stock in the sheet");
    return machine.frame.unshifted(2);
  }

  /** Height above which everything counts as clear (mm). */
  double clearance() {
    return top() + machine.switches.places().clearance();
  }
}
