package flankfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures and the window as a user asks for them, with and without OpenGL and a display. */
class PictureCommandTest {
  private static final String SAMPLE = "sample-programs/filter-housing-m20.nc";

  /** The library that finds drivers is pointed at a folder without any. */
  private static final Map<String, String> NO_DRIVERS =
      Map.of(
          "__EGL_VENDOR_LIBRARY_FILENAMES", "/nonexistent.json",
          "__EGL_VENDOR_LIBRARY_DIRS", "/nonexistent",
          "DISPLAY", "",
          "WAYLAND_DISPLAY", "");

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"plan", "front", "side", "iso"})
  void every_view_is_drawn_without_a_display(String view) throws Exception {
    Path picture = folder.resolve(view + ".png");
    FlankfitProcess run =
        FlankfitProcess.run(
            Map.of("DISPLAY", "", "WAYLAND_DISPLAY", ""),
            "motion",
            SAMPLE,
            "--image",
            picture.toString(),
            "--view",
            view,
            "--size",
            "800x500");
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out()).contains("picture", picture.toString());
    BufferedImage image = ImageIO.read(picture.toFile());
    assertThat(image.getWidth()).isEqualTo(800);
    assertThat(image.getHeight()).isEqualTo(500);
  }

  @Test
  void the_same_picture_has_the_same_bytes() throws Exception {
    byte[][] bytes = new byte[2][];
    for (int i = 0; i < 2; i++) {
      Path picture = folder.resolve("same" + i + ".png");
      FlankfitProcess.run("motion", SAMPLE, "--image", picture.toString());
      bytes[i] = Files.readAllBytes(picture);
    }
    assertThat(bytes[0]).isEqualTo(bytes[1]);
  }

  @Test
  void without_opengl_the_picture_fails_clearly_and_everything_else_works() throws Exception {
    Path picture = folder.resolve("none.png");
    FlankfitProcess drawn =
        FlankfitProcess.run(NO_DRIVERS, "motion", SAMPLE, "--image", picture.toString());
    assertThat(drawn.status()).isEqualTo(3);
    assertThat(drawn.out()).isEmpty();
    assertThat(drawn.err())
        .contains("error RQ05 no-opengl", "what", "why", "fix")
        .doesNotContain("Exception", "\tat ");
    assertThat(picture).doesNotExist();

    assertThat(FlankfitProcess.run(NO_DRIVERS, "motion", SAMPLE).status()).isZero();
    assertThat(FlankfitProcess.run(NO_DRIVERS, "gauge", SAMPLE).status()).isZero();
  }

  @Test
  void without_a_display_the_window_fails_clearly() throws Exception {
    FlankfitProcess run = FlankfitProcess.run(NO_DRIVERS, "window", SAMPLE);
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.err())
        .contains("error RQ06 no-display", "what", "why", "fix")
        .doesNotContain("Exception", "\tat ");
  }

  @Test
  void an_impossible_size_is_refused() throws Exception {
    for (String size : new String[] {"10x10", "1600", "axb", "99999x2"}) {
      FlankfitProcess run =
          FlankfitProcess.run(
              "motion", SAMPLE, "--image", folder.resolve("x.png").toString(), "--size", size);
      assertThat(run.status()).as(size).isEqualTo(2);
      assertThat(run.err()).as(size).contains("RQ04", "1600x1000");
    }
  }
}
