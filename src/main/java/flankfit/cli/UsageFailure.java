package flankfit.cli;

import java.io.PrintWriter;
import picocli.CommandLine;

/** Words a mistake in the command line itself: what, near matches, and the usage in a line. */
final class UsageFailure implements CommandLine.IParameterExceptionHandler {
  @Override
  public int handleParseException(CommandLine.ParameterException failure, String[] args) {
    CommandLine command = failure.getCommandLine();
    PrintWriter err = command.getErr();
    err.println("flankfit: " + failure.getMessage());
    CommandLine.UnmatchedArgumentException.printSuggestions(failure, err);
    err.print(command.getHelp().fullSynopsis());
    err.println("`" + command.getCommandSpec().qualifiedName() + " --help` tells more.");
    err.flush();
    return ExitStatus.REQUEST_WRONG;
  }
}
