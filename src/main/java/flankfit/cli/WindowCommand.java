package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.ThreadAnswer;
import flankfit.window.MotionWindow;
import flankfit.window.NoDisplayException;
import flankfit.window.WindowInput;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** The scene to turn and zoom, with the listing beside it. */
@Command(
    name = "window",
    description = "Opens a window: the scene, the listing beside it, block by block.",
    mixinStandardHelpOptions = true,
    footer = {"", "Example: flankfit window sample-programs/filter-housing-m20.nc"})
final class WindowCommand implements Callable<Integer> {
  @Mixin private ProgramOptions program = new ProgramOptions();

  @Override
  public Integer call() throws Exception {
    ProgramOptions.Job job = program.run();
    GaugeAnswer answer = job.gauge();
    try {
      MotionWindow.open(
          new WindowInput(
              job.interpretation().file(),
              job.text().lines(),
              job.interpretation().tape(),
              job.sheet(),
              GaugeCommand.findings(job.interpretation(), answer),
              headline(answer),
              Cautions.LINES,
              job.majorDiameters()));
    } catch (NoDisplayException e) {
      throw RequestException.failed(
          Finding.of(Code.RQ06, Place.file(""), e.getMessage(), e.why(), e.fix()));
    }
    return ExitStatus.OK;
  }

  private static String headline(GaugeAnswer answer) {
    return answer.threads().stream()
        .map(WindowCommand::sentence)
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private static String sentence(ThreadAnswer thread) {
    return thread.designation()
        + " in "
        + thread.hole()
        + ": "
        + thread.verdict().words()
        + ", "
        + thread.reason();
  }
}
