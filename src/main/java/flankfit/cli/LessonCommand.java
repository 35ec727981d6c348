package flankfit.cli;

import flankfit.control.Interpretation;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.lesson.Rewriting;
import flankfit.lesson.Steps;
import flankfit.motion.ModalState.Distance;
import java.nio.file.Path;
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

  @Option(
      names = "--as",
      paramLabel = "absolute|incremental",
      description = {
        "writes the same program in that mode to --out; comments and layout stay, and both are"
            + " executed to prove that they move alike"
      })
  private Optional<Distance> mode = Optional.empty();

  @Option(names = "--out", paramLabel = "FILE", description = "file that --as writes")
  private Optional<Path> out = Optional.empty();

  LessonCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws Exception {
    if (mode.isPresent() || out.isPresent()) {
      return rewrite();
    }
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

  private int rewrite() throws Exception {
    if (mode.isEmpty() || out.isEmpty() || from.isPresent() || to.isPresent()) {
      throw RequestException.wrong(
          Finding.of(
              Code.RQ04,
              Place.file(""),
              "--as and --out belong together, without --from and --to",
              "a whole program is written in one mode to a file of its own",
              "write --as absolute --out FILE"));
    }
    OutputFile.check(out.get(), program.inputs());
    LessonRewrite work = new LessonRewrite(program.read(), mode.get(), out.get());
    Rewriting.Done done = work.run();
    if (output.json()) {
      work.writeJson(done, terminal.outBytes());
    } else {
      work.write(done, terminal.outWriter());
    }
    return ExitStatus.OK;
  }

  private static Steps steps(ProgramOptions.Job job, TracedLines lines) {
    String name = job.interpretation().file();
    Steps steps = new Steps(job.sheet(), block -> lines.shows(block, name));
    job.execute(steps);
    return steps;
  }
}
