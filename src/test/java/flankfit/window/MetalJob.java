package flankfit.window;

import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.nc.SourceText;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A small job: a slot along X and a drilled hole in a block. */
public final class MetalJob {
  static final String PROGRAM =
      """
      %
      O12 (BRACKET, SLOT AND HOLE)
      G21 G17 G40 G49 G80 G90
      T1 M6
      G54 G0 X-17. Y0. S4000 M3
      G43 H1 Z-3.
      G1 X17. F400.
      G0 Z20.
      T2 M6
      G0 X6. Y0. S2000 M3
      G43 H2 Z5.
      G1 Z-8. F100.
      G0 Z20.
      M30
      %
      """;

  static final String SHEET =
      """
      units = "mm"
      title = "Bracket"

      [stock]
      shape = "block"
      size  = [24.0, 16.0, 10.0]
      zero  = [12.0, 8.0, 10.0]

      [work-offsets]
      G54 = [0.0, 0.0, 0.0]

      [[tool]]
      number       = 1
      kind         = "end mill"
      diameter     = 6.0
      flutes       = 3
      flute-length = 14.0

      [[tool]]
      number       = 2
      kind         = "drill"
      diameter     = 4.0
      flutes       = 2
      point-angle  = 118.0
      flute-length = 22.0

      [offsets]
      H1 = { geometry = 100.0, wear = 0.0 }
      H2 = { geometry = 100.0, wear = 0.0 }
      """;

  /** Line of the move that mills the slot. */
  static final int SLOT = 7;

  /** Line of the move that drills. */
  static final int DRILLED = 12;

  private MetalJob() {}

  /** The sheet, less lines that begin so. */
  static SetupSheet sheet(String without) {
    String text =
        without.isEmpty() ? SHEET : SHEET.replaceFirst("(?s)\\[stock\\].*?(?=\\[work)", "");
    return SetupReader.read("bracket.setup.toml", text).sheet().orElseThrow();
  }

  /** The program as executed with the whole sheet. */
  public static Interpretation interpretation() {
    return Interpreter.interpretUntried(text(), sheet(""), List.of());
  }

  /** The whole sheet. */
  public static SetupSheet sheet() {
    return sheet("");
  }

  private static SourceText text() {
    return SourceText.of("bracket.nc", PROGRAM.getBytes(StandardCharsets.US_ASCII));
  }

  /** All of it loaded. */
  static Loaded loaded(SetupSheet sheet) {
    Interpretation done = Interpreter.interpretUntried(text(), sheet, List.of());
    return Loaded.of(
        new WindowInput(
            "bracket.nc",
            PROGRAM.lines().toList(),
            done.tape(),
            sheet,
            done.findings(),
            "",
            List.of(),
            Map.of(),
            Replay.NONE,
            Optional.empty(),
            Optional.of(new Cutting(done, Optional.empty()))));
  }
}
