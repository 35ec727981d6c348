package flankfit.cli;

import picocli.CommandLine.Option;

/** How an answer is written. */
final class OutputOptions {
  @Option(
      names = "--format",
      paramLabel = "text|json",
      description = "text for people (default), or json, one object on standard output")
  private Format format = Format.TEXT;

  @Option(
      names = "--color",
      paramLabel = "auto|always|never",
      description = "whether words are coloured; auto heeds NO_COLOR (default: auto)")
  private Style.ColourChoice colour = Style.ColourChoice.AUTO;

  /** Whether JSON is asked for. */
  boolean json() {
    return format == Format.JSON;
  }

  /** Style of text. */
  Style style() {
    return Style.of(colour);
  }

  /** Forms of an answer. */
  enum Format {
    TEXT,
    JSON
  }
}
