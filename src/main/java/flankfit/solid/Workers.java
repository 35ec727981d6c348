package flankfit.solid;

import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Threads that share work cut into pieces. What a piece yields must depend on the piece alone; then
 * the whole does not depend on the number of threads.
 */
final class Workers {
  /** Makes what one thread keeps for itself, then takes piece after piece. */
  interface Hand {
    /** Work on the rows from {@code from} up to but not {@code to}, piece number {@code piece}. */
    void take(int piece, int from, int to);
  }

  /** Makes a {@link Hand} for each thread. */
  interface Hands {
    /** A hand with arrays of its own. */
    Hand make();
  }

  private final int threads;
  private final Halt halt;

  Workers(int threads, Halt halt) {
    if (threads < 1) {
      throw new IllegalArgumentException("threads is " + threads + ", at least 1 is needed");
    }
    this.threads = threads;
    this.halt = halt;
  }

  /** Number of pieces that so many rows are cut into. */
  static int pieces(int rows, int rowsInPiece) {
    return (int) (((long) rows + rowsInPiece - 1) / rowsInPiece);
  }

  /**
   * Hands out all pieces and returns when they are done.
   *
   * @throws CancellationException when halted; nothing of the work may be used then
   */
  void run(int rows, int rowsInPiece, Hands hands) {
    int pieces = pieces(rows, rowsInPiece);
    AtomicInteger next = new AtomicInteger();
    AtomicReference<Throwable> failure = new AtomicReference<>();
    Runnable loop =
        () -> {
          try {
            Hand hand = hands.make();
            for (int piece = next.getAndIncrement();
                piece < pieces && failure.get() == null;
                piece = next.getAndIncrement()) {
              if (halt.halted()) {
                throw new CancellationException("the surface is no longer wanted");
              }
              int from = piece * rowsInPiece;
              hand.take(piece, from, (int) Math.min(rows, (long) from + rowsInPiece));
            }
          } catch (RuntimeException | Error thrown) {
            failure.compareAndSet(null, thrown);
          }
        };
    int helpers = Math.min(threads, pieces) - 1;
    Thread[] others = new Thread[Math.max(0, helpers)];
    for (int i = 0; i < others.length; i++) {
      others[i] = new Thread(loop, "surface-" + (i + 1));
      others[i].setDaemon(true);
      others[i].start();
    }
    loop.run();
    join(others);
    Throwable thrown = failure.get();
    if (thrown instanceof Error error) {
      throw error;
    }
    if (thrown instanceof RuntimeException exception) {
      throw exception;
    }
  }

  private static void join(Thread[] others) {
    boolean interrupted = false;
    for (Thread other : others) {
      boolean joined = false;
      while (!joined) {
        try {
          other.join();
          joined = true;
        } catch (InterruptedException e) {
          // The pieces write into arrays that the caller goes on with, so they have to end first.
          interrupted = true;
        }
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
