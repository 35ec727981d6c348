package flankfit.window;

import flankfit.control.BlockObserver;
import flankfit.control.BlockTrace;
import flankfit.control.ControlState;
import flankfit.finding.Finding;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicReference;

/**
 * What the blocks around the position meant. They are got by executing the program again on a
 * thread of its own, and only those near the block asked for are kept: a long program never stops
 * the window, nor fills the memory.
 */
final class ToldBlocks {
  /** Blocks kept before and behind the one asked for. */
  static final int AROUND = 2000;

  private final Replay replay;
  private final AtomicReference<Kept> kept = new AtomicReference<>(Kept.NONE);
  private Thread running = new Thread(() -> {});
  private Gathering gathering = new Gathering(0, -1);

  /**
   * Blocks by number.
   *
   * @param from first number that is known
   * @param to last number that is known
   */
  private record Kept(int from, int to, Map<Integer, BlockTrace> blocks) {
    static final Kept NONE = new Kept(0, -1, Map.of());

    boolean covers(int number) {
      return number >= from && number <= to;
    }
  }

  ToldBlocks(Replay replay) {
    this.replay = replay;
  }

  /** The block of a number; empty while it is not known yet. Asking makes it known. */
  Optional<BlockTrace> block(int number) {
    Kept now = kept.get();
    if (now.covers(number)) {
      return Optional.ofNullable(now.blocks().get(number));
    }
    if (running.isAlive()) {
      Gathering under = gathering;
      under.stopped |= number < under.from || number > under.to;
    } else {
      gathering = new Gathering(number - AROUND, number + AROUND);
      Gathering mine = gathering;
      running = new Thread(() -> gather(mine), "blocks");
      running.setDaemon(true);
      running.start();
    }
    return Optional.empty();
  }

  /** Whether the block of a number is still to come. */
  boolean isComing(int number) {
    return !kept.get().covers(number);
  }

  /** How many blocks were executed to get at those asked for. */
  int reached() {
    return gathering.reached;
  }

  private void gather(Gathering mine) {
    try {
      replay.run(mine);
    } catch (Enough e) {
      // All blocks asked for have come, or others are asked for; the rest is of no use here.
    }
    if (!mine.stopped) {
      kept.set(new Kept(mine.from, mine.to, mine.blocks));
    }
  }

  /** Ends an execution whose further blocks nobody asks for. */
  private static final class Enough extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Enough() {
      super("no further block is asked for", null, false, false);
    }
  }

  /** Keeps the blocks of a stretch. */
  private static final class Gathering implements BlockObserver {
    private final int from;
    private final int to;
    private volatile boolean stopped;
    private volatile int reached;
    private final Map<Integer, BlockTrace> blocks = new TreeMap<>();

    Gathering(int from, int to) {
      this.from = from;
      this.to = to;
    }

    @Override
    public void begins(ControlState start) {
      // The first block carries the state that it found.
    }

    @Override
    public void block(BlockTrace block) {
      reached = Math.max(reached, block.number());
      if (stopped || block.number() > to) {
        throw new Enough();
      }
      if (block.number() >= from && block.number() <= to && block.number() > 0) {
        blocks.put(block.number(), block);
      }
    }

    @Override
    public void ends(List<Finding> others) {
      // Findings of the whole program stand below the listing.
    }
  }
}
