package flankfit.cli;

import flankfit.control.Interpretation;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.gauge.GaugeAnswer;
import flankfit.gauge.ThreadAnswer;
import flankfit.gauge.Verdict;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** How it will fit: the threads a program cuts, and what the gauges will say. */
@Command(
    name = "gauge",
    description = {
      "Finds the threads a program cuts and predicts pitch diameter, GO and NO-GO,",
      "and the register value to key in."
    },
    mixinStandardHelpOptions = true,
    footer = {"", "Example: flankfit gauge sample-programs/filter-housing-m20.nc"})
final class GaugeCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private ProgramOptions program = new ProgramOptions();
  @Mixin private OutputOptions output = new OutputOptions();

  GaugeCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws Exception {
    ProgramOptions.Job job = program.run();
    GaugeAnswer answer = job.gauge();
    List<Finding> findings = findings(job.interpretation(), answer);
    if (output.json()) {
      GaugeJson.write(job, answer, findings, terminal.outBytes());
    } else {
      terminal.result(GaugeText.of(job, answer, findings, output.style()));
    }
    return isYes(answer, findings) ? ExitStatus.OK : ExitStatus.ANSWER_NO;
  }

  private static boolean isYes(GaugeAnswer answer, List<Finding> findings) {
    return !MotionCommand.hasErrors(findings)
        && answer.threads().stream()
            .map(ThreadAnswer::verdict)
            .allMatch(verdict -> verdict == Verdict.GAUGES_GOOD);
  }

  /** Findings of the control and of gauging together. */
  static List<Finding> findings(Interpretation done, GaugeAnswer answer) {
    Findings all = new Findings();
    all.addAll(done.findings());
    all.addAll(answer.findings());
    done.stoppedAt()
        .ifPresent(
            stop ->
                all.add(
                    Code.GA06,
                    new Place(done.file(), stop.line(), 0, 0),
                    "the program is gauged as far as line " + stop.line() + " only",
                    stop.code().name() + " stops it there; a thread cut later is not seen",
                    "mend that line first"));
    return all.sorted();
  }
}
