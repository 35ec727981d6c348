package flankfit.window;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** The window with motion, program and state. */
public final class MotionWindow {
  private MotionWindow() {}

  /**
   * Opens the window and returns when the user closes it. Call it on the first thread of the
   * process: some platforms allow no other.
   *
   * @param input what is shown
   * @return why size, view and paper could not be kept for the next time; empty when they were
   * @throws NoDisplayException if there is no display or no OpenGL 3.3 on it
   */
  public static Optional<String> open(WindowInput input) throws NoDisplayException {
    Path file =
        Preferences.file(
            System.getenv(), System.getProperty("os.name"), System.getProperty("user.home"));
    return open(input, file, (state, loop) -> {});
  }

  static Optional<String> open(WindowInput input, Path preferencesFile, WindowObserver observer)
      throws NoDisplayException {
    Preferences preferences = Preferences.read(preferencesFile);
    ViewState state = new ViewState(input, preferences);
    Preferences last;
    try (WindowLoop loop = new WindowLoop(state, preferences)) {
      loop.run(observer);
      last = loop.preferences();
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
