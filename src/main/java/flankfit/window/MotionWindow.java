package flankfit.window;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The window with motion, program and state. */
public final class MotionWindow {
  private MotionWindow() {}

  /**
   * Opens the window and returns when the user closes it. The program is executed, checked and
   * gauged meanwhile. Call it on the first thread of the process: some platforms allow no other.
   *
   * @param source the program
   * @param text what was read of it already
   * @param cautions sentences that every output carries
   * @return why size, view and paper could not be kept for the next time; empty when they were
   * @throws NoDisplayException if there is no display or no OpenGL 3.3 on it
   */
  public static Optional<String> open(
      ProgramSource source, ProgramSource.Text text, List<String> cautions)
      throws NoDisplayException {
    Path file =
        Preferences.file(
            System.getenv(), System.getProperty("os.name"), System.getProperty("user.home"));
    try (Loader loader = new Loader(source, text.setup(), cautions)) {
      loader.begin(Optional.of(text));
      return open(loader, file, (state, loop) -> {});
    }
  }

  static Optional<String> open(WindowInput input, Path preferencesFile, WindowObserver observer)
      throws NoDisplayException {
    return open(Loads.fixed(input), preferencesFile, observer);
  }

  static Optional<String> open(Loads loads, Path preferencesFile, WindowObserver observer)
      throws NoDisplayException {
    Preferences preferences = Preferences.read(preferencesFile);
    ViewState state = new ViewState(loads, preferences);
    Preferences last;
    try (WindowLoop loop = new WindowLoop(state, preferences)) {
      loads.wakes(WindowLoop::wake);
      loop.run(observer);
      last = loop.preferences();
      loads.wakes(() -> {});
    } catch (LinkageError e) {
      throw new NoDisplayException("a native library is missing: " + e.getMessage());
    }
    return last.equals(preferences) ? Optional.empty() : remember(last, preferencesFile);
  }

  private static Optional<String> remember(Preferences last, Path file) {
    try {
      last.write(file);
      return Optional.empty();
    } catch (IOException e) {
      return Optional.of("the window's settings cannot be kept in " + file + ": " + e);
    }
  }
}
