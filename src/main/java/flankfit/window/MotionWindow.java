package flankfit.window;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** The window with motion, program and state. */
public final class MotionWindow {
  private MotionWindow() {}

  /**
   * Opens the window and returns when the user closes it. Call it on the first thread of the
   * process: some platforms allow no other.
   *
   * @param input what is shown
   * @throws NoDisplayException if there is no display or no OpenGL 3.3 on it
   */
  public static void open(WindowInput input) throws NoDisplayException {
    Path file =
        Preferences.file(
            System.getenv(), System.getProperty("os.name"), System.getProperty("user.home"));
    open(input, file, (state, loop) -> {});
  }

  static void open(WindowInput input, Path preferencesFile, WindowObserver observer)
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
    if (!last.equals(preferences)) {
      remember(last, preferencesFile);
    }
  }

  private static void remember(Preferences last, Path file) {
    try {
      last.write(file);
    } catch (IOException e) {
      throw new UncheckedIOException("the window's settings cannot be kept in " + file, e);
    }
  }
}
