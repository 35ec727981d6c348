package flankfit.trace;

import flankfit.control.FlowStep;
import flankfit.control.FlowStep.Variable;
import java.util.List;
import java.util.stream.Collectors;

/** Expressions, assignments, jumps, loops and calls in words. */
final class StepRows implements FlowStep.Teller<TraceRow> {
  private final String file;
  private final boolean last;

  /**
   * @param file file of the block; places in another one name it
   * @param last whether no step follows
   */
  StepRows(String file, boolean last) {
    this.file = file;
    this.last = last;
  }

  private static TraceRow row(String label, String text) {
    return new TraceRow(TraceRow.Kind.STEP, label, text, "");
  }

  private static String variables(List<Variable> variables) {
    return variables.stream()
        .map(v -> "#" + v.number() + " = " + Numbers.variable(v.value()))
        .collect(Collectors.joining(", "));
  }

  private String at(String other, int line) {
    return (other.equals(file) ? "" : other + " ") + "line " + line;
  }

  @Override
  public TraceRow computed(FlowStep.Computed step) {
    boolean alone =
        step.reads().size() == 1 && step.text().equals("#" + step.reads().get(0).number());
    String with = alone || step.reads().isEmpty() ? "" : ", with " + variables(step.reads());
    return row(step.text(), "= " + Numbers.variable(step.value()) + with);
  }

  @Override
  public TraceRow assigned(FlowStep.Assigned step) {
    return row(
        "#" + step.variable(),
        Numbers.variable(step.before()) + " → " + Numbers.variable(step.after()));
  }

  @Override
  public TraceRow tested(FlowStep.Tested step) {
    return row(
        "condition", step.holds() ? "true" : last ? "false: goes on with the next block" : "false");
  }

  @Override
  public TraceRow jumped(FlowStep.Jumped step) {
    return row("jump", "goes on at N" + step.sequence() + ", line " + step.line());
  }

  @Override
  public TraceRow loopPass(FlowStep.LoopPass step) {
    return row("loop " + step.loop(), "pass " + step.pass() + " begins");
  }

  @Override
  public TraceRow loopLeft(FlowStep.LoopLeft step) {
    return row("loop " + step.loop(), "is left: goes on at line " + step.line());
  }

  @Override
  public TraceRow loopBack(FlowStep.LoopBack step) {
    return row("loop " + step.loop(), "back to line " + step.line());
  }

  @Override
  public TraceRow called(FlowStep.Called step) {
    String count = step.times() == 1 ? "" : ", time " + step.time() + " of " + step.times();
    String with = step.arguments().isEmpty() ? "" : ", with " + variables(step.arguments());
    return row(
        step.modal() ? "modal call" : "call",
        "O" + step.program() + " at " + at(step.file(), step.line()) + count + with);
  }

  @Override
  public TraceRow returned(FlowStep.Returned step) {
    String where = step.sequence().isPresent() ? "N" + step.sequence().getAsInt() + ", " : "";
    return row(
        "return",
        "O" + step.program() + " ends: goes on at " + where + at(step.file(), step.line()));
  }
}
