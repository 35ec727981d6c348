package flankfit.window;

import flankfit.control.BlockObserver;

/** Executes the program once more before the eyes of an observer; may be called on any thread. */
public interface Replay {
  /** A program that cannot be executed again: nothing is told. */
  Replay NONE = observer -> {};

  /** Executes it to its end. */
  void run(BlockObserver observer);
}
