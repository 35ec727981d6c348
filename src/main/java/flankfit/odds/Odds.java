package flankfit.odds;

import flankfit.gauge.OffsetAdvice;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.ThreadVariation;
import flankfit.setup.Scatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The odds of one thread, and the advice that observations give; same input, same answer. */
public final class Odds {
  private final OddsModel model;
  private final Optional<OffsetAdvice> offset;
  private final long seed;

  private Odds(OddsModel model, Optional<OffsetAdvice> offset, long seed) {
    this.model = model;
    this.offset = offset;
    this.seed = seed;
  }

  /**
   * The odds of a thread; empty when no gauge starts in it, or nothing can be measured around it.
   *
   * @param thread the thread as gauged
   * @param scatter what the sheet says of machine and forces
   * @param seed any number
   */
  public static Optional<Odds> of(ThreadAnswer thread, Scatter scatter, long seed) {
    return thread
        .variation()
        .flatMap(variation -> OddsModel.of(variation, scatter, toWindow(thread, variation)))
        .map(model -> new Odds(model, thread.offset(), seed));
  }

  /** Depth from here to the middle between the gauges (mm); 0 without a register. */
  private static double toWindow(ThreadAnswer thread, ThreadVariation variation) {
    return thread
        .offset()
        .flatMap(
            o ->
                variation
                    .depthPerEntry()
                    .map(per -> per * ((o.toGoLimit() + o.toNoGoLimit()) / 2 - o.now())))
        .orElse(0.0);
  }

  /** How likely the gauges are to pass. */
  public ThreadOdds reckoned(int draws) {
    return ThreadOdds.of(model, draws, seed);
  }

  /**
   * What parts that were gauged make believe, and what to key in for the next one.
   *
   * @param parts what was seen, at least one part
   */
  public GaugingAdvice advice(List<PartObserved> parts) {
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("parts must not be empty");
    }
    List<PartObserved> ordered = new ArrayList<>(parts);
    ordered.sort(Comparator.comparingInt(PartObserved::part));
    boolean drifts = ordered.get(0).part() != ordered.get(ordered.size() - 1).part();
    FeltSizes sizes = new FeltSizes(model, seed);
    Belief belief =
        new Belief(
            sizes,
            offset.flatMap(o -> model.thread().depthPerEntry()).orElse(0.0),
            offset.map(OffsetAdvice::now).orElse(0.0),
            model.thread().turnsAllowed(),
            ordered.get(0).part(),
            drifts);
    ordered.forEach(belief::learn);
    return new Advising(model, sizes, belief, offset, drifts).advise(ordered, drifts);
  }
}
