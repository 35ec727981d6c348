package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.picture.Theme;
import flankfit.window.MotionWindow;
import flankfit.window.NoDisplayException;
import flankfit.window.ProgramSource;
import flankfit.window.Programs;
import flankfit.window.WindowKeys;
import flankfit.window.WindowPicture;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The scene to turn and zoom, with the listing beside it. */
@Command(
    name = "window",
    description = {
      "Opens a window: the scene, the listing beside it, block by block.",
      "Without PROGRAM it begins with samples and programs opened before."
    },
    mixinStandardHelpOptions = true)
final class WindowCommand implements Callable<Integer> {
  private static final int LEAST_WIDTH = 640;
  private static final int LEAST_HEIGHT = 480;

  private final Terminal terminal;

  @Parameters(paramLabel = "PROGRAM", arity = "0..1", description = "the milling program")
  private Optional<Path> program = Optional.empty();

  @Option(
      names = "--setup",
      paramLabel = "FILE",
      description = "the setup sheet; without it, PROGRAM's .setup.toml is used when it exists")
  private Optional<Path> setup = Optional.empty();

  @Option(
      names = "--screenshot",
      paramLabel = "FILE.png",
      description = {
        "opens the window, waits until all on one of its sheets is worked out, writes a picture of"
            + " it and closes it"
      })
  private Optional<Path> screenshot = Optional.empty();

  @Option(
      names = "--sheet",
      paramLabel = "NAME",
      description = "sheet of --screenshot: motion (default), metal, gauge or lesson")
  private Optional<String> sheet = Optional.empty();

  @Option(
      names = "--line",
      paramLabel = "N",
      description = "line of the program that --screenshot stands at")
  private Optional<Integer> line = Optional.empty();

  @Option(
      names = "--press",
      paramLabel = "KEYS",
      split = ",",
      description = "keys that are pressed before --screenshot, as named below: --press y,d")
  private List<String> press = List.of();

  @Mixin private PictureOptions picture = new PictureOptions();

  WindowCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws Exception {
    check();
    Optional<WindowProgram> source =
        program.map(file -> new WindowProgram(ProgramOptions.of(file, setup)));
    Optional<ProgramSource.Text> text = Optional.empty();
    if (source.isPresent()) {
      text = Optional.of(source.get().first());
    }
    if (screenshot.isPresent()) {
      terminal.result(take(source.orElseThrow(), text.orElseThrow(), screenshot.get()));
      return ExitStatus.OK;
    }
    Programs others = file -> new WindowProgram(ProgramOptions.of(file, Optional.empty()));
    try {
      MotionWindow.open(source.map(s -> s), text, others, Cautions.LINES)
          .ifPresent(sentence -> terminal.aside("flankfit: " + sentence + "\n"));
    } catch (NoDisplayException e) {
      throw refused(e);
    }
    return ExitStatus.OK;
  }

  private static RequestException refused(NoDisplayException e) {
    return RequestException.failed(
        Finding.of(Code.RQ06, Place.file(""), e.getMessage(), e.why(), e.fix()));
  }

  /** Refuses what does not go together, before any work is done. */
  private void check() throws RequestException {
    boolean alone = screenshot.isEmpty();
    require(
        !alone || (sheet.isEmpty() && line.isEmpty() && press.isEmpty() && picture.isDefault()),
        "--sheet, --line, --press, --size and --dark belong to --screenshot",
        "add --screenshot FILE.png, or leave them out");
    require(
        alone || program.isPresent(), "--screenshot without a program", "name the program first");
    require(
        alone || screenshot.get().toString().toLowerCase(Locale.ROOT).endsWith(".png"),
        "picture " + screenshot.map(Path::toString).orElse("") + " has no ending .png",
        "name it .png");
    require(
        WindowPicture.sheets().contains(sheet.orElse("motion")),
        "there is no sheet " + sheet.orElse(""),
        "write one of " + String.join(", ", WindowPicture.sheets()));
    require(line.orElse(1) > 0, "--line " + line.orElse(1) + " is no line", "lines count from 1");
    if (!alone) {
      OutputFile.check(screenshot.get(), program.get());
    }
  }

  private static void require(boolean holds, String what, String fix) throws RequestException {
    if (!holds) {
      throw RequestException.wrong(Finding.of(Code.RQ04, Place.file(""), what, "", fix));
    }
  }

  /** Writes the picture; gives what is said of it. */
  private String take(WindowProgram source, ProgramSource.Text text, Path file)
      throws RequestException {
    PictureOptions.Pixels size =
        picture.pixels(new PictureOptions.Pixels(1040, 660), LEAST_WIDTH, LEAST_HEIGHT);
    WindowPicture.Wanted wanted =
        new WindowPicture.Wanted(
            sheet.orElse("motion"),
            line.orElse(0),
            size.width(),
            size.height(),
            picture.theme() == Theme.DARK,
            press);
    try {
      OutputFile.write(file, WindowPicture.png(source, text, Cautions.LINES, wanted));
    } catch (NoDisplayException e) {
      throw refused(e);
    } catch (WindowPicture.NoPictureException e) {
      throw RequestException.failed(
          Finding.of(
              Code.RQ06,
              Place.file(""),
              "no picture of the window",
              e.getMessage(),
              "mend that, or open the window without --screenshot to see more"));
    }
    return "screenshot " + file + ": " + wanted.sheet() + " sheet\n";
  }

  /** What the help says last: an example, then all keys. */
  static String footer() {
    return "\nExample: flankfit window sample-programs/filter-housing-m20.nc\n\nKeys:\n"
        + String.join("\n", WindowKeys.lines())
        + "\n";
  }
}
