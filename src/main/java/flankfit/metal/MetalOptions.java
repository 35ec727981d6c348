package flankfit.metal;

import flankfit.unit.Require;
import java.util.Optional;

/**
 * How fine the metal is made, and with what.
 *
 * @param cell side of the finest cells (mm), in which the tool that wants the finest is shown, the
 *     others in proportion; empty to take what the tools want
 * @param memory memory that nodes and bricks may take (bytes), from 1 MiB on: cells that fit into
 *     much less do not exist
 * @param threads threads that work, from 1
 */
public record MetalOptions(Optional<Double> cell, long memory, int threads) {
  private static final long USUAL_MEMORY = 512L << 20;
  private static final double LEAST_MEMORY = 1 << 20;

  public MetalOptions {
    cell.ifPresent(side -> Require.positive("cell", side));
    Require.within("memory", (double) memory, LEAST_MEMORY, Double.MAX_VALUE);
    Require.within("threads", threads, 1, 1024);
  }

  /** What the tools want, half a gibibyte, all processors. */
  public static MetalOptions usual() {
    return new MetalOptions(
        Optional.empty(), USUAL_MEMORY, Runtime.getRuntime().availableProcessors());
  }

  /** The same with finest cells of a side (mm). */
  public MetalOptions withCell(double side) {
    return new MetalOptions(Optional.of(side), memory, threads);
  }

  /** The same with so much memory (bytes), from 1 MiB on. */
  public MetalOptions withMemory(long bytes) {
    return new MetalOptions(cell, bytes, threads);
  }

  /** The same with so many threads. */
  public MetalOptions withThreads(int number) {
    return new MetalOptions(cell, memory, number);
  }
}
