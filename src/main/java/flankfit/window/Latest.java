package flankfit.window;

import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/**
 * Answers questions on a thread of its own. The latest question wins: one that waits is replaced,
 * one under way is told to stop, and the last complete answer stays until the next is ready.
 *
 * @param <Q> a question, which tells by {@code equals} whether it was answered
 * @param <A> an answer
 */
final class Latest<Q, A> implements AutoCloseable {
  private final String name;
  private final long rest;
  private final Work<Q, A> work;
  private final Runnable wake;
  private Optional<Q> waiting = Optional.empty();
  private Optional<Q> running = Optional.empty();
  private boolean hasThread;
  private long askedAt;
  private Optional<Told<Q, A>> told = Optional.empty();
  private Optional<String> failure = Optional.empty();
  private volatile boolean replaced;
  private volatile double share;

  /** Answers one question. */
  interface Work<Q, A> {
    /**
     * The answer.
     *
     * @param watch is told how far it has come, and whether anybody waits still
     * @throws CancellationException if the watch says that nobody does
     */
    A answer(Q question, Watch watch);
  }

  /** Somebody who waits for an answer. */
  interface Watch {
    /** Told the share that is done (1); gives whether to go on. */
    boolean goesOn(double share);
  }

  /** A question and its answer. */
  record Told<Q, A>(Q question, A answer) {
    Told {
      Objects.requireNonNull(question, "question");
      Objects.requireNonNull(answer, "answer");
    }
  }

  /**
   * Has been asked nothing yet.
   *
   * @param name name of the thread
   * @param rest time for which no other question must come before one is begun (ms)
   * @param wake called, on that thread, whenever there is an answer
   */
  Latest(String name, long rest, Work<Q, A> work, Runnable wake) {
    this.name = name;
    this.rest = rest;
    this.work = work;
    this.wake = wake;
  }

  /** Asks, unless the same is asked or answered already. */
  synchronized void ask(Q question) {
    boolean known = running.or(() -> waiting).isEmpty() && isTold(question);
    if (known || (waiting.isEmpty() && isNow(running, question)) || isNow(waiting, question)) {
      return;
    }
    waiting = Optional.of(question);
    askedAt = System.nanoTime();
    replaced = running.isPresent();
    failure = Optional.empty();
    notifyAll();
    if (!hasThread) {
      hasThread = true;
      Thread thread = new Thread(this::run, name);
      thread.setDaemon(true);
      thread.start();
    }
  }

  private static <T> boolean isNow(Optional<T> one, T other) {
    return one.isPresent() && one.get().equals(other);
  }

  private boolean isTold(Q question) {
    return told.isPresent() && told.get().question().equals(question);
  }

  /** Stops what is under way; what was told stays. */
  synchronized void stop() {
    waiting = Optional.empty();
    replaced = true;
    running = Optional.empty();
    notifyAll();
  }

  /** Stops what is under way and drops what was told, for its memory. */
  synchronized void forget() {
    stop();
    told = Optional.empty();
  }

  /** The last answer, and to what. */
  synchronized Optional<Told<Q, A>> told() {
    return told;
  }

  /** The answer to a question, if it is the last. */
  synchronized Optional<A> told(Q question) {
    return isTold(question) ? told.map(Told::answer) : Optional.empty();
  }

  /** Why the last question has no answer: the tool failed. */
  synchronized Optional<String> failure() {
    return failure;
  }

  /** Whether an answer is on its way. */
  synchronized boolean isGoing() {
    return waiting.isPresent() || running.isPresent();
  }

  /** Share of it that is done (1); 0 where that is not known. */
  double share() {
    return share;
  }

  private void run() {
    Optional<Q> next = next();
    while (next.isPresent()) {
      answer(next.get());
      next = next();
    }
  }

  /** The next question, once it has rested; none ends the thread. */
  private synchronized Optional<Q> next() {
    running = Optional.empty();
    try {
      while (waiting.isPresent()) {
        long left = rest - (System.nanoTime() - askedAt) / 1_000_000;
        if (left <= 0) {
          running = waiting;
          waiting = Optional.empty();
          replaced = false;
          share = 0;
          return running;
        }
        wait(left);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    hasThread = false;
    return Optional.empty();
  }

  private void answer(Q question) {
    try {
      A answer = work.answer(question, this::goesOn);
      take(question, Optional.of(answer), Optional.empty());
    } catch (CancellationException e) {
      // Another question came, or nobody waits any more: there is nothing to tell.
      share = 0;
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
      take(question, Optional.empty(), Optional.of("the tool failed: " + e));
    }
    wake.run();
  }

  private boolean goesOn(double done) {
    share = done;
    return !replaced;
  }

  /** An answer that came while others wait is the newest still; a stopped one is of no use. */
  private synchronized void take(Q question, Optional<A> answer, Optional<String> why) {
    if (isNow(running, question)) {
      answer.ifPresent(a -> told = Optional.of(new Told<>(question, a)));
      failure = why;
    }
  }

  @Override
  public void close() {
    stop();
  }
}
