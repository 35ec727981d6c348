package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.window.MotionWindow;
import flankfit.window.NoDisplayException;
import flankfit.window.ProgramSource;
import java.util.concurrent.Callable;
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
    WindowProgram source = new WindowProgram(program);
    ProgramSource.Text text = source.first();
    try {
      MotionWindow.open(source, text, Cautions.LINES)
          .ifPresent(sentence -> terminal.aside("flankfit: " + sentence + "\n"));
    } catch (NoDisplayException e) {
      throw RequestException.failed(
          Finding.of(Code.RQ06, Place.file(""), e.getMessage(), e.why(), e.fix()));
    }
    return ExitStatus.OK;
  }
}
