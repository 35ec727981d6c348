package flankfit.window;

import flankfit.control.BlockObserver;
import flankfit.control.Interpreter;
import java.util.Optional;

/** Executes the program once more before the eyes of an observer; may be called on any thread. */
public interface Replay {
  /** A program that cannot be executed again: nothing is told. */
  Replay NONE = observer -> {};

  /** Executes it to its end. */
  void run(BlockObserver observer);

  /** Its text, to be executed with changes; empty for a program that cannot be changed. */
  default Optional<ProgramSource.Text> text() {
    return Optional.empty();
  }

  /** That of a text. */
  static Replay of(ProgramSource.Text text) {
    return new Replay() {
      @Override
      public void run(BlockObserver observer) {
        Interpreter.observe(text.program(), text.setup(), text.subprograms(), observer);
      }

      @Override
      public Optional<ProgramSource.Text> text() {
        return Optional.of(text);
      }
    };
  }
}
