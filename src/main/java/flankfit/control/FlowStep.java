package flankfit.control;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** One step of a block beside its words: something computed, or a change of the order. */
public sealed interface FlowStep {
  /** Lets a teller tell it. */
  <T> T to(Teller<T> teller);

  /**
   * Tells every kind of step.
   *
   * @param <T> what telling gives
   */
  interface Teller<T> {
    T computed(Computed step);

    T assigned(Assigned step);

    T tested(Tested step);

    T jumped(Jumped step);

    T loopPass(LoopPass step);

    T loopLeft(LoopLeft step);

    T loopBack(LoopBack step);

    T called(Called step);

    T returned(Returned step);
  }

  /**
   * A variable with its value.
   *
   * @param number number of the variable
   * @param value its value; empty when vacant
   */
  record Variable(int number, OptionalDouble value) {
    public Variable {
      Objects.requireNonNull(value, "value");
    }
  }

  /**
   * An expression was computed.
   *
   * @param text the expression as written
   * @param reads the variables it read, each once, in order
   * @param value its value; empty for a vacant variable alone
   */
  record Computed(String text, List<Variable> reads, OptionalDouble value) implements FlowStep {
    public Computed {
      Objects.requireNonNull(text, "text");
      reads = List.copyOf(reads);
      Objects.requireNonNull(value, "value");
    }

    @Override
    public <T> T to(Teller<T> teller) {
      return teller.computed(this);
    }
  }

  /**
   * A variable was assigned.
   *
   * @param variable number of the variable
   * @param before its value before; empty when vacant
   * @param after its value now; empty when vacant
   */
  record Assigned(int variable, OptionalDouble before, OptionalDouble after) implements FlowStep {
    public Assigned {
      Objects.requireNonNull(before, "before");
      Objects.requireNonNull(after, "after");
    }

    @Override
    public <T> T to(Teller<T> teller) {
      return teller.assigned(this);
    }
  }

  /**
   * A condition was asked.
   *
   * @param holds whether it is true
   */
  record Tested(boolean holds) implements FlowStep {
    @Override
    public <T> T to(Teller<T> teller) {
      return teller.tested(this);
    }
  }

  /**
   * GOTO leads elsewhere.
   *
   * @param sequence the sequence number
   * @param line its line, from 1
   */
  record Jumped(int sequence, int line) implements FlowStep {
    @Override
    public <T> T to(Teller<T> teller) {
      return teller.jumped(this);
    }
  }

  /**
   * A pass of a loop begins.
   *
   * @param loop number of the loop, 1 to 3
   * @param pass which pass since the loop was entered, from 1
   */
  record LoopPass(int loop, int pass) implements FlowStep {
    @Override
    public <T> T to(Teller<T> teller) {
      return teller.loopPass(this);
    }
  }

  /**
   * A loop is left, or passed over.
   *
   * @param loop number of the loop, 1 to 3
   * @param line where execution goes on, from 1
   */
  record LoopLeft(int loop, int line) implements FlowStep {
    @Override
    public <T> T to(Teller<T> teller) {
      return teller.loopLeft(this);
    }
  }

  /**
   * END leads back to the beginning of its loop.
   *
   * @param loop number of the loop, 1 to 3
   * @param line its WHILE or DO, from 1
   */
  record LoopBack(int loop, int line) implements FlowStep {
    @Override
    public <T> T to(Teller<T> teller) {
      return teller.loopBack(this);
    }
  }

  /**
   * A program is called, or executed again.
   *
   * @param program number of the program
   * @param time which time of this call, from 1
   * @param times how often in all
   * @param modal whether a motion calls it, under G66
   * @param arguments what its local variables get; empty when it shares those of the caller
   * @param file file where it stands
   * @param line line where it begins, from 1
   */
  record Called(
      int program,
      int time,
      int times,
      boolean modal,
      List<Variable> arguments,
      String file,
      int line)
      implements FlowStep {
    public Called {
      arguments = List.copyOf(arguments);
      Objects.requireNonNull(file, "file");
    }

    @Override
    public <T> T to(Teller<T> teller) {
      return teller.called(this);
    }
  }

  /**
   * M99 returns to the caller.
   *
   * @param program number of the program that ends
   * @param sequence sequence number to go on at; empty for the block after the call
   * @param file file of the caller
   * @param line line where execution goes on, from 1
   */
  record Returned(int program, OptionalInt sequence, String file, int line) implements FlowStep {
    public Returned {
      Objects.requireNonNull(sequence, "sequence");
      Objects.requireNonNull(file, "file");
    }

    @Override
    public <T> T to(Teller<T> teller) {
      return teller.returned(this);
    }
  }
}
