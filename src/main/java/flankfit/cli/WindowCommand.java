package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.finding.Severity;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.ThreadAnswer;
import flankfit.unit.LengthUnit;
import flankfit.window.MotionWindow;
import flankfit.window.NoDisplayException;
import flankfit.window.WindowInput;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
  private final Terminal terminal;

  @Mixin private ProgramOptions program = new ProgramOptions();

  WindowCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws Exception {
    ProgramOptions.Job job = program.run();
    GaugeAnswer answer = job.gauge();
    List<Finding> findings = GaugeCommand.findings(job.interpretation(), answer);
    try {
      MotionWindow.open(
              new WindowInput(
                  job.interpretation().file(),
                  job.text().lines(),
                  job.interpretation().tape(),
                  job.sheet(),
                  findings,
                  headline(answer, findings),
                  Cautions.LINES,
                  job.majorDiameters(),
                  job::execute))
          .ifPresent(sentence -> terminal.aside("flankfit: " + sentence + "\n"));
    } catch (NoDisplayException e) {
      throw RequestException.failed(
          Finding.of(Code.RQ06, Place.file(""), e.getMessage(), e.why(), e.fix()));
    }
    return ExitStatus.OK;
  }

  /** The threads and their verdicts in one sentence, after what has to be mended first. */
  private static String headline(GaugeAnswer answer, List<Finding> findings) {
    long errors = findings.stream().filter(f -> f.severity() == Severity.ERROR).count();
    String first =
        errors == 0
            ? ""
            : errors + (errors == 1 ? " error to mend first; " : " errors to mend first; ");
    Map<String, List<String>> holes = new LinkedHashMap<>();
    for (ThreadAnswer thread : answer.threads()) {
      holes.computeIfAbsent(sentence(thread), key -> new ArrayList<>()).add(thread.hole());
    }
    String threads =
        holes.entrySet().stream()
            .map(entry -> String.join(", ", entry.getValue()) + ": " + entry.getKey())
            .collect(Collectors.joining("; "));
    return first + (threads.isEmpty() ? "no thread is gauged" : threads);
  }

  private static String sentence(ThreadAnswer thread) {
    LengthUnit unit =
        thread.spec().threadsPerInch().isPresent() ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
    String words = thread.designation() + ", " + thread.verdict().words();
    return thread
        .go()
        .map(
            go ->
                words
                    + (go.enters() ? ", GO with " : ", GO lacks ")
                    + Figures.lengthWithUnit(Math.abs(go.clearance()), unit)
                    + (go.enters() ? " to spare" : ""))
        .orElse(words);
  }
}
