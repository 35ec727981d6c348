package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.metal.Metal;
import flankfit.metal.MetalOptions;
import flankfit.metal.TooFineException;
import flankfit.motion.Tape;
import flankfit.picture.View;
import flankfit.setup.Hole;
import flankfit.setup.SetupSheet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What the tool leaves: the stock cut by every move, its volume, what touches it, a picture. */
@Command(
    name = "metal",
    description = {
      "Cuts the stock as the program does: what is left, what each tool took away, what touches"
          + " metal that should not."
    },
    mixinStandardHelpOptions = true,
    footer = {
      "",
      "Example:",
      "  flankfit metal sample-programs/filter-housing-m20.nc \\",
      "    --image part.png --section y=0"
    })
final class MetalCommand implements Callable<Integer> {
  private static final long MEBIBYTE = 1L << 20;

  /** More than any machine has (MiB). */
  private static final long MOST_MEMORY = 1L << 20;

  private final Terminal terminal;

  @Mixin private ProgramOptions program = new ProgramOptions();
  @Mixin private OutputOptions output = new OutputOptions();

  @Option(
      names = "--image",
      paramLabel = "FILE.png",
      description = "draws the metal that is left; needs OpenGL but no display")
  private Optional<Path> image = Optional.empty();

  @Option(
      names = "--view",
      paramLabel = "plan|front|side|iso",
      description = "from where the picture is seen (default: iso)")
  private View view = View.ISO;

  @Option(
      names = "--section",
      paramLabel = "AXIS=PLACE",
      description = {
        "cuts the picture open at a plane, such as x=0, in the sheet's unit; what lies before it is"
            + " taken away"
      })
  private Optional<String> section = Optional.empty();

  @Option(
      names = "--close",
      paramLabel = "HOLE",
      description = "looks closely at a hole or boss of the sheet")
  private Optional<String> close = Optional.empty();

  @Option(names = "--by-tool", description = "gives what each tool made a colour of its own")
  private boolean byTool;

  @Mixin private PictureOptions picture = new PictureOptions();

  @Option(
      names = "--mesh",
      paramLabel = "FILE.stl|glb",
      description =
          "writes the surface as binary STL (mm) or glTF 2.0 (metres, Y up); several times")
  private List<Path> meshes = new ArrayList<>();

  @Option(
      names = "--to",
      paramLabel = "LINE",
      description = "the metal after the last move of this line of the program")
  private Optional<Integer> to = Optional.empty();

  @Option(
      names = "--cell",
      paramLabel = "SIZE",
      description = {
        "side of the finest cells, in the sheet's unit; without it the tools decide, within the"
            + " memory"
      })
  private Optional<Double> cell = Optional.empty();

  @Option(
      names = "--memory",
      paramLabel = "MIB",
      description = "memory that cells may take, in MiB (default: 512)")
  private long memory = 512;

  MetalCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws Exception {
    PictureOptions.Pixels pixels = picture.ofView();
    check(program.inputs());
    long bytes = bytes();
    ProgramOptions.Job job = program.run();
    check(job.subprogramFiles());
    SetupSheet sheet = job.sheet();
    if (sheet.stock().isEmpty()) {
      throw RequestException.wrong(
          Finding.of(
              Code.RQ04,
              Place.file(sheet.file()),
              "the setup sheet states no stock",
              "there is no metal to cut",
              "add [stock] with shape, size and zero to the sheet"));
    }
    MetalDrawing.Wish wish =
        new MetalDrawing.Wish(
            view, SectionOption.of(section, sheet.unit()), holeNamed(sheet), byTool);
    MetalAnswer answer = answer(job, sheet, bytes);
    List<Path> written = new ArrayList<>();
    if (image.isPresent() || !meshes.isEmpty()) {
      MetalDrawing drawing = new MetalDrawing(job, answer, title(job));
      for (Path file : meshes) {
        drawing.writeMesh(file);
        written.add(file);
      }
      if (image.isPresent()) {
        OutputFile.write(
            image.get(), drawing.png(wish, pixels.width(), pixels.height(), picture.theme()));
        written.add(image.get());
      }
    }
    if (output.json()) {
      MetalJson.write(job, answer, terminal.outBytes());
    } else {
      terminal.result(MetalText.of(job, answer, written, output.style()));
    }
    return MotionCommand.hasErrors(answer.findings()) ? ExitStatus.ANSWER_NO : ExitStatus.OK;
  }

  /** Refuses places and endings that cannot be written, before any work. */
  private void check(Path... inputs) throws RequestException {
    if (image.isPresent()) {
      OutputFile.check(image.get(), inputs);
    }
    for (Path file : meshes) {
      MetalDrawing.checkEnding(file);
      OutputFile.check(file, inputs);
    }
  }

  private Optional<Hole> holeNamed(SetupSheet sheet) throws RequestException {
    if (close.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(HoleNames.find(close.get(), sheet));
  }

  private long bytes() throws RequestException {
    if (memory < 1 || memory > MOST_MEMORY) {
      throw wrong(
          "--memory " + memory + " is out of range 1 to " + MOST_MEMORY + " MiB",
          "give what the machine has to spare, such as --memory 2000");
    }
    return memory * MEBIBYTE;
  }

  private MetalAnswer answer(ProgramOptions.Job job, SetupSheet sheet, long bytes)
      throws RequestException {
    Tape tape = job.interpretation().tape();
    MetalOptions options = MetalOptions.usual().withMemory(bytes);
    if (cell.isPresent()) {
      double side = sheet.unit().toMillimetres(cell.get());
      if (!(side > 0 && side < 1e6)) {
        throw wrong("--cell " + cell.get() + " is not a size", "write a length above 0");
      }
      options = options.withCell(side);
    }
    int moves = to.isPresent() ? movesTo(tape, to.get()) : tape.size();
    try (ProgressLine progress = new ProgressLine("cutting", terminal)) {
      Metal metal = Metal.of(tape, sheet, job.mesh(), options, progress);
      return MetalAnswer.of(metal, job, moves);
    } catch (TooFineException e) {
      throw RequestException.wrong(
          Finding.of(
              Code.RQ04,
              Place.file(""),
              e.getMessage(),
              "a cell's memory is that of its surface",
              "ask for coarser cells by --cell, or for more by --memory"));
    }
  }

  private static int movesTo(Tape tape, int line) throws RequestException {
    for (int move = tape.size() - 1; move >= 0; move--) {
      if (tape.line(move) == line) {
        return move + 1;
      }
    }
    throw wrong("line " + line + " moves nothing", "name a line with a move: --to 14");
  }

  private static RequestException wrong(String what, String fix) {
    return RequestException.wrong(Finding.of(Code.RQ04, Place.file(""), what, "", fix));
  }

  private String title(ProgramOptions.Job job) {
    String name =
        job.sheet().title().isEmpty()
            ? String.valueOf(program.file().getFileName())
            : job.sheet().title();
    return to.map(line -> name + ", after line " + line).orElse(name);
  }
}
