package flankfit.solid;

/** Asked between pieces of long work whether it is still wanted. Safe for many threads. */
public interface Halt {
  /** Never halts. */
  Halt NEVER = () -> false;

  /** Whether the work is to end with a {@link java.util.concurrent.CancellationException}. */
  boolean halted();
}
