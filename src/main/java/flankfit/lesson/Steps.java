package flankfit.lesson;

import flankfit.control.BlockObserver;
import flankfit.control.BlockTrace;
import flankfit.control.ControlState;
import flankfit.finding.Finding;
import flankfit.setup.SetupSheet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * The steps of a lesson, taken down while the program is executed. A block that is executed several
 * times is told once, with the number of further times.
 */
public final class Steps implements BlockObserver {
  /** Steps that are told at most; nobody reads more, and memory is not endless. */
  public static final int MOST = 20_000;

  private final Predicate<BlockTrace> shown;
  private final StepMaker maker;
  private final List<Step> steps = new ArrayList<>();
  private final Map<String, Integer> told = new HashMap<>();
  private int left;

  /**
   * Waits for the first block.
   *
   * @param sheet the setup sheet that the program is executed with
   * @param shown which blocks are told; asked for every block in order
   */
  public Steps(SetupSheet sheet, Predicate<BlockTrace> shown) {
    this.shown = shown;
    maker = new StepMaker(sheet.control().reading());
  }

  /** The steps so far, in the order in which blocks were first executed. */
  public List<Step> all() {
    return List.copyOf(steps);
  }

  /** How many blocks are not told because there are more than {@link #MOST}. */
  public int left() {
    return left;
  }

  @Override
  public void begins(ControlState start) {
    // Every step carries the state that it needs.
  }

  @Override
  public void ends(List<Finding> others) {
    // Findings are told by whoever executes the program with its rules.
  }

  @Override
  public void block(BlockTrace block) {
    maker.enter(block);
    if (shown.test(block)) {
      take(block);
    }
    maker.leave(block);
  }

  private void take(BlockTrace block) {
    String key = block.place().file() + ':' + block.place().line() + ':' + block.place().column();
    Integer before = told.get(key);
    if (before != null) {
      steps.set(before, steps.get(before).repeated(block.way().way(), block.way().end()));
    } else if (steps.size() < MOST) {
      told.put(key, steps.size());
      steps.add(maker.step(block));
    } else {
      left++;
    }
  }
}
