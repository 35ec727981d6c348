package flankfit.window;

import flankfit.control.BlockObserver;
import flankfit.control.Interpreter;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.nc.SourceText;
import flankfit.picture.Samples;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What the window is tested with: the thread of a valve block with its program text. */
final class WindowSamples {
  static final String FILE = "valve-block-port.nc";

  private WindowSamples() {}

  static WindowInput thread() {
    return new WindowInput(
        FILE,
        lines(),
        Samples.threadTape(),
        Samples.threadSetup(),
        findings(),
        "M20x1.5-6H: GO enters, NO-GO stops after 0.4 turn; 0.061 mm above the GO limit",
        List.of(
            "A prediction is no inspection; the machine's own control, offsets and clamping decide"
                + " what happens.",
            "Prove a program out above the part, in single block, with a hand on feed hold, and wear"
                + " eye protection.",
            "Accept threads with calibrated gauges under your own quality system."),
        Map.of("port", 20.0),
        WindowSamples::execute);
  }

  private static void execute(BlockObserver observer) {
    byte[] program = String.join("\n", lines()).getBytes(StandardCharsets.UTF_8);
    Interpreter.interpret(SourceText.of(FILE, program), Samples.threadSetup(), List.of(), observer);
  }

  private static List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("O2015 (VALVE BLOCK, PORT M20X1.5)");
    lines.add("G21 G17 G90 G54 T2 M6");
    lines.add("G0 X0. Y0. G43 H2 Z5. S2700 M3");
    lines.add("G0 Z-19. M8");
    lines.add("G91 F240.");
    for (int pass = 0; pass < 3; pass++) {
      double e = pass == 0 ? 2.2 : pass == 1 ? 2.7 : 3.0;
      lines.add("G1 G41 D12 X" + e / 2 + " Y-" + (10 - e / 2));
      lines.add("G3 X" + (10 - e / 2) + " Y" + (10 - e / 2) + " Z0.1875 R" + (10 - e / 2));
      lines.add("G3 X0. Y0. Z1.5 I-10. J0.");
      lines.add("G3 X-" + (10 - e / 2) + " Y" + (10 - e / 2) + " Z0.1875 R" + (10 - e / 2));
      lines.add("G1 G40 X-" + e / 2 + " Y-" + (10 - e / 2));
      lines.add("G1 Z-1.875");
      lines.add(pass < 2 ? "(NEXT PASS)" : "G90");
    }
    lines.add("G0 Z5. M9");
    lines.add("G0 Z60. M5");
    lines.add("M30");
    return lines;
  }

  private static List<Finding> findings() {
    return List.of(
        Finding.of(
            Code.MD06,
            new Place(FILE, 2, 1, 3),
            "the program relies on the feed mode of power-up",
            "a program that ran before may have left another mode on",
            "write G94 in the first block"),
        Finding.of(
            Code.MD07,
            new Place(FILE, 5, 1, 3),
            "incremental mode is left on for 17 blocks",
            "a block that is skipped or run twice shifts every move after it by its whole length",
            "write G90 as soon as the helix is cut, or check that the moves add up to zero"),
        Finding.of(
            Code.AR01,
            new Place(FILE, 14, 4, 10),
            "the end point lies 0.100 mm off the circle that the arc starts on",
            "radius 9.900 mm at the start, 10.000 mm at the end; 0.020 mm is allowed",
            "make X Y and R agree, or check where the block before ends"));
  }
}
