package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Whole pictures against kept ones, with the software renderer only. A pixel counts as different
 * when no pixel around its place in the kept picture is nearer than the tolerance, so that another
 * build of the renderer may round an edge the other way. Rewritten with {@code -Dgolden=write}.
 */
class GoldenPictureTest {
  private static final Path FOLDER = Path.of("src/test/resources/flankfit/picture/golden");
  private static final int WIDTH = 480;
  private static final int HEIGHT = 360;

  /** Greatest difference of a channel (of 255). */
  private static final int CHANNEL = 5;

  /** Greatest share of pixels beyond it (1). */
  private static final double SHARE = 0.001;

  @ParameterizedTest(name = "{0} {1} {2}")
  @CsvSource({"thread,ISO,LIGHT", "thread,FRONT,DARK", "pattern,PLAN,LIGHT"})
  void a_picture_is_as_kept(String name, View view, Theme theme) throws Exception {
    Scene scene = name.equals("thread") ? Samples.thread().withCutterAfter(16) : Samples.pattern();
    byte[] rgb;
    try (Drawing drawing = new Drawing()) {
      String renderer = drawing.renderer();
      assumeTrue(
          renderer.contains("llvmpipe"), "pictures are kept for llvmpipe, this is " + renderer);
      rgb = MotionPicture.draw(scene, view, WIDTH, HEIGHT, theme);
    }
    Path kept = FOLDER.resolve(name + "-" + view.word() + "-" + theme.word() + ".png");
    if (System.getProperty("golden", "").equals("write")) {
      Files.write(kept, Png.encode(rgb, WIDTH, HEIGHT));
    }
    BufferedImage expected = ImageIO.read(new ByteArrayInputStream(Files.readAllBytes(kept)));
    assertThat(expected.getWidth()).isEqualTo(WIDTH);
    assertThat(expected.getHeight()).isEqualTo(HEIGHT);
    double share = differing(rgb, expected);
    if (share > SHARE) {
      Path actual = Path.of("target", "golden-" + kept.getFileName());
      Files.write(actual, Png.encode(rgb, WIDTH, HEIGHT));
      assertThat(share).as("share of pixels unlike %s; see %s", kept, actual).isLessThan(SHARE);
    }
  }

  private static double differing(byte[] rgb, BufferedImage expected) {
    int different = 0;
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        int seen = Drawing.pixel(rgb, WIDTH, HEIGHT, x, HEIGHT - 1 - y);
        different += near(seen, expected, x, y) ? 0 : 1;
      }
    }
    return (double) different / (WIDTH * HEIGHT);
  }

  private static boolean near(int seen, BufferedImage expected, int x, int y) {
    for (int dy = -1; dy <= 1; dy++) {
      for (int dx = -1; dx <= 1; dx++) {
        int column = Math.max(0, Math.min(WIDTH - 1, x + dx));
        int row = Math.max(0, Math.min(HEIGHT - 1, y + dy));
        if (Drawing.difference(seen, expected.getRGB(column, row) & 0xFFFFFF) <= CHANNEL) {
          return true;
        }
      }
    }
    return false;
  }
}
