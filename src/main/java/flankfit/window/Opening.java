package flankfit.window;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Opens other programs: chosen, typed or dropped. */
final class Opening {
  private final Loads loads;
  private final Desk desk;

  Opening(Loads loads, Desk desk) {
    this.loads = loads;
    this.desk = desk;
  }

  /** Opens a program. */
  void open(Path file) {
    desk.welcome(false);
    loads.open(file);
  }

  /** Opens a sample program. */
  void open(Samples.Sample sample) {
    desk.welcome(false);
    loads.open(sample);
  }

  /** Opens a file whose name was typed; {@code ~} stands for the user's own folder. */
  void typed(String name) {
    try {
      String home = System.getProperty("user.home", "");
      open(Path.of(name.startsWith("~/") ? home + name.substring(1) : name));
    } catch (InvalidPathException e) {
      problem("that is no name of a file", name, e.getReason(), "type the file's whole path");
    }
  }

  /**
   * Opens what was dropped: the program among the files, the sheet beside it is found by itself.
   */
  void drop(List<Path> files) {
    Optional<Path> program =
        files.stream().filter(f -> !f.toString().endsWith(".toml")).findFirst();
    if (program.isPresent()) {
      open(program.get());
    } else if (!files.isEmpty()) {
      problem(
          "a setup sheet alone shows no motion",
          files.get(0).toString(),
          "a sheet is read with its program",
          "drop the program; its sheet NAME.setup.toml beside it is found by itself");
    }
  }

  private void problem(String what, String where, String why, String fix) {
    desk.problems(List.of(new Problem(what, where, why, fix)));
  }
}
