package flankfit.cli;

import picocli.CommandLine;

/** Turns what a command throws into words and an exit status; never a stack trace. */
final class ExecutionFailure implements CommandLine.IExecutionExceptionHandler {
  private final Terminal terminal;

  ExecutionFailure(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public int handleExecutionException(
      Exception failure, CommandLine command, CommandLine.ParseResult request) {
    if (failure instanceof RequestException wrong) {
      FindingText words = new FindingText(Style.plain());
      StringBuilder text = new StringBuilder();
      words.full(wrong.findings(), file -> wrong.sourceLines(), text);
      terminal.aside(text.toString());
      return wrong.status();
    }
    terminal.aside(
        "flankfit: internal failure: "
            + failure
            + "\n  why   this is a fault of Flankfit, not of the program or the sheet\n"
            + "  fix   please report it with the files that show it\n");
    return ExitStatus.FAILED;
  }
}
