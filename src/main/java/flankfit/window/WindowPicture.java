package flankfit.window;

import flankfit.picture.Png;
import flankfit.picture.Theme;
import flankfit.picture.View;
import flankfit.setup.SetupSheet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/** A picture of the window, taken when everything on one of its sheets is worked out. */
public final class WindowPicture {
  /** Frames in a row that must be alike complete, for work is asked for while drawing. */
  private static final int CALM = 4;

  /** Time between two looks (ms): whoever waits for a picture wants the processor for the work. */
  private static final long BETWEEN = 50;

  private static final long PATIENCE = 300_000_000_000L;

  private final Wanted wanted;
  private final long end = System.nanoTime() + PATIENCE;
  private boolean went;
  private int pressed;
  private int calm;
  private Optional<byte[]> png = Optional.empty();
  private String failure = "the window was closed before its picture was taken";

  /** A picture that cannot be taken though there is a display. */
  public static final class NoPictureException extends Exception {
    private static final long serialVersionUID = 1L;

    NoPictureException(String why) {
      super(why);
    }
  }

  /**
   * What is wanted.
   *
   * @param sheet one of {@link #sheets}
   * @param line line of the program that the position is at; 0 for its beginning
   * @param width width of the window (screen units)
   * @param height height of the window (screen units)
   * @param dark whether on dark paper
   * @param press keys that are pressed before, as the table of keys names them
   */
  public record Wanted(
      String sheet, int line, int width, int height, boolean dark, List<String> press) {
    public Wanted {
      Objects.requireNonNull(sheet, "sheet");
      press = List.copyOf(press);
      name(sheet);
    }
  }

  private WindowPicture(Wanted wanted) {
    this.wanted = wanted;
  }

  /** Names of the sheets there are, in small letters. */
  public static List<String> sheets() {
    return WindowKeys.SHEETS.stream().map(WindowPicture::word).toList();
  }

  private static String word(SheetName sheet) {
    return sheet.word().toLowerCase(Locale.ROOT);
  }

  private static SheetName name(String word) {
    return WindowKeys.SHEETS.stream()
        .filter(sheet -> word(sheet).equals(word))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("sheet must be one of " + sheets()));
  }

  /**
   * Opens a window on a program, waits until its sheet is complete, and closes it. Nothing is
   * remembered of it. Call it on the first thread of the process.
   *
   * @param source the program
   * @param text what was read of it already
   * @param cautions sentences that every output carries
   * @return the picture as PNG
   * @throws NoDisplayException if there is no display or no OpenGL 3.3 on it
   * @throws NoPictureException if the program cannot be shown, or the window is closed by hand
   */
  public static byte[] png(
      ProgramSource source, ProgramSource.Text text, List<String> cautions, Wanted wanted)
      throws NoDisplayException, NoPictureException {
    Preferences preferences =
        new Preferences(
            wanted.width(),
            wanted.height(),
            View.ISO,
            wanted.dark() ? Theme.DARK : Theme.LIGHT,
            Optional.empty(),
            1,
            false,
            name(wanted.sheet()),
            false,
            false,
            1);
    WindowPicture picture = new WindowPicture(wanted);
    SetupSheet setup = text.setup();
    try (Loader loader = new Loader(source, setup, cautions)) {
      loader.begin(Optional.of(text));
      MotionWindow.show(loader, preferences, picture::look);
    }
    return picture.png.orElseThrow(() -> new NoPictureException(picture.failure));
  }

  private void look(ViewState state, WindowLoop loop) {
    loop.again();
    loop.withoutPointer();
    Stage stage = state.loaded().stage();
    if (stage == Stage.FAILED || System.nanoTime() > end) {
      failure = stage == Stage.FAILED ? state.loaded().told() : "the sheet is not complete in time";
      state.quit();
      return;
    }
    boolean complete = !stage.isGoing() && !loop.isUnfinished() && isComplete(state);
    if (complete && !went) {
      went = true;
      complete = false;
      if (wanted.line() > 0) {
        state.toLine(wanted.line());
      }
    } else if (complete && pressed < wanted.press().size()) {
      press(state, wanted.press().get(pressed));
      pressed++;
      complete = false;
    }
    calm = complete ? calm + 1 : 0;
    if (calm >= CALM) {
      png = Optional.of(Png.encodeSmall(loop.pixels(), loop.pixelWidth(), loop.pixelHeight()));
      state.quit();
      return;
    }
    rest();
  }

  private void press(ViewState state, String key) {
    Optional<Action> action = WindowKeys.actions().of(key, state);
    if (action.isEmpty()) {
      failure = "key " + key + " does nothing on the " + state.sheet().word() + " sheet now";
      state.quit();
    }
    action.ifPresent(a -> a.does().accept(state));
  }

  private static boolean isComplete(ViewState state) {
    return switch (state.sheet()) {
      case METAL -> {
        MetalBench bench = state.metal().bench();
        boolean shown = bench.isCurrent() && bench.isFine() && !bench.isWorking();
        yield bench.subject().isEmpty() || (shown && bench.touching().isPresent());
      }
      case GAUGE -> {
        Bench bench = state.gauge().bench();
        boolean reckons = bench.isReckoning() || bench.isGauging();
        yield bench.base().isEmpty() || (bench.shown().isCurrent() && !reckons);
      }
      case LESSON -> state.position() < 0 || state.lesson().told().isPresent();
      case MOTION -> true;
    };
  }

  private static void rest() {
    try {
      Thread.sleep(BETWEEN);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
