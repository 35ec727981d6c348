package flankfit.window;

import flankfit.setup.SetupSheet;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The window with its sheets, the program and the state. */
public final class MotionWindow {
  private MotionWindow() {}

  /**
   * Opens the window and returns when the user closes it. The program is executed, checked and
   * gauged meanwhile. Call it on the first thread of the process: some platforms allow no other.
   *
   * @param source the program; empty for none yet
   * @param text what was read of it already; empty where that is to be done
   * @param programs makes programs of files that are opened in the window
   * @param cautions sentences that every output carries
   * @return why something could not be kept for the next time; empty when all was
   * @throws NoDisplayException if there is no display or no OpenGL 3.3 on it
   */
  public static Optional<String> open(
      Optional<ProgramSource> source,
      Optional<ProgramSource.Text> text,
      Programs programs,
      List<String> cautions)
      throws NoDisplayException {
    String home = System.getProperty("user.home");
    Path file = Preferences.file(System.getenv(), System.getProperty("os.name"), home);
    Path folder = file.toAbsolutePath().getParent();
    SetupSheet sheet = text.map(ProgramSource.Text::setup).orElse(SetupSheet.empty());
    Samples samples = new Samples(folder.resolve("samples"));
    try (Loader loader =
            new Loader(source, sheet, cautions, Optional.of(programs), Optional.of(samples));
        Watch watch = new Watch(loader::files, loader::begin);
        Habits habits = Habits.in(folder)) {
      loader.begin(text);
      watch.start();
      Places places = new Places(file, WindowFiles.folder(home));
      Optional<String> complaint = open(loader, places, habits, (state, loop) -> {});
      return complaint.isPresent() ? complaint : habits.complaint();
    }
  }

  /**
   * Where things are kept.
   *
   * @param preferences file of what the window remembers
   * @param pictures folder of pictures
   */
  record Places(Path preferences, Path pictures) {}

  static Optional<String> open(WindowInput input, Path preferencesFile, WindowObserver observer)
      throws NoDisplayException {
    return open(Loads.fixed(input), preferencesFile, observer);
  }

  static Optional<String> open(Loads loads, Path preferencesFile, WindowObserver observer)
      throws NoDisplayException {
    Path folder = preferencesFile.toAbsolutePath().getParent();
    return open(loads, new Places(preferencesFile, folder), Habits.none(), observer);
  }

  static Optional<String> open(Loads loads, Places places, Habits habits, WindowObserver observer)
      throws NoDisplayException {
    Preferences preferences = Preferences.read(places.preferences());
    Preferences last = show(loads, preferences, places.pictures(), habits, observer);
    return last.equals(preferences) ? Optional.empty() : remember(last, places.preferences());
  }

  /** Shows a program in a window of which nothing is remembered. */
  static void show(Loads loads, Preferences preferences, WindowObserver observer)
      throws NoDisplayException {
    Path home = WindowFiles.folder(System.getProperty("user.home"));
    show(loads, preferences, home, Habits.none(), observer);
  }

  private static Preferences show(
      Loads loads, Preferences preferences, Path pictures, Habits habits, WindowObserver observer)
      throws NoDisplayException {
    ViewState state = new ViewState(loads, preferences, habits);
    Preferences last;
    try (WindowLoop loop = new WindowLoop(state, preferences, pictures)) {
      loads.wakes(WindowLoop::wake);
      loop.run(observer);
      last = loop.preferences();
      loads.wakes(() -> {});
    } catch (LinkageError e) {
      throw new NoDisplayException("a native library is missing: " + e.getMessage());
    }
    return last;
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
