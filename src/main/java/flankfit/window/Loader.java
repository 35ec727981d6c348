package flankfit.window;

import flankfit.motion.Point;
import flankfit.motion.TapeBuilder;
import flankfit.setup.SetupSheet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Reads, executes, checks and gauges a program on a thread of its own and gives what there is of it
 * at any time. The latest load wins: one that was stopped or replaced changes nothing any more,
 * however long its thread still runs.
 */
final class Loader implements Loads, AutoCloseable {
  private final ProgramSource source;
  private final List<String> cautions;
  private final AtomicLong beginnings = new AtomicLong();
  private volatile Loaded latest;
  private Optional<Load> current = Optional.empty();
  private Runnable wake = () -> {};

  /**
   * Has begun nothing yet.
   *
   * @param cautions sentences that every output carries
   */
  Loader(ProgramSource source, SetupSheet setup, List<String> cautions) {
    this.source = source;
    this.cautions = List.copyOf(cautions);
    var nothing = new TapeBuilder(Point.ZERO, new double[] {1, 1, 1}).build();
    WindowInput empty =
        new WindowInput(
            source.file(),
            List.of(),
            nothing,
            setup,
            List.of(),
            "",
            this.cautions,
            Map.of(),
            Replay.NONE);
    Loaded none = Loaded.of(empty);
    latest =
        new Loaded(
            none.beginning(), Stage.READING, -1, false, 0, empty, none.steps(), none.scene(), "");
    beginnings.set(latest.beginning());
  }

  @Override
  public synchronized void wakes(Runnable whom) {
    wake = whom;
  }

  @Override
  public Loaded latest() {
    return latest;
  }

  @Override
  public void begin() {
    begin(Optional.empty());
  }

  /**
   * Loads the program.
   *
   * @param text its text, if it was read already
   */
  synchronized void begin(Optional<ProgramSource.Text> text) {
    current.ifPresent(Load::stop);
    Load load = new Load(this, source, cautions, text);
    current = Optional.of(load);
    Thread thread = new Thread(load, "load");
    thread.setDaemon(true);
    thread.start();
  }

  @Override
  public synchronized void stop() {
    if (current.isPresent()) {
      current.get().stop();
      current = Optional.empty();
      if (latest.stage().isGoing()) {
        latest = latest.ended(Stage.STOPPED, LoadWords.stopped(latest));
        wake.run();
      }
    }
  }

  /** A number for moves that have nothing to do with those before. */
  long newBeginning() {
    return beginnings.incrementAndGet();
  }

  /** Takes what a load has got, unless it was stopped or replaced. */
  synchronized void take(Load from, Loaded got) {
    if (isCurrent(from)) {
      latest = got;
      wake.run();
    }
  }

  /** Takes that a load came to an end before its end; what there is stays. */
  synchronized void takeFailure(Load from, String why) {
    if (isCurrent(from)) {
      latest = latest.ended(Stage.FAILED, why);
      current = Optional.empty();
      wake.run();
    }
  }

  private boolean isCurrent(Load load) {
    return current.isPresent() && current.get() == load;
  }

  /** Stops what is under way and tells nobody any more. */
  @Override
  public synchronized void close() {
    wake = () -> {};
    stop();
  }
}
