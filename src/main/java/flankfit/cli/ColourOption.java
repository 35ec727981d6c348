package flankfit.cli;

import picocli.CommandLine.Option;

/** Whether words are coloured. */
final class ColourOption {
  @Option(
      names = "--color",
      paramLabel = "auto|always|never",
      description = "whether words are coloured; auto heeds NO_COLOR (default: auto)")
  private Style.ColourChoice colour = Style.ColourChoice.AUTO;

  /** Style of text. */
  Style style() {
    return Style.of(colour);
  }
}
