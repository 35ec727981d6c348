package flankfit.fuzz;

import java.nio.charset.StandardCharsets;

/** Fuzz target: the bytes are the setup sheet of a program that mills a thread. */
public final class SheetFuzz {
  private static final String PROGRAM =
      """
      G21 G17 G40 G49 G80 G90 G94
      T4 M6
      G54 G0 X0. Y0. S2200 M3
      G43 H4 Z5.
      G1 Z-17. F1000.
      G91 G41 D4 G1 X1.5 Y-1.5 F400.
      G3 X1.5 Y1.5 Z0.188 J1.5 F90.
      G3 I-3. Z1.5
      G3 X-1.5 Y1.5 Z0.188 I-1.5
      G1 G40 X-1.5 Y-1.5
      G90 G83 X20. Z-9. R2. Q2. L2
      G80 G0 Z50.
      M30
      """;

  private SheetFuzz() {}

  static FuzzCase of(byte[] data) {
    return FuzzCase.of(PROGRAM, new String(data, StandardCharsets.UTF_8));
  }

  /** Called by the fuzzer before the first input. */
  public static void fuzzerInitialize() {
    FuzzRun.warmUp(of(new byte[0]));
  }

  /** Called by the fuzzer for each input. */
  public static void fuzzerTestOneInput(byte[] data) {
    FuzzRun.check(of(data));
  }
}
