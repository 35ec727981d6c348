package flankfit.cli;

import java.util.List;

/** What every output for people ends with. */
final class Cautions {
  /** The cautions, one sentence each. */
  static final List<String> LINES =
      List.of(
          "A prediction is no inspection: the machine's own control, offsets and clamping decide.",
          "Prove the program out above the part, in single block, with a hand on feed hold.",
          "Wear eye protection; follow the machine builder's and the shop's rules and local law.",
          "Accept threads with calibrated gauges under your own quality system.");

  private Cautions() {}

  /** Appends the cautions. */
  static void write(StringBuilder out) {
    out.append('\n');
    for (String line : LINES) {
      out.append(line).append('\n');
    }
  }
}
