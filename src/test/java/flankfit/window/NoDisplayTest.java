package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NoDisplayTest {
  @TempDir Path folder;

  @Test
  void without_a_display_it_says_what_why_and_how_to_mend() {
    boolean none =
        System.getenv("DISPLAY") == null
            && System.getenv("WAYLAND_DISPLAY") == null
            && System.getProperty("os.name").equals("Linux");
    assumeTrue(none, "there is a display here, so its absence cannot be tested");
    Path file = folder.resolve("window.properties");
    assertThatExceptionOfType(NoDisplayException.class)
        .isThrownBy(() -> MotionWindow.open(WindowSamples.thread(), file, (state, loop) -> {}))
        .satisfies(
            e -> {
              assertThat(e).hasMessage("no window can be opened");
              assertThat(e.why()).startsWith("the display answers: ");
              assertThat(e.fix()).contains("a display");
            });
    assertThat(file).doesNotExist();
  }
}
