package flankfit.cli;

import flankfit.control.Interpretation;
import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.lesson.Rewriting;
import flankfit.lesson.Step;
import flankfit.lesson.Steps;
import flankfit.motion.ModalState.Distance;
import flankfit.paper.Pen;
import flankfit.picture.NoOpenGlException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How it is said: the same motion in absolute and in incremental words. */
@Command(
    name = "lesson",
    description = {
      "Tells block by block what a program says: in which mode, where that leads, how the other mode"
          + " would say it, and in plain words. Writes it in the other mode, leaves a mode word out,"
          + " or makes exercises and a handout of it."
    },
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Examples:",
      "  flankfit lesson sample-programs/filter-housing-m20.nc --from 12 --to 19",
      "  flankfit lesson sample-programs/filter-housing-m20.nc \\",
      "    --as absolute --out abs.nc",
      "  flankfit lesson sample-programs/filter-housing-m20.nc --forget 10",
      "  flankfit lesson sample-programs/filter-housing-m20.nc \\",
      "    --quiz 8 --answers key.txt",
      "  flankfit lesson sample-programs/filter-housing-m20.nc --animate steps.gif"
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

  @Option(
      names = "--forget",
      paramLabel = "LINE[:WORD]",
      description = "what happens without the mode word of that line, such as 24 or 4:G40")
  private Optional<String> forget = Optional.empty();

  @Option(
      names = "--image",
      paramLabel = "FILE.png|svg",
      description = "draws what --forget does beside the path as written")
  private Optional<Path> image = Optional.empty();

  @Mixin private PictureOptions picture = new PictureOptions();

  @Option(
      names = "--quiz",
      paramLabel = "N",
      description = "asks N questions about the program; the answers stand at the end")
  private Optional<Integer> quiz = Optional.empty();

  @Option(
      names = "--seed",
      paramLabel = "S",
      description = "which questions --quiz chooses (default: 1)")
  private Optional<Long> seed = Optional.empty();

  @Option(
      names = "--answers",
      paramLabel = "FILE",
      description = "writes the answers of --quiz there instead")
  private Optional<Path> answers = Optional.empty();

  @Option(
      names = "--handout",
      paramLabel = "FILE.html|pdf",
      description = "writes the steps with drawings, to print: as one HTML file or as a PDF")
  private Optional<Path> handout = Optional.empty();

  @Mixin private PaperOption paper = new PaperOption();

  @Option(
      names = "--animate",
      paramLabel = "FILE.gif",
      description =
          "draws the steps that move one after the other, as a moving picture for a slide")
  private Optional<Path> animate = Optional.empty();

  LessonCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws Exception {
    check();
    if (mode.isPresent()) {
      return rewrite(mode.get());
    }
    TracedLines lines = TracedLines.of(true, from, to);
    ProgramOptions.Job job = program.run();
    for (Path file : outputs().toList()) {
      OutputFile.check(file, job.subprogramFiles());
    }
    if (forget.isPresent()) {
      forget(job, forget.get());
    } else if (quiz.isPresent()) {
      quiz(job, lines);
    } else if (handout.isPresent()) {
      handOut(job, lines, handout.get());
    } else if (animate.isPresent()) {
      animate(job, lines, animate.get());
    } else {
      tell(job, lines);
    }
    return MotionCommand.hasErrors(job.interpretation().findings())
        ? ExitStatus.ANSWER_NO
        : ExitStatus.OK;
  }

  private Stream<Path> outputs() {
    return Stream.of(out, image, answers, handout, animate).flatMap(Optional::stream);
  }

  /** Refuses what does not go together, before any work is done. */
  private void check() throws RequestException {
    long works =
        Stream.of(mode, forget, quiz, handout, animate).filter(Optional::isPresent).count();
    require(
        works < 2,
        "--as, --forget, --quiz, --handout and --animate exclude each other",
        "ask for one of them");
    paper.check("handout", handout);
    require(
        animate.isEmpty() || hasEnding(animate.get(), ".gif"),
        "moving picture " + animate.map(Path::toString).orElse("") + " has no ending .gif",
        "name it .gif");
    require(mode.isPresent() == out.isPresent(), "--as and --out belong together", "add the other");
    require(
        forget.isPresent() || image.isEmpty(),
        "--image draws what --forget does",
        "add --forget LINE, or see flankfit motion --image");
    require(
        quiz.isPresent() || (seed.isEmpty() && answers.isEmpty()),
        "--seed and --answers belong to --quiz",
        "add --quiz N");
    require(
        answers.isEmpty() || !output.json(),
        "--answers with --format json",
        "leave it out: each answer stands beside its question in the JSON");
    boolean ranged = from.isPresent() || to.isPresent();
    require(
        !ranged || (mode.isEmpty() && forget.isEmpty()),
        "--from and --to limit what is told or asked, not what is executed",
        "leave them out");
    require(
        image.isEmpty() || isPicture(image.get()),
        "picture " + image.map(Path::toString).orElse("") + " has neither ending .png nor .svg",
        "name it .png or .svg");
    picture.ofDiagram();
    for (Path file : outputs().toList()) {
      OutputFile.check(file, program.inputs());
    }
  }

  private static boolean isPicture(Path file) {
    return hasEnding(file, ".png") || hasEnding(file, ".svg");
  }

  private static boolean hasEnding(Path file, String ending) {
    return file.toString().toLowerCase(Locale.ROOT).endsWith(ending);
  }

  private static void require(boolean holds, String what, String fix) throws RequestException {
    if (!holds) {
      throw RequestException.wrong(Finding.of(Code.RQ04, Place.file(""), what, "", fix));
    }
  }

  private int rewrite(Distance wanted) throws Exception {
    LessonRewrite work = new LessonRewrite(program.read(), wanted, out.orElseThrow());
    Rewriting.Done done = work.run();
    if (output.json()) {
      work.writeJson(done, terminal.outBytes());
    } else {
      work.write(done, terminal.outWriter());
    }
    return ExitStatus.OK;
  }

  private void forget(ProgramOptions.Job job, String word) throws Exception {
    LessonForget accident = LessonForget.of(job, word);
    if (image.isPresent()) {
      accident.draw(image.get(), picture);
    }
    if (output.json()) {
      accident.writeJson(terminal.outBytes());
    } else {
      accident.write(image, output.style(), terminal.outWriter());
    }
  }

  private void quiz(ProgramOptions.Job job, TracedLines lines) throws Exception {
    LessonQuiz questions =
        LessonQuiz.of(
            job.interpretation().file(),
            steps(job, lines).all(),
            quiz.orElseThrow(),
            seed.orElse(1L));
    errors(job);
    if (output.json()) {
      questions.writeJson(terminal.outBytes());
    } else {
      questions.write(answers, terminal.outWriter());
    }
  }

  /** A program with errors is asked about as far as it came; what is wrong goes aside. */
  private void errors(ProgramOptions.Job job) {
    List<Finding> errors = LessonText.errors(job.interpretation());
    if (!errors.isEmpty()) {
      StringBuilder text = new StringBuilder();
      new FindingText(Style.plain()).full(errors, job::lines, text);
      terminal.aside(text.toString());
    }
  }

  private void handOut(ProgramOptions.Job job, TracedLines lines, Path file) throws Exception {
    require(!output.json(), "--handout with --format json", "ask for one of them");
    errors(job);
    Steps steps = steps(job, lines);
    String title =
        job.sheet().title().isEmpty()
            ? String.valueOf(program.file().getFileName())
            : job.sheet().title() + " (" + program.file().getFileName() + ")";
    Pen pen = paper.pen(file, title, ProgramHash.footer(job));
    OutputFile.write(file, LessonHandout.of(steps, job.interpretation(), title, pen));
    terminal.result("handout " + file + ": " + Figures.count(steps.all().size(), "step") + "\n");
  }

  private void animate(ProgramOptions.Job job, TracedLines lines, Path file) throws Exception {
    require(!output.json(), "--animate with --format json", "ask for one of them");
    List<Step> moving = steps(job, lines).all().stream().filter(LessonFilm::shows).toList();
    require(!moving.isEmpty(), "no step moves, so there is nothing to animate", "name other lines");
    require(
        moving.size() <= LessonFilm.MOST,
        moving.size() + " steps move, more than the " + LessonFilm.MOST + " of a moving picture",
        "name fewer lines with --from and --to");
    errors(job);
    try {
      OutputFile.write(file, LessonFilm.of(job.interpretation().tape(), moving));
    } catch (NoOpenGlException e) {
      throw PictureOptions.refused(e);
    }
    terminal.result("animation " + file + ": " + Figures.count(moving.size(), "step") + "\n");
  }

  private void tell(ProgramOptions.Job job, TracedLines lines) throws Exception {
    Steps steps = steps(job, lines);
    Interpretation done = job.interpretation();
    if (output.json()) {
      LessonJson.write(steps, done, terminal.outBytes());
    } else {
      LessonText.write(steps, done, output.style(), terminal.outWriter());
    }
  }

  private static Steps steps(ProgramOptions.Job job, TracedLines lines) {
    String name = job.interpretation().file();
    Steps steps = new Steps(job.sheet(), block -> lines.shows(block, name));
    job.execute(steps);
    return steps;
  }
}
