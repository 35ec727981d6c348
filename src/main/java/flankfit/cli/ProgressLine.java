package flankfit.cli;

import flankfit.metal.MetalProgress;
import picocli.CommandLine;

/** Tells on a console's error stream how far long work has come, from the first second on. */
final class ProgressLine implements MetalProgress, AutoCloseable {
  private static final long FIRST = 1_000_000_000L;
  private static final long BETWEEN = 250_000_000L;

  private final String work;
  private final Terminal terminal;
  private final boolean console = CommandLine.Help.Ansi.AUTO.enabled();
  private final long start = System.nanoTime();
  private long told;
  private boolean written;

  ProgressLine(String work, Terminal terminal) {
    this.work = work;
    this.terminal = terminal;
  }

  @Override
  public synchronized boolean goOn(double share) {
    long now = System.nanoTime();
    if (console && now - start > FIRST && now - told > BETWEEN) {
      told = now;
      written = true;
      terminal.aside("\r" + work + " " + (int) (100 * share) + " % ");
    }
    return true;
  }

  @Override
  public synchronized void close() {
    if (written) {
      terminal.aside("\r" + " ".repeat(work.length() + 7) + "\r");
      written = false;
    }
  }
}
