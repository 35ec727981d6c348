package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.picture.Theme;
import flankfit.picture.View;
import flankfit.unit.LengthUnit;
import imgui.ImGui;
import imgui.ImVec2;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.lwjgl.opengl.GL33C;

/** A real window under a real display, driven by key and pointer events of the display. */
class MotionWindowTest {
  private static final long PATIENCE = 20_000;

  @TempDir Path folder;
  private volatile Seen seen =
      new Seen(0, 0, Optional.empty(), Theme.LIGHT, LengthUnit.INCH, false, false, 0, 0);

  /** What the last frame showed. */
  private record Seen(
      long frames,
      int line,
      Optional<View> view,
      Theme theme,
      LengthUnit unit,
      boolean help,
      boolean explained,
      double scale,
      int complaint) {}

  @BeforeEach
  void needs_a_display_and_a_hand() {
    Xdotool.needed();
  }

  @Test
  @Timeout(value = 120, unit = TimeUnit.SECONDS)
  void keys_and_pointer_do_what_the_help_says() throws Exception {
    Path file = folder.resolve("window.properties");
    new Preferences(1000, 640, View.ISO, Theme.LIGHT, Optional.empty()).write(file);
    AtomicReference<ViewState> shown = new AtomicReference<>();
    CompletableFuture<Void> hand =
        CompletableFuture.runAsync(
            () -> {
              await("the first frame", s -> s.frames >= 3);
              Xdotool.focus();
              script();
            });
    // A window that waits for events draws no frame: it must be told from outside.
    CompletableFuture<Void> closed = hand.whenComplete((done, failure) -> shown.get().quit());
    MotionWindow.open(
        WindowSamples.thread(),
        file,
        (state, loop) -> {
          shown.set(state);
          seen =
              new Seen(
                  loop.frames(),
                  state.line(),
                  state.viewpoint().standing(),
                  state.theme(),
                  state.unit(),
                  state.help(),
                  state.explains(),
                  state.viewpoint().camera().millimetresPerPixel(),
                  GL33C.glGetError());
        });
    closed.get(10, TimeUnit.SECONDS);
    Preferences kept = Preferences.read(file);
    assertThat(kept.theme()).isEqualTo(Theme.DARK);
    assertThat(kept.view()).isEqualTo(View.SIDE);
    assertThat(seen.complaint).isZero();
  }

  @Test
  @Timeout(value = 60, unit = TimeUnit.SECONDS)
  void letters_are_the_bundled_ones_and_settings_that_cannot_be_kept_are_told() throws Exception {
    // Character ranges handed over as a Java array moved before the atlas was built: then every
    // letter was drawn as the same wrong one.
    Path folderInTheWay = folder.resolve("file");
    Files.writeString(folderInTheWay, "a file where a folder is needed");
    List<Float> widths = new ArrayList<>();
    Optional<String> complaint =
        MotionWindow.open(
            WindowSamples.thread(),
            folderInTheWay.resolve("window.properties"),
            (state, loop) -> {
              for (String text : List.of("iiii", "WWWW", "\u2212\u2212\u2212\u2212", "\u25CF")) {
                ImVec2 size = new ImVec2();
                ImGui.calcTextSize(size, text);
                widths.add(size.x);
              }
              state.otherTheme();
              state.quit();
            });
    assertThat(widths.get(1)).isGreaterThan(2 * widths.get(0));
    assertThat(widths.get(2)).isGreaterThan(widths.get(0)).isLessThan(widths.get(1));
    assertThat(widths.get(3)).isPositive();
    assertThat(complaint.orElse("")).contains("cannot be kept", "window.properties");
  }

  private void script() {
    press("Right", s -> s.line == 4);
    press("Right", s -> s.line == 6);
    press("Left", s -> s.line == 4);
    press("End", s -> s.line == 28);
    press("Home", s -> s.line == 3);
    press("1", s -> s.view.equals(Optional.of(View.PLAN)));
    press("2", s -> s.view.equals(Optional.of(View.FRONT)));
    press("3", s -> s.view.equals(Optional.of(View.SIDE)));
    press("t", s -> s.theme == Theme.DARK);
    press("u", s -> s.unit == LengthUnit.INCH);
    press("u", s -> s.unit == LengthUnit.MILLIMETRE);
    press("b", s -> s.explained);
    press("b", s -> !s.explained);
    press("question", s -> s.help);
    press("Escape", s -> !s.help);
    double scale = seen.scale;
    Xdotool.run("mousemove", "300", "300");
    Xdotool.run("click", "4");
    await("a finer scale after the wheel", s -> s.scale < scale);
    Xdotool.run("mousedown", "1");
    Xdotool.run("mousemove", "340", "310");
    Xdotool.run("mouseup", "1");
    await("a turned eye after a drag", s -> s.view.isEmpty());
    Xdotool.pause(300); // a release and the next press in one frame would be one long press
    Xdotool.run("mousemove", "760", "200");
    int before = seen.line;
    Xdotool.run("click", "1");
    await("another line after a click in the program", s -> s.line != before);
    long frames = seen.frames;
    Xdotool.pause(1500); // two of the longest waits of the loop
    assertThat(seen.frames - frames).as("frames drawn while nothing happens").isLessThan(8);
    Xdotool.run("key", "q");
  }

  private void press(String key, Predicate<Seen> then) {
    Xdotool.run("key", key);
    await("what the key " + key + " does", then);
  }

  private void await(String what, Predicate<Seen> condition) {
    long end = System.nanoTime() + PATIENCE * 1_000_000;
    while (!condition.test(seen)) {
      if (System.nanoTime() > end) {
        throw new AssertionError("waited in vain for " + what + "; last seen: " + seen);
      }
      Xdotool.pause(10);
    }
  }
}
