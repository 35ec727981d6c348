package flankfit.window;

import flankfit.motion.Point;
import flankfit.motion.TapeBuilder;
import flankfit.setup.SetupSheet;
import java.nio.file.Path;
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
  private final Optional<Programs> programs;
  private final Optional<Samples> samples;
  private final List<String> cautions;
  private final AtomicLong beginnings = new AtomicLong();
  private volatile Loaded latest;
  private volatile Optional<ProgramSource> source;
  private Optional<Load> current = Optional.empty();
  private Runnable wake = () -> {};

  /**
   * Has begun nothing yet, and knows no other program.
   *
   * @param cautions sentences that every output carries
   */
  Loader(ProgramSource source, SetupSheet setup, List<String> cautions) {
    this(Optional.of(source), setup, cautions, Optional.empty(), Optional.empty());
  }

  /**
   * Has begun nothing yet.
   *
   * @param source the program; empty for none yet
   * @param cautions sentences that every output carries
   * @param programs makes programs of files
   * @param samples the sample programs
   */
  Loader(
      Optional<ProgramSource> source,
      SetupSheet setup,
      List<String> cautions,
      Optional<Programs> programs,
      Optional<Samples> samples) {
    this.source = source;
    this.cautions = List.copyOf(cautions);
    this.programs = programs;
    this.samples = samples;
    latest = nothing(1, source.map(ProgramSource::file).orElse(""), setup);
    beginnings.set(latest.beginning());
  }

  private Loaded nothing(long beginning, String file, SetupSheet setup) {
    var tape = new TapeBuilder(Point.ZERO, new double[] {1, 1, 1}).build();
    WindowInput empty =
        new WindowInput(
            file, List.of(), tape, setup, List.of(), "", cautions, Map.of(), Replay.NONE);
    Loaded none = Loaded.of(empty);
    Stage stage = file.isEmpty() ? Stage.NOTHING : Stage.READING;
    return new Loaded(beginning, stage, -1, false, 0, empty, none.steps(), none.scene(), "");
  }

  /** The files of the program, to be watched. */
  List<Path> files() {
    return source.map(ProgramSource::files).orElse(List.of());
  }

  @Override
  public void open(Path file) {
    programs.ifPresent(p -> open(p.of(file)));
  }

  @Override
  public void open(Samples.Sample sample) {
    if (programs.isPresent() && samples.isPresent()) {
      open(samples.get().source(sample, programs.get()));
    }
  }

  private synchronized void open(ProgramSource other) {
    current.ifPresent(Load::stop);
    current = Optional.empty();
    source = Optional.of(other);
    latest = nothing(newBeginning(), other.file(), SetupSheet.empty());
    begin(Optional.empty());
    wake.run();
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
    if (source.isEmpty()) {
      return;
    }
    current.ifPresent(Load::stop);
    Load load = new Load(this, source.get(), cautions, text);
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
  synchronized void takeFailure(Load from, String why, List<Problem> reasons) {
    if (isCurrent(from)) {
      latest = latest.ended(Stage.FAILED, why, reasons);
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
