package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.picture.Theme;
import flankfit.picture.View;
import flankfit.unit.LengthUnit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PreferencesTest {
  @TempDir Path folder;

  @Test
  void what_is_written_is_read_again_and_nothing_else_is_left() throws Exception {
    Path file = folder.resolve("deep").resolve("window.properties");
    Preferences kept =
        new Preferences(1000, 640, View.SIDE, Theme.DARK, Optional.of(LengthUnit.INCH));
    kept.write(file);
    kept.write(file);
    assertThat(Preferences.read(file)).isEqualTo(kept);
    try (var files = Files.list(file.getParent())) {
      assertThat(files).containsExactly(file);
    }
  }

  @Test
  void a_missing_file_gives_a_first_window() {
    assertThat(Preferences.read(folder.resolve("none"))).isEqualTo(Preferences.first());
  }

  @Test
  void whatever_is_broken_is_as_in_a_first_window() throws Exception {
    Path file = folder.resolve("window.properties");
    Files.writeString(file, "width = wide\nheight = 3\nview = side\ntheme = \\u12\n");
    assertThat(Preferences.read(file)).isEqualTo(Preferences.first());
    Files.writeString(file, "width = 99999\nheight = 3\nview = side\ntheme = pink\nunit = ell\n");
    Preferences read = Preferences.read(file);
    assertThat(read.view()).isEqualTo(View.SIDE);
    assertThat(read.theme()).isEqualTo(Theme.LIGHT);
    assertThat(read.width()).isEqualTo(1440);
    assertThat(read.unit()).isEmpty();
    Files.write(file, new byte[] {(byte) 0xFF, (byte) 0xFE, 0, 1});
    assertThat(Preferences.read(file)).isEqualTo(Preferences.first());
  }

  @Test
  void the_file_lies_where_the_platform_keeps_settings() {
    assertThat(Preferences.file(Map.of(), "Linux", "/home/a"))
        .isEqualTo(Path.of("/home/a/.config/flankfit/window.properties"));
    assertThat(Preferences.file(Map.of("XDG_CONFIG_HOME", "/x"), "Linux", "/home/a"))
        .isEqualTo(Path.of("/x/flankfit/window.properties"));
    assertThat(Preferences.file(Map.of(), "Mac OS X", "/Users/a"))
        .isEqualTo(Path.of("/Users/a/Library/Application Support/flankfit/window.properties"));
    assertThat(Preferences.file(Map.of("APPDATA", "/roaming"), "Windows 11", "/a"))
        .isEqualTo(Path.of("/roaming/flankfit/window.properties"));
  }
}
