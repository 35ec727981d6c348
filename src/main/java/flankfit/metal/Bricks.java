package flankfit.metal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;

/** Makes bricks where they are asked for, and forgets the coldest beyond a bound of memory. */
final class Bricks {
  private final List<Node> leaves;
  private final long most;
  private final ThreadLocal<NodeMaker> makers;
  private final AtomicLong bytes = new AtomicLong();
  private final AtomicLong made = new AtomicLong();
  private volatile long round;

  /**
   * An empty store.
   *
   * @param most memory that bricks may take (bytes)
   */
  Bricks(List<Node> leaves, long most, ThreadLocal<NodeMaker> makers) {
    this.leaves = leaves;
    this.most = most;
    this.makers = makers;
  }

  /** Begins a use: what is asked for from now on is warmer than all before. */
  synchronized void begin() {
    round++;
  }

  /** Memory that bricks take (bytes). */
  long bytes() {
    return bytes.get();
  }

  /** Number of bricks made so far, those made again included. */
  long made() {
    return made.get();
  }

  /** This thread's measures of the leaf whose brick it made last. */
  LeafField field() {
    return makers.get().field();
  }

  Brick of(Node leaf) {
    Brick brick = leaf.brick();
    if (brick == null) {
      Brick fresh = makers.get().brick(leaf);
      brick = leaf.keep(fresh);
      made.incrementAndGet();
      while (brick == null) {
        // It was forgotten between being kept by another thread and being read here.
        brick = leaf.keep(fresh);
      }
      if (brick == fresh && bytes.addAndGet(Brick.BYTES) > most) {
        brick.used = round;
        forgetColdest();
      }
    }
    if (brick.used != round) {
      brick.used = round;
    }
    return brick;
  }

  private synchronized void forgetColdest() {
    if (bytes.get() <= most) {
      return;
    }
    record Kept(Node leaf, Brick brick, long used) {}
    List<Kept> kept = new ArrayList<>();
    for (Node leaf : leaves) {
      Brick brick = leaf.brick();
      if (brick != null) {
        kept.add(new Kept(leaf, brick, brick.used));
      }
    }
    kept.sort(Comparator.comparingLong(Kept::used));
    for (Kept one : kept) {
      if (bytes.get() <= most - most / 4) {
        return;
      }
      if (one.leaf().forget(one.brick())) {
        bytes.addAndGet(-Brick.BYTES);
      }
    }
  }
}
