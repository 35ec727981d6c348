package flankfit.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import flankfit.control.Interpretation;
import java.lang.management.ManagementFactory;
import java.util.function.Supplier;

/** Processor time and memory that one run of a program takes, against what it may take. */
final class Cost {
  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  /** For a run that has hardly begun, with code that is not compiled yet (s). */
  private static final double START = 1;

  /** For text that is read (s/byte): 2 s a megabyte. */
  private static final double A_BYTE = 2e-6;

  /** For a block executed or a move made, while coverage is counted (s). */
  private static final double A_STEP = 8e-6;

  /** For a character of a block that a loop executes again, while coverage is counted (s). */
  private static final double A_CHARACTER = 1e-7;

  /** Two sets of sequence numbers, of eight digits, among them. */
  private static final double BYTES_AT_START = 64e6;

  private static final double BYTES_A_BYTE = 2000;
  private static final double BYTES_A_STEP = 4000;

  private final double seconds;
  private final double bytes;
  private final Interpretation answer;

  private Cost(Supplier<Interpretation> run) {
    long nanos = THREADS.getCurrentThreadCpuTime();
    long before = allocated();
    answer = run.get();
    seconds = (THREADS.getCurrentThreadCpuTime() - nanos) / 1e9;
    bytes = allocated() - before;
  }

  private static long allocated() {
    return THREADS.getThreadAllocatedBytes(Thread.currentThread().getId());
  }

  /** Runs a program and notes what it takes. */
  static Cost of(Supplier<Interpretation> run) {
    return new Cost(run);
  }

  /** What the run gave. */
  Interpretation answer() {
    return answer;
  }

  /**
   * Fails when more was taken than the work done accounts for.
   *
   * @param again the same run once more; the lesser cost counts, for the first may load classes
   * @param runs how often the program may have been executed in it
   */
  void check(Cost again, int textSize, int longestLine, int runs) {
    double blocks = answer.blocks();
    double steps = blocks + answer.tape().size();
    assertThat(Math.min(seconds, again.seconds))
        .as("seconds for %s bytes, %s blocks and moves", textSize, steps)
        .isLessThan(
            START
                + runs * (A_BYTE * textSize + A_STEP * steps + A_CHARACTER * longestLine * blocks));
    assertThat(Math.min(bytes, again.bytes))
        .as("bytes of memory for %s bytes, %s blocks and moves", textSize, steps)
        .isLessThan(runs * (BYTES_AT_START + BYTES_A_BYTE * textSize + BYTES_A_STEP * steps));
  }
}
