package flankfit.window;

import flankfit.gauge.OffsetAdvice;
import flankfit.unit.Tolerance;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Objects;

/**
 * The wear entry of a D register to be turned by hand: what if this stood in the sheet? It goes by
 * the least increment of the control, and remembers what it was turned from.
 */
final class Dial {
  private static final int KEPT = 500;

  private OffsetAdvice offset;
  private double entry;
  private double least;
  private double most;
  private final Deque<Double> behind = new ArrayDeque<>();
  private final Deque<Double> ahead = new ArrayDeque<>();

  /**
   * Stands at the entry of the sheet.
   *
   * @param offset the register, and what is advised
   * @param reach how far it turns beyond that entry and the one advised (mm)
   */
  Dial(OffsetAdvice offset, double reach) {
    this.offset = Objects.requireNonNull(offset, "offset");
    entry = offset.now();
    limit(reach);
  }

  private void limit(double reach) {
    least = Math.min(offset.now(), offset.toMiddle()) - reach;
    most = Math.max(offset.now(), offset.toMiddle()) + reach;
  }

  /** Takes what the program gives now; a dial that stood at the entry of the sheet stays there. */
  void follow(OffsetAdvice now, double reach) {
    boolean moved = isMoved();
    offset = Objects.requireNonNull(now, "now");
    limit(reach);
    entry = moved ? Math.max(least, Math.min(most, entry)) : now.now();
  }

  /** The register, and what is advised. */
  OffsetAdvice offset() {
    return offset;
  }

  /** The entry it stands at (mm, as entered). */
  double entry() {
    return entry;
  }

  /** The entry of the sheet, or of the program's own block (mm, as entered). */
  double sheet() {
    return offset.now();
  }

  /** Least entry it goes to (mm). */
  double least() {
    return least;
  }

  /** Greatest entry it goes to (mm). */
  double most() {
    return most;
  }

  /** Whether it stands elsewhere than the sheet. */
  boolean isMoved() {
    return entry != offset.now();
  }

  /** Whether a greater entry makes the pitch diameter larger. */
  boolean growsThread() {
    return offset.sensitivity() > 0;
  }

  /** Goes by increments; from an entry between two, to the next one first. */
  boolean step(int steps) {
    double k = entry / offset.increment();
    double whole = steps > 0 ? Math.floor(k + 1e-6) : Math.ceil(k - 1e-6);
    return to((whole + steps) * offset.increment());
  }

  /** Goes to the increment nearest to an entry (mm); gives whether it stands there now. */
  boolean to(double wanted) {
    begin();
    return drag(wanted);
  }

  /** Remembers where it stands: what follows until the next time is one turn of the hand. */
  void begin() {
    if (behind.isEmpty() || behind.peek() != entry) {
      behind.push(entry);
      if (behind.size() > KEPT) {
        behind.removeLast();
      }
    }
    ahead.clear();
  }

  /** The same as {@link #to} within one turn of the hand. */
  boolean drag(double wanted) {
    double kept = Math.max(least, Math.min(most, wanted));
    double rounded = rounded(kept, offset.increment());
    boolean atSheet = Tolerance.MODEL.near(rounded, offset.now());
    entry = atSheet ? offset.now() : rounded;
    return Math.abs(entry - wanted) <= offset.increment() / 2 + Tolerance.MODEL.value();
  }

  /** A multiple of an increment, as its digits would be read. */
  static double rounded(double wanted, double increment) {
    long steps = Math.round(wanted / increment);
    return BigDecimal.valueOf(increment).multiply(BigDecimal.valueOf(steps)).doubleValue();
  }

  /** Back to the entry of the sheet. */
  void home() {
    begin();
    entry = offset.now();
  }

  boolean undo() {
    while (!behind.isEmpty() && behind.peek() == entry) {
      behind.pop();
    }
    return swap(behind, ahead);
  }

  boolean redo() {
    return swap(ahead, behind);
  }

  private boolean swap(Deque<Double> source, Deque<Double> target) {
    if (source.isEmpty()) {
      return false;
    }
    target.push(entry);
    entry = source.pop();
    return true;
  }
}
