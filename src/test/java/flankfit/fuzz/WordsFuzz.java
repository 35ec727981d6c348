package flankfit.fuzz;

import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;

/** Fuzz target: a stream of words and blocks of the whole language. */
public final class WordsFuzz {
  private static final SetupSheet READ =
      SetupReader.read(Oracles.SHEET, WordsText.SHEET).sheet().orElseThrow();

  private WordsFuzz() {}

  /** Called by the fuzzer before the first input. */
  public static void fuzzerInitialize() {
    FuzzRun.warmUp(WordsText.of(new byte[] {8, 1, 2, 3}));
  }

  /** Called by the fuzzer for each input. */
  public static void fuzzerTestOneInput(byte[] data) {
    FuzzRun.check(WordsText.of(data), READ);
  }
}
