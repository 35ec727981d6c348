package flankfit.gauge;

import flankfit.gauge.OffsetAdvice.AsMoved;
import flankfit.gauge.Trials.Tried;
import flankfit.setup.Offsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Makes the advice of an endless helix hold on the path as moved: the entries told are those with
 * which the whole program, gauged again, gives the verdict promised, and with the next ones it does
 * not.
 */
final class HeldAdvice {
  private final FoundThread found;
  private final RegisterInForce register;
  private final Offsets sheet;
  private final Trials trials;

  /**
   * @param sheet registers of the sheet
   * @param trials gauges the thread with other registers
   */
  HeldAdvice(FoundThread found, RegisterInForce register, Offsets sheet, Trials trials) {
    this.found = found;
    this.register = register;
    this.sheet = sheet;
    this.trials = trials;
  }

  /** The advice that holds. */
  OffsetAdvice of(OffsetAdvice endless) {
    boolean largerIsDeeper = endless.sensitivity() > 0 == found.spec().internal();
    Map<Long, Tried> known = new HashMap<>();
    Function<Long, Tried> at =
        steps -> known.computeIfAbsent(steps, k -> tried(k * endless.increment() - endless.now()));
    long most = (long) Math.ceil(found.spec().pitch() / 2 / endless.increment());
    double perStep = Math.abs(endless.sensitivity()) * endless.increment();
    LastGood go =
        new LastGood(k -> at.apply(k).go(), largerIsDeeper ? -1 : 1, perStep, most)
            .from(steps(endless.keyToGoLimit(), endless));
    LastGood noGo =
        new LastGood(k -> at.apply(k).noGo(), largerIsDeeper ? 1 : -1, perStep, most)
            .from(steps(endless.keyToNoGoLimit(), endless));
    return held(endless, go, noGo, largerIsDeeper);
  }

  private static long steps(double entry, OffsetAdvice advice) {
    return Math.round(entry / advice.increment());
  }

  private Tried tried(double more) {
    return trials.with(found, register.tried(sheet, more));
  }

  private static OffsetAdvice held(
      OffsetAdvice endless, LastGood go, LastGood noGo, boolean largerIsDeeper) {
    double increment = endless.increment();
    boolean both = go.isFound() && noGo.isFound();
    long low = largerIsDeeper ? go.good() : noGo.good();
    long high = largerIsDeeper ? noGo.good() : go.good();
    boolean window = both && low <= high;
    long middle = steps(endless.keyToMiddle(), endless);
    boolean between = window && (middle < low || middle > high);
    double toMiddle = between ? Math.floorDiv(low + high, 2) * increment : endless.toMiddle();
    double toGo = limit(go, endless.toGoLimit(), endless.keyToGoLimit(), increment);
    double toNoGo = limit(noGo, endless.toNoGoLimit(), endless.keyToNoGoLimit(), increment);
    return new OffsetAdvice(
        endless.register(),
        endless.geometry(),
        endless.now(),
        endless.sensitivity(),
        toMiddle,
        toGo,
        toNoGo,
        increment,
        between ? toMiddle : endless.keyToMiddle(),
        go.isFound() ? go.good() * increment : endless.keyToGoLimit(),
        noGo.isFound() ? noGo.good() * increment : endless.keyToNoGoLimit(),
        window,
        endless.setBy(),
        Optional.of(
            new AsMoved(
                shift(go, toGo - endless.toGoLimit()),
                shift(noGo, toNoGo - endless.toNoGoLimit()),
                between)));
  }

  private static OptionalDouble shift(LastGood last, double shift) {
    return last.isFound() ? OptionalDouble.of(shift) : OptionalDouble.empty();
  }

  /** Where the path as moved changes no step, the exact limit of the endless helix stays. */
  private static double limit(LastGood last, double endless, double key, double increment) {
    boolean same = !last.isFound() || last.good() == Math.round(key / increment);
    return same ? endless : last.limit() * increment;
  }
}
