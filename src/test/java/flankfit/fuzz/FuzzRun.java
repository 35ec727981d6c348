package flankfit.fuzz;

import flankfit.setup.SetupSheet;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** Checks a case and keeps one that fails as text. */
final class FuzzRun {
  /** Where a failing case goes; it is ready to be moved to the test resources. */
  static final Path FOUND = Path.of("target", "fuzz", "found");

  /** Set to keep every case before it is run: shows the text of an input that hangs. */
  private static final boolean KEEP_ALL = Boolean.getBoolean("fuzz.keep");

  private static final String SHEET =
      """
      offsets.D1 = { geometry = 1.0 }
      [[hole]]
      name = "port"
      at = [0.0, 0.0]
      diameter = 18.5
      depth = 22.0
      thread = "M20x1.5-6H"
      """;

  private static final String EVERY_PART =
      """
      G21 G90 G17 G54 G40 G49 S1000 M3 F200.
      G41 D1 G1 X9.
      Y9.
      G2 X19. I5.
      G40 Y0
      G81 X9. Z-9. R2.
      G80
      #1=[SIN[30]+2]
      WHILE[#1 LT 5]DO1
      M98 P7
      #1=#1+1
      END1
      G4 X1.
      M30
      O7
      G68 X0 Y0 R9.
      G0 X#1
      G69
      M99
      """;

  private FuzzRun() {}

  /** Loads the classes, so that the time of the first input is its own. */
  static void warmUp(FuzzCase given) {
    check(given);
    check(FuzzCase.of(EVERY_PART, SHEET));
  }

  /** Checks a case. */
  static void check(FuzzCase given) {
    check(given, () -> Oracles.check(given));
  }

  /** Checks a case whose sheet is read already. */
  static void check(FuzzCase given, SetupSheet sheet) {
    check(given, () -> Oracles.check(given, sheet));
  }

  private interface Checks {
    void run() throws IOException;
  }

  private static void check(FuzzCase given, Checks checks) {
    try {
      if (KEEP_ALL) {
        given.save(FOUND, "last");
      }
      checks.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (RuntimeException | Error e) {
      keep(given, e);
      throw e;
    }
  }

  private static void keep(FuzzCase given, Throwable failure) {
    try {
      String name = "case-" + Integer.toHexString(given.source().lines().hashCode());
      failure.addSuppressed(new IllegalStateException("kept as " + given.save(FOUND, name)));
    } catch (IOException e) {
      failure.addSuppressed(e);
    }
  }
}
