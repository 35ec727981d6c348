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
   * The same before the eyes of somebody who waits for it.
   *
   * @throws java.util.concurrent.CancellationException if the watch stopped it
   */
  public ThreadOdds reckoned(int draws, Watch watch) {
    return ThreadOdds.of(model, draws, seed, watch);
  }

  /**
   * What parts that were gauged make believe, and what to key in for the next one.
   *
   * @param parts what was seen, at least one part
   */
  public GaugingAdvice advice(List<PartObserved> parts) {
    return advice(parts, List.of());
  }

  /**
   * The same where threads cut alike by the same mill and register were gauged, too: the mill is
   * one, the circles that the machine makes are others in each hole.
   *
   * @param parts what was seen in this thread
   * @param alike what was seen in threads that are cut alike; not both empty
   */
  GaugingAdvice advice(List<PartObserved> parts, List<PartObserved> alike) {
    if (parts.isEmpty() && alike.isEmpty()) {
      throw new IllegalArgumentException("parts must not be empty");
    }
    List<PartObserved> own = new ArrayList<>(parts);
    own.sort(Comparator.comparingInt(PartObserved::part));
    List<Seen> ordered = new ArrayList<>();
    alike.forEach(part -> ordered.add(new Seen(part, false)));
    own.forEach(part -> ordered.add(new Seen(part, true)));
    ordered.sort(Comparator.comparingInt(Seen::number));
    boolean drifts = ordered.get(0).number() != ordered.get(ordered.size() - 1).number();
    OddsModel wide = model.forAdvice();
    FeltSizes sizes = new FeltSizes(wide, seed);
    Belief belief =
        new Belief(
            sizes,
            offset.flatMap(o -> model.thread().depthPerEntry()).orElse(0.0),
            offset.map(OffsetAdvice::now).orElse(0.0),
            model.thread().turnsAllowed(),
            ordered.get(0).number(),
            drifts);
    ordered.forEach(seen -> belief.learn(seen.part(), seen.own()));
    return new Advising(wide, sizes, belief, offset, drifts).advise(own, drifts);
  }

  /** A part, and whether it was gauged in this very thread. */
  private record Seen(PartObserved part, boolean own) {
    int number() {
      return part.part();
    }
  }
}
