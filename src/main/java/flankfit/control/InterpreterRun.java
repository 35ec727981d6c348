package flankfit.control;

import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A program being interpreted, some blocks at a time: for who wants to show the first moves of a
 * large one at once. For use by one thread, but {@link #cancel} may be called by any.
 *
 * <p>The text is looked over no farther than it is read. Where a second percent mark or too many
 * control characters tell late that what was read is not the program, the moves so far are dropped
 * and the run begins again where the program does.
 */
public final class InterpreterRun {
  /** Blocks between two looks whether the run was cancelled. */
  private static final int STRETCH = 4096;

  private final SourceText program;
  private final SetupSheet setup;
  private final List<SourceText> subprograms;
  private ProgramRun run;
  private Optional<Interpretation> result = Optional.empty();
  private volatile boolean cancelled;
  private int beginnings = 1;

  InterpreterRun(SourceText program, SetupSheet setup, List<SourceText> subprograms) {
    this.program = Objects.requireNonNull(program, "program");
    this.setup = Objects.requireNonNull(setup, "setup");
    this.subprograms = List.copyOf(subprograms);
    run = new ProgramRun(program, setup, this.subprograms, Optional.empty(), true, true);
  }

  /**
   * Goes on by some blocks.
   *
   * @param blocks how many at most, above 0; blocks that are only read count as well
   * @return whether there is more to do: false at the end and after {@link #cancel}
   * @throws IllegalArgumentException if the number is not above 0
   */
  public boolean advance(int blocks) {
    if (blocks <= 0) {
      throw new IllegalArgumentException("blocks must be above 0: " + blocks);
    }
    int left = blocks;
    while (left > 0 && isGoing()) {
      int now = Math.min(left, STRETCH);
      goOn(now);
      left -= now;
    }
    return isGoing();
  }

  /** Goes on to the end, unless cancelled. */
  void advanceToEnd() {
    while (isGoing()) {
      goOn(STRETCH);
    }
  }

  private boolean isGoing() {
    return !cancelled && result.isEmpty();
  }

  private void goOn(int blocks) {
    run.advance(blocks);
    if (run.beginsElsewhere()) {
      run = new ProgramRun(program, setup, subprograms, Optional.empty(), false, true);
      beginnings++;
    } else if (run.isDone()) {
      result = Optional.of(run.result());
    }
  }

  /** Makes {@link #advance} return soon and do nothing more. */
  public void cancel() {
    cancelled = true;
  }

  /** Whether the run was cancelled. */
  public boolean isCancelled() {
    return cancelled;
  }

  /** How much of the text has been read, from 0 to 1 (1); 1 while loops and calls go on. */
  public double progress() {
    return result.isPresent() ? 1 : run.share();
  }

  /** Number of blocks executed so far. */
  public int blocks() {
    return result.isPresent() ? result.get().blocks() : run.blocks();
  }

  /** How often the run began: after another beginning the moves before are not the program's. */
  public int beginnings() {
    return beginnings;
  }

  /**
   * The moves so far; they do not change when the run goes on. Nothing is copied, so it may be
   * asked for often.
   */
  public Tape tape() {
    return result.isPresent() ? result.get().tape() : run.tape();
  }

  /** What the program does; empty before its end, and for good when cancelled before. */
  public Optional<Interpretation> result() {
    return result;
  }
}
