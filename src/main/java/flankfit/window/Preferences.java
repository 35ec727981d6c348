package flankfit.window;

import flankfit.picture.Theme;
import flankfit.picture.View;
import flankfit.unit.LengthUnit;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.function.Function;

/**
 * What the window remembers.
 *
 * @param width width of the window (screen units)
 * @param height height of the window (screen units)
 * @param view view at the start
 * @param theme paper
 * @param unit unit of lengths; empty for the sheet's own
 * @param textSize size of letters against the display's own (1)
 * @param still whether the cutter goes block by block
 * @param sheet sheet at the start
 * @param wall whether a wall is shown unrolled at the start
 * @param explains whether the block is explained
 * @param times how many seconds of the machine a second of playing shows (1)
 */
record Preferences(
    int width,
    int height,
    View view,
    Theme theme,
    Optional<LengthUnit> unit,
    double textSize,
    boolean still,
    SheetName sheet,
    boolean wall,
    boolean explains,
    int times) {
  static final int LEAST_WIDTH = 640;
  static final int LEAST_HEIGHT = 480;
  private static final int MOST = 16384;

  private static final String[] KEYS = {
    "width",
    "height",
    "view",
    "theme",
    "unit",
    "text-size",
    "still",
    "sheet",
    "wall",
    "explains",
    "times"
  };

  /** The same with the rest as in a first window. */
  Preferences(int width, int height, View view, Theme theme, Optional<LengthUnit> unit) {
    this(width, height, view, theme, unit, 1, false, SheetName.MOTION, false, false, 1);
  }

  /** What a first window has. */
  static Preferences first() {
    return new Preferences(1440, 900, View.ISO, Theme.LIGHT, Optional.empty());
  }

  /** The file on this platform: under the user's folder for settings. */
  static Path file(Map<String, String> environment, String osName, String home) {
    String os = osName.toLowerCase(Locale.ROOT);
    String appData = environment.getOrDefault("APPDATA", "");
    String xdg = environment.getOrDefault("XDG_CONFIG_HOME", "");
    Path folder;
    if (os.contains("windows") && !appData.isEmpty()) {
      folder = Path.of(appData);
    } else if (os.contains("mac")) {
      folder = Path.of(home, "Library", "Application Support");
    } else if (!xdg.isEmpty()) {
      folder = Path.of(xdg);
    } else {
      folder = Path.of(home, ".config");
    }
    return folder.resolve("flankfit").resolve("window.properties");
  }

  /** Reads a file; whatever is missing or broken in it is as in a first window. */
  static Preferences read(Path file) {
    Properties kept = new Properties();
    if (Files.isRegularFile(file)) {
      try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
        kept.load(in);
      } catch (IOException | IllegalArgumentException e) {
        kept = new Properties(); // a broken file counts as none: it holds nothing but habits
      }
    }
    Preferences first = first();
    return new Preferences(
        number(kept, "width", LEAST_WIDTH, first.width),
        number(kept, "height", LEAST_HEIGHT, first.height),
        word(kept, "view", View.values(), View::word).orElse(first.view),
        word(kept, "theme", Theme.values(), Theme::word).orElse(first.theme),
        word(kept, "unit", LengthUnit.values(), LengthUnit::symbol),
        number(kept, "text-size", 50, 100) / 100.0,
        is(kept, "still"),
        word(kept, "sheet", SheetName.values(), SheetName::word).orElse(first.sheet),
        is(kept, "wall"),
        is(kept, "explains"),
        number(kept, "times", 1, 1));
  }

  private static boolean is(Properties kept, String key) {
    return kept.getProperty(key, "").strip().equals("yes");
  }

  private static int number(Properties kept, String key, int least, int otherwise) {
    String text = kept.getProperty(key, "").strip();
    if (!text.matches("\\d{1,5}")) {
      return otherwise;
    }
    int value = Integer.parseInt(text);
    return value >= least && value <= MOST ? value : otherwise;
  }

  private static <T> Optional<T> word(
      Properties kept, String key, T[] values, Function<T, String> word) {
    String text = kept.getProperty(key, "").strip();
    return Arrays.stream(values).filter(v -> word.apply(v).equals(text)).findFirst();
  }

  /**
   * Writes a file beside the old one and moves it there.
   *
   * @throws IOException if the folder cannot be written
   */
  void write(Path file) throws IOException {
    Properties kept = new Properties();
    kept.setProperty("width", Integer.toString(width));
    kept.setProperty("height", Integer.toString(height));
    kept.setProperty("view", view.word());
    kept.setProperty("theme", theme.word());
    unit.ifPresent(u -> kept.setProperty("unit", u.symbol()));
    kept.setProperty("text-size", Long.toString(Math.round(textSize * 100)));
    kept.setProperty("still", still ? "yes" : "no");
    kept.setProperty("sheet", sheet.word());
    kept.setProperty("wall", wall ? "yes" : "no");
    kept.setProperty("explains", explains ? "yes" : "no");
    kept.setProperty("times", Integer.toString(times));
    Path folder = file.toAbsolutePath().getParent();
    Files.createDirectories(folder);
    Path beside = Files.createTempFile(folder, "window", ".new");
    try (Writer out = Files.newBufferedWriter(beside, StandardCharsets.UTF_8)) {
      for (String key : KEYS) {
        if (kept.containsKey(key)) {
          out.write(key + " = " + kept.getProperty(key) + "\n");
        }
      }
    }
    Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
  }
}
