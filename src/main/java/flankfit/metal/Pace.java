package flankfit.metal;

import java.util.concurrent.CancellationException;
import java.util.concurrent.locks.ReentrantLock;

/** Asks a progress now and then on behalf of many threads. */
final class Pace {
  private static final long APART = 20_000_000L;

  private final MetalProgress progress;
  private final ReentrantLock asking = new ReentrantLock();
  private double done;
  private double total = 1;
  private volatile boolean stopped;
  private volatile long asked = System.nanoTime() - APART;

  Pace(MetalProgress progress) {
    this.progress = progress;
  }

  /** Begins a step of so much work. */
  synchronized void begin(double work) {
    done = 0;
    total = Math.max(work, 1e-300);
  }

  /**
   * Counts work as done.
   *
   * @throws CancellationException if the work shall end
   */
  void done(double work) {
    double share;
    synchronized (this) {
      done += work;
      share = Math.min(1, done / total);
    }
    if (System.nanoTime() - asked > APART && asking.tryLock()) {
      try {
        // Another thread may have asked since the time was read.
        if (!stopped && System.nanoTime() - asked > APART) {
          asked = System.nanoTime();
          stopped = !progress.goOn(share);
        }
      } finally {
        asking.unlock();
      }
    }
    if (stopped) {
      throw new CancellationException("the work was ended");
    }
  }
}
