package flankfit.window;

import flankfit.gauge.ThreadAnswer;
import flankfit.odds.Odds;
import flankfit.odds.ThreadOdds;
import flankfit.setup.Scatter;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/**
 * Answers to wear entries, on threads of their own: that of an endless helix at once for every
 * step, that of the path as moved and the odds when the dial rests.
 */
final class Answers implements AutoCloseable {
  /** Time that the dial has to rest (ms). */
  private static final long REST = 200;

  private final Latest<Entry, Optional<ThreadAnswer>> quick;
  private final Latest<Entry, Whole> whole;
  private final Latest<Chance, Optional<ThreadOdds>> odds;

  /**
   * A whole answer and what is drawn of it.
   *
   * @param thread the answer; empty when the program stops with this entry
   * @param shape its wall; empty where there is none
   */
  record Whole(Optional<ThreadAnswer> thread, Optional<WallShape> shape) {}

  /** What odds are asked for: an entry, and how machine and forces scatter. */
  private record Chance(Entry entry, Scatter scatter) {}

  /** Asks nothing yet; waking tells on any thread that there is an answer. */
  Answers(Runnable wake) {
    quick = new Latest<>("dial", 0, (entry, watch) -> entry.endless(), wake);
    whole = new Latest<>("gauges", REST, (entry, watch) -> whole(entry), wake);
    odds = new Latest<>("odds", REST, this::odds, wake);
  }

  private static Whole whole(Entry entry) {
    Optional<ThreadAnswer> thread = entry.whole();
    return new Whole(thread, thread.flatMap(WallShape::of));
  }

  private Optional<ThreadOdds> odds(Chance asked, Latest.Watch watch) {
    Optional<ThreadAnswer> thread =
        asked.entry().isSheets()
            ? Optional.of(asked.entry().base())
            : whole
                .told(asked.entry())
                .orElseThrow(() -> new CancellationException("the dial moved on"))
                .thread();
    return thread
        .flatMap(t -> Odds.of(t, asked.scatter(), ThreadOdds.SEED))
        .map(o -> o.reckoned(ThreadOdds.DRAWS, watch::goesOn));
  }

  /** Asks for both answers to an entry. */
  void ask(Entry entry) {
    quick.ask(entry);
    whole.ask(entry);
  }

  /** Asks for the odds of an entry whose whole answer is there. */
  void askOdds(Entry entry, Scatter scatter) {
    odds.ask(new Chance(entry, scatter));
  }

  /** The last answer of an endless helix, and to which entry. */
  Optional<Latest.Told<Entry, Optional<ThreadAnswer>>> quick() {
    return quick.told();
  }

  /** The last whole answer, and to which entry. */
  Optional<Latest.Told<Entry, Whole>> whole() {
    return whole.told();
  }

  /** The last odds. */
  Optional<ThreadOdds> odds() {
    return odds.told().flatMap(Latest.Told::answer);
  }

  /** The entry that the last odds belong to; empty without any. */
  Optional<Entry> oddsOf() {
    return odds.told().map(told -> told.question().entry());
  }

  boolean isGauging() {
    return whole.isGoing();
  }

  boolean isReckoning() {
    return odds.isGoing();
  }

  /** Share of the odds under way that is done (1). */
  double oddsShare() {
    return odds.share();
  }

  /** Stops the odds under way. */
  void stopOdds() {
    odds.stop();
  }

  /** Why the last question has no answer: the tool failed; empty mostly. */
  Optional<String> failure() {
    return quick.failure().or(whole::failure).or(odds::failure);
  }

  @Override
  public void close() {
    quick.close();
    whole.close();
    odds.close();
  }
}
