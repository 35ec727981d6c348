package flankfit.control;

import flankfit.control.FlowStep.Variable;
import flankfit.nc.Block;
import flankfit.nc.Expression;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The steps of the block being executed, kept only for an observer. */
final class FlowLog {
  private final boolean on;
  private final List<FlowStep> steps = new ArrayList<>();
  private final List<Variable> reads = new ArrayList<>();
  private Optional<Block> computed = Optional.empty();

  FlowLog(boolean on) {
    this.on = on;
  }

  /** Whether anything is kept; nothing is to be handed over otherwise. */
  boolean isOn() {
    return on;
  }

  /** Another block begins. */
  void clear() {
    steps.clear();
    reads.clear();
    computed = Optional.empty();
  }

  void add(FlowStep step) {
    steps.add(step);
  }

  List<FlowStep> steps() {
    return steps;
  }

  void beginExpression() {
    reads.clear();
  }

  /** A variable was read; not a number when vacant. */
  void read(int number, double value) {
    Variable variable = new Variable(number, optional(value));
    if (!reads.contains(variable)) {
      reads.add(variable);
    }
  }

  /** An expression has this value; a number alone is no news. */
  void value(Expression what, Block in, double value) {
    if (what.size() > 1 || !reads.isEmpty()) {
      add(new FlowStep.Computed(in.textAt(what.offset(), what.length()), reads, optional(value)));
    }
  }

  /** The words of the block with their values. */
  void words(Block plain) {
    computed = Optional.of(plain);
  }

  Optional<Block> words() {
    return computed;
  }

  static OptionalDouble optional(double value) {
    return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
