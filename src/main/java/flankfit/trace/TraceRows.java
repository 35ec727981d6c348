package flankfit.trace;

import flankfit.control.BlockTrace;
import flankfit.control.FlowStep;
import flankfit.control.WordTrace;
import flankfit.unit.LengthUnit;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/** What a block meant, row by row: words, steps, changes of the state, moves. */
public final class TraceRows {
  private TraceRows() {}

  /**
   * The rows of a block; findings are not among them.
   *
   * @param block the block
   * @param unit unit that lengths are shown in; inches have millimetres beside them
   */
  public static List<TraceRow> of(BlockTrace block, LengthUnit unit) {
    return of(block, unit, List.of());
  }

  /**
   * The rows of a block; findings are not among them.
   *
   * @param block the block
   * @param unit unit that lengths are shown in; inches have millimetres beside them
   * @param messages what the control displays when it executes the block
   */
  public static List<TraceRow> of(BlockTrace block, LengthUnit unit, List<String> messages) {
    Numbers numbers = new Numbers(unit);
    List<TraceRow> rows = new ArrayList<>();
    for (String message : messages) {
      rows.add(new TraceRow(TraceRow.Kind.MESSAGE, "message", message, ""));
    }
    rows.addAll(new WordRows(numbers).of(block));
    Iterator<FlowStep> steps = block.steps().iterator();
    while (steps.hasNext()) {
      FlowStep step = steps.next();
      rows.add(step.to(new StepRows(block.place().file(), !steps.hasNext())));
    }
    for (StateChange change : StateChange.of(block, unit)) {
      rows.add(
          new TraceRow(
              TraceRow.Kind.STATE, change.label(), change.from() + " → " + change.to(), ""));
    }
    rows.addAll(new MoveRows(numbers).of(block.moves()));
    return rows;
  }

  /** What a word is to its block, in a few words. */
  public static String meaning(WordTrace word) {
    return WordRows.meaning(word);
  }
}
