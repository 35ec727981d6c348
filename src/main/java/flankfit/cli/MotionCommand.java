package flankfit.cli;

import flankfit.control.Interpretation;
import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.picture.MotionPicture;
import flankfit.picture.NoOpenGlException;
import flankfit.picture.Scene;
import flankfit.picture.View;
import flankfit.trace.BlockNotes;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What the tool does: the moves, and a picture of them. */
@Command(
    name = "motion",
    description = "Shows what the tool does: the moves as a table or JSON, and a picture.",
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  flankfit motion sample-programs/filter-housing-m20.nc \\",
      "    --image path.png --view plan",
      "  flankfit motion sample-programs/filter-housing-m20.nc \\",
      "    --trace --from 20 --to 30"
    })
final class MotionCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private ProgramOptions program = new ProgramOptions();
  @Mixin private OutputOptions output = new OutputOptions();

  @Option(
      names = "--image",
      paramLabel = "FILE.png",
      description = "draws the path against stock and holes; needs OpenGL but no display")
  private Optional<Path> image = Optional.empty();

  @Option(
      names = "--view",
      paramLabel = "plan|front|side|iso",
      description = "from where the picture is seen (default: iso)")
  private View view = View.ISO;

  @Mixin private PictureOptions picture = new PictureOptions();

  @Option(
      names = "--trace",
      description = {
        "tells block by block, in order of execution, what was understood: words, expressions,"
            + " jumps, changes of the state, moves and findings"
      })
  private boolean trace;

  @Option(
      names = "--from",
      paramLabel = "LINE",
      description = "first line of the program that is traced")
  private Optional<Integer> from = Optional.empty();

  @Option(
      names = "--to",
      paramLabel = "LINE",
      description = "last line of the program that is traced")
  private Optional<Integer> to = Optional.empty();

  MotionCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws Exception {
    PictureOptions.Pixels pixels = picture.ofView();
    if (image.isPresent()) {
      OutputFile.check(image.get(), program.inputs());
    }
    TracedLines lines = TracedLines.of(trace, from, to);
    if (trace) {
      return trace(lines, pixels);
    }
    ProgramOptions.Job job = program.run();
    if (image.isPresent()) {
      OutputFile.check(image.get(), job.subprogramFiles());
      draw(job, image.get(), pixels);
    }
    Interpretation done = job.interpretation();
    if (output.json()) {
      MotionJson.write(done, terminal.outBytes());
    } else {
      MotionText.write(job, output.style(), image, terminal.outWriter());
    }
    return hasErrors(done.findings()) ? ExitStatus.ANSWER_NO : ExitStatus.OK;
  }

  private int trace(TracedLines lines, PictureOptions.Pixels pixels) throws Exception {
    // Rules look at the whole program, so it is executed once for them and once for the trace.
    ProgramOptions.Job job = program.run();
    BlockNotes notes = new BlockNotes(job.interpretation().findings(), job::lines);
    String name = program.file().toString();
    if (output.json()) {
      try (TraceJson json = new TraceJson(lines, notes, name, terminal.outBytes())) {
        job.execute(json);
        json.finish(job.interpretation());
      }
    } else {
      TraceText text = new TraceText(lines, notes, name, output.style(), terminal.outWriter());
      job.execute(text);
      text.finish(job.interpretation());
    }
    if (image.isPresent()) {
      OutputFile.check(image.get(), job.subprogramFiles());
      draw(job, image.get(), pixels);
    }
    return hasErrors(job.interpretation().findings()) ? ExitStatus.ANSWER_NO : ExitStatus.OK;
  }

  static boolean hasErrors(List<Finding> findings) {
    return findings.stream().anyMatch(f -> f.severity() == Severity.ERROR);
  }

  private void draw(ProgramOptions.Job job, Path file, PictureOptions.Pixels pixels)
      throws RequestException {
    Scene scene =
        new Scene(job.interpretation().tape(), job.sheet(), title(job))
            .withMajorDiameters(job.majorDiameters());
    try {
      OutputFile.write(
          file, MotionPicture.png(scene, view, pixels.width(), pixels.height(), picture.theme()));
    } catch (NoOpenGlException e) {
      throw PictureOptions.refused(e);
    }
  }

  /** Title of the sheet or name of the program; a program that stops is marked as incomplete. */
  private String title(ProgramOptions.Job job) {
    String name =
        job.sheet().title().isEmpty()
            ? String.valueOf(program.file().getFileName())
            : job.sheet().title();
    return job.interpretation()
        .stoppedAt()
        .map(stop -> name + " (incomplete: stopped at line " + stop.line() + ")")
        .orElse(name);
  }
}
