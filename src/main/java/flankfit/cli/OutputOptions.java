package flankfit.cli;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How an answer is written. */
final class OutputOptions {
  @Option(
      names = "--format",
      paramLabel = "text|json",
      description = "text for people (default), or json, one object on standard output")
  private Format format = Format.TEXT;

  @Mixin private ColourOption colour = new ColourOption();

  /** Whether JSON is asked for. */
  boolean json() {
    return format == Format.JSON;
  }

  /** Style of text. */
  Style style() {
    return colour.style();
  }

  /** Forms of an answer. */
  enum Format {
    TEXT,
    JSON
  }
}
