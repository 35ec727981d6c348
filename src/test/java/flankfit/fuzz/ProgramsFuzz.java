package flankfit.fuzz;

/** Fuzz target: whole plausible programs, each with its sheet. */
public final class ProgramsFuzz {
  private ProgramsFuzz() {}

  /** Called by the fuzzer before the first input. */
  public static void fuzzerInitialize() {
    FuzzRun.warmUp(ProgramText.of(new byte[] {8, 1, 2, 3}));
  }

  /** Called by the fuzzer for each input. */
  public static void fuzzerTestOneInput(byte[] data) {
    FuzzRun.check(ProgramText.of(data));
  }
}
