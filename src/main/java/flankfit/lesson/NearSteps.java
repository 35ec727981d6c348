package flankfit.lesson;

import flankfit.control.BlockObserver;
import flankfit.control.BlockTrace;
import flankfit.control.ControlState;
import flankfit.finding.Finding;
import flankfit.setup.SetupSheet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.IntPredicate;

/**
 * The steps of some blocks of a long program, each time that a block was executed being one of its
 * own. Never changes.
 */
public final class NearSteps {
  private final Map<Integer, Told> told;

  private NearSteps(Map<Integer, Told> told) {
    this.told = told;
  }

  /**
   * Executes a program as far as is needed.
   *
   * @param replay executes it before the eyes of an observer
   * @param sheet the setup sheet that it is executed with
   * @param from number of the first block wanted, from 1
   * @param to number of the last one
   * @param goesOn asked with the number of each block whether anybody waits still
   * @throws CancellationException if nobody does
   */
  public static NearSteps of(
      Consumer<BlockObserver> replay, SetupSheet sheet, int from, int to, IntPredicate goesOn) {
    Taking taking = new Taking(new StepMaker(sheet.control().reading()), from, to, goesOn);
    try {
      replay.accept(taking);
    } catch (Enough e) {
      // All blocks wanted have come; what the rest does is not asked.
      return new NearSteps(taking.told);
    }
    return new NearSteps(taking.told);
  }

  /** The step of an executed block; empty if it is none of those wanted. */
  public Optional<Told> at(int number) {
    return Optional.ofNullable(told.get(number));
  }

  /** Ends an execution whose further blocks nobody asks for. */
  private static final class Enough extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Enough() {
      super("no further block is asked for", null, false, false);
    }
  }

  private static final class Taking implements BlockObserver {
    private final StepMaker maker;
    private final int from;
    private final int to;
    private final IntPredicate goesOn;
    private final Map<Integer, Told> told = new TreeMap<>();

    Taking(StepMaker maker, int from, int to, IntPredicate goesOn) {
      this.maker = maker;
      this.from = from;
      this.to = to;
      this.goesOn = goesOn;
    }

    @Override
    public void begins(ControlState start) {
      // Every step carries the state that it needs.
    }

    @Override
    public void block(BlockTrace block) {
      int number = block.number();
      if (number > to) {
        throw new Enough();
      }
      if (!goesOn.test(number)) {
        throw new CancellationException();
      }
      maker.enter(block);
      if (number >= Math.max(1, from)) {
        told.put(number, maker.told(block));
      }
      maker.leave(block);
    }

    @Override
    public void ends(List<Finding> others) {
      // Findings are told by whoever executes the program with its rules.
    }
  }
}
