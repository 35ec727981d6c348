package flankfit.fuzz;

import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;

/** Fuzz target: the bytes are the program. */
public final class BytesFuzz {
  private static final String SHEET =
      "[control]\nloop-limit = 60\nblock-limit = 3000\nmove-limit = 4000\n";

  private static final SetupSheet READ =
      SetupReader.read(Oracles.SHEET, SHEET).sheet().orElseThrow();

  private BytesFuzz() {}

  static FuzzCase of(byte[] data) {
    return new FuzzCase(data, SHEET, "");
  }

  /** Called by the fuzzer before the first input. */
  public static void fuzzerInitialize() {
    FuzzRun.warmUp(of("G0 X1.\nM30\n".getBytes(StandardCharsets.UTF_8)));
  }

  /** Called by the fuzzer for each input. */
  public static void fuzzerTestOneInput(byte[] data) {
    FuzzRun.check(of(data), READ);
  }
}
