package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.standard.Designations;
import flankfit.standard.InvalidDesignationException;
import flankfit.standard.ThreadSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Limits of size, plug gauges and drill of threads. */
@Command(
    name = "thread",
    description = "Prints limits of size, plug gauges and a drill for thread designations.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  flankfit thread M20x1.5-6H",
      "  flankfit thread M20-6H M12x1.25-6g M16x1.5-6H-LH",
      "  flankfit thread \"1/2-13 UNC-2B\" \"#10-32 UNF-2B\" \".500-20 UNF-3B\""
    })
final class ThreadCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(
      paramLabel = "DESIGNATION",
      arity = "1..*",
      description = "thread designations; quote those with blanks")
  private List<String> designations = List.of();

  @Mixin private OutputOptions output = new OutputOptions();

  ThreadCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws Exception {
    List<ThreadSpec> threads = new ArrayList<>();
    List<Finding> wrong = new ArrayList<>();
    for (String text : designations) {
      try {
        threads.add(Designations.parse(text));
      } catch (InvalidDesignationException e) {
        wrong.add(Finding.of(Code.RQ04, Place.file(""), e.getMessage(), e.why(), e.fix()));
      }
    }
    if (!wrong.isEmpty()) {
      throw new RequestException(ExitStatus.REQUEST_WRONG, wrong, List.of());
    }
    if (output.json()) {
      ThreadJson.write(threads, terminal.outBytes());
    } else {
      terminal.result(ThreadText.of(threads, output.style()));
    }
    return ExitStatus.OK;
  }
}
