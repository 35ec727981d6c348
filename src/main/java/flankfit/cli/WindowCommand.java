package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.window.MotionWindow;
import flankfit.window.NoDisplayException;
import flankfit.window.ProgramSource;
import flankfit.window.Programs;
import flankfit.window.WindowKeys;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
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
  private final Terminal terminal;

  @Parameters(paramLabel = "PROGRAM", arity = "0..1", description = "the milling program")
  private Optional<Path> program = Optional.empty();

  @Option(
      names = "--setup",
      paramLabel = "FILE",
      description = "the setup sheet; without it, PROGRAM's .setup.toml is used when it exists")
  private Optional<Path> setup = Optional.empty();

  WindowCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws Exception {
    Optional<WindowProgram> source =
        program.map(file -> new WindowProgram(ProgramOptions.of(file, setup)));
    Optional<ProgramSource.Text> text = Optional.empty();
    if (source.isPresent()) {
      text = Optional.of(source.get().first());
    }
    Programs others = file -> new WindowProgram(ProgramOptions.of(file, Optional.empty()));
    try {
      MotionWindow.open(source.map(s -> s), text, others, Cautions.LINES)
          .ifPresent(sentence -> terminal.aside("flankfit: " + sentence + "\n"));
    } catch (NoDisplayException e) {
      throw RequestException.failed(
          Finding.of(Code.RQ06, Place.file(""), e.getMessage(), e.why(), e.fix()));
    }
    return ExitStatus.OK;
  }

  /** What the help says last: an example, then all keys. */
  static String footer() {
    return "\nExample: flankfit window sample-programs/filter-housing-m20.nc\n\nKeys:\n"
        + String.join("\n", WindowKeys.lines())
        + "\n";
  }
}
