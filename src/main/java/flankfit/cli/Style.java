package flankfit.cli;

import flankfit.finding.Severity;
import picocli.CommandLine;

/** Whether words are set off by colour; a word always says the same. */
final class Style {
  private static final String RESET = "\u001B[0m";
  private final boolean colour;

  private Style(boolean colour) {
    this.colour = colour;
  }

  /** No colour. */
  static Style plain() {
    return new Style(false);
  }

  /** As asked for: {@code NO_COLOR} and a redirected output switch {@code auto} off. */
  static Style of(ColourChoice choice) {
    return switch (choice) {
      case ALWAYS -> new Style(true);
      case NEVER -> new Style(false);
      case AUTO -> new Style(CommandLine.Help.Ansi.AUTO.enabled());
    };
  }

  /** A heading. */
  String strong(String text) {
    return colour ? "\u001B[1m" + text + RESET : text;
  }

  /** Something of a severity. */
  String severity(Severity severity, String text) {
    if (!colour) {
      return text;
    }
    return switch (severity) {
      case ERROR -> "\u001B[1;31m" + text + RESET;
      case WARNING -> "\u001B[1;33m" + text + RESET;
      case NOTE -> "\u001B[36m" + text + RESET;
    };
  }

  /** When to colour. */
  enum ColourChoice {
    AUTO,
    ALWAYS,
    NEVER
  }
}
