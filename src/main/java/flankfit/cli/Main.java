package flankfit.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import picocli.CommandLine;

/** Entry point of the process. */
public final class Main {
  private Main() {}

  /** Runs one command and ends the process with its exit status. */
  public static void main(String[] args) {
    Locale.setDefault(Locale.ROOT);
    PrintStream out = utf8(FileDescriptor.out);
    PrintStream err = utf8(FileDescriptor.err);
    int status = run(args, out, err);
    out.flush();
    err.flush();
    System.exit(out.checkError() && status == ExitStatus.OK ? ExitStatus.FAILED : status);
  }

  private static int run(String[] args, PrintStream out, PrintStream err) {
    try {
      return commandLine(out, err).execute(args);
    } catch (OutOfMemoryError e) {
      err.println("flankfit: the memory given is not enough");
      err.println(
          "  why   " + e.getMessage() + ", of " + (Runtime.getRuntime().maxMemory() >> 20) + " MB");
      err.println("  fix   give more: java -Xmx8g -jar flankfit.jar …");
      return ExitStatus.FAILED;
    } catch (StackOverflowError | LinkageError e) {
      err.println("flankfit: internal failure: " + e);
      return ExitStatus.FAILED;
    }
  }

  /**
   * The commands, writing to the given streams.
   *
   * @param out takes results
   * @param err takes everything else
   */
  static CommandLine commandLine(PrintStream out, PrintStream err) {
    Terminal terminal = new Terminal(out, err);
    CommandLine line = new CommandLine(new FlankfitCommand(), new Commands(terminal));
    line.setOut(terminal.outWriter());
    line.setErr(terminal.errWriter());
    line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setParameterExceptionHandler(new UsageFailure());
    line.getSubcommands()
        .get("window")
        .getHelpSectionMap()
        .put(CommandLine.Model.UsageMessageSpec.SECTION_KEY_FOOTER, help -> WindowCommand.footer());
    line.setExecutionExceptionHandler(new ExecutionFailure(terminal));
    return line;
  }

  private static PrintStream utf8(FileDescriptor descriptor) {
    return new PrintStream(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
  }
}
