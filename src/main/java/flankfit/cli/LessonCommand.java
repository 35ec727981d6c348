package flankfit.cli;

import flankfit.control.Interpretation;
import flankfit.lesson.Steps;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How it is said: the same motion in absolute and in incremental words. */
@Command(
    name = "lesson",
    description = {
      "Tells block by block what a program says: in which mode, where that leads, how the other mode"
          + " would say it, and in plain words."
    },
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Example: flankfit lesson sample-programs/filter-housing-m20.nc --from 12 --to 19"
    })
final class LessonCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private ProgramOptions program = new ProgramOptions();
  @Mixin private OutputOptions output = new OutputOptions();

  @Option(names = "--from", paramLabel = "LINE", description = "first line that is told")
  private Optional<Integer> from = Optional.empty();

  @Option(names = "--to", paramLabel = "LINE", description = "last line that is told")
  private Optional<Integer> to = Optional.empty();

  LessonCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws Exception {
    TracedLines lines = TracedLines.of(true, from, to);
    ProgramOptions.Job job = program.run();
    Steps steps = steps(job, lines);
    Interpretation done = job.interpretation();
    if (output.json()) {
      LessonJson.write(steps, done, terminal.outBytes());
    } else {
      LessonText.write(steps, done, output.style(), terminal.outWriter());
    }
    return MotionCommand.hasErrors(done.findings()) ? ExitStatus.ANSWER_NO : ExitStatus.OK;
  }

  private static Steps steps(ProgramOptions.Job job, TracedLines lines) {
    String name = job.interpretation().file();
    Steps steps = new Steps(job.sheet(), block -> lines.shows(block, name));
    job.execute(steps);
    return steps;
  }
}
