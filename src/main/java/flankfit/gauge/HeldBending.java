package flankfit.gauge;

import java.util.Optional;

/**
 * The bending of one thread, held as it was at the first entry: near that one hardly any chip
 * changes, while finding it takes ten times as long as all measures.
 */
final class HeldBending {
  private Optional<Bending> held = Optional.empty();
  private int passes = -1;

  /** Whether it was found. */
  boolean isKnown() {
    return passes >= 0;
  }

  /** The bending held; another number of passes is another thread, whose own is found. */
  Optional<Bending> of(FoundThread found, WorkpieceMetal metal) {
    int now = found.model().passes().size();
    if (now != passes) {
      held = metal.bending(found);
      passes = now;
    }
    return held;
  }
}
