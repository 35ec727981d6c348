package flankfit.cli;

import flankfit.metal.MetalProgress;
import java.util.concurrent.atomic.AtomicLong;

/** How far many pieces of work have come together, told by any of them from any thread. */
final class SharedProgress {
  private static final int PARTS = 1000;

  private final int pieces;
  private final MetalProgress told;
  private final AtomicLong done = new AtomicLong();

  /**
   * Nothing is done yet.
   *
   * @param pieces number of pieces of work
   * @param told what is told the share of all
   */
  SharedProgress(int pieces, MetalProgress told) {
    this.pieces = pieces;
    this.told = told;
  }

  /** Progress of one piece; a step of it that begins anew does not count back. */
  Piece piece() {
    return new Piece();
  }

  /** One piece of work. */
  final class Piece implements MetalProgress {
    private long furthest;

    @Override
    public synchronized boolean goOn(double share) {
      long now = (long) (PARTS * Math.min(1, Math.max(0, share)));
      if (now > furthest) {
        done.addAndGet(now - furthest);
        furthest = now;
      }
      return told.goOn((double) done.get() / PARTS / Math.max(1, pieces));
    }
  }
}
