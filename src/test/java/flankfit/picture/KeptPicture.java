package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/**
 * Pictures kept to compare with. A pixel counts as different when no pixel around its place in the
 * kept picture is nearer than the tolerance, so that another build of the renderer may round an
 * edge the other way.
 */
public final class KeptPicture {
  static final Path FOLDER = Path.of("src/test/resources/flankfit/picture/golden");

  /** Greatest difference of a channel (of 255). */
  private static final int CHANNEL = 5;

  /** Greatest share of pixels beyond it (1). */
  private static final double SHARE = 0.001;

  private KeptPicture() {}

  /** Whether pictures are written anew instead. */
  public static boolean isWriting() {
    return System.getProperty("golden", "").equals("write");
  }

  /** Compares red, green, blue with the kept PNG; writes what differs under target. */
  public static void compare(String name, byte[] rgb, int width, int height) throws IOException {
    Path kept = FOLDER.resolve(name);
    if (isWriting()) {
      Files.write(kept, Png.encode(rgb, width, height));
    }
    BufferedImage expected = ImageIO.read(new ByteArrayInputStream(Files.readAllBytes(kept)));
    assertThat(expected.getWidth()).isEqualTo(width);
    assertThat(expected.getHeight()).isEqualTo(height);
    double share = differing(rgb, expected, width, height);
    if (share > SHARE) {
      Path actual = Path.of("target", "golden-" + kept.getFileName());
      Files.createDirectories(actual.getParent());
      Files.write(actual, Png.encode(rgb, width, height));
      assertThat(share).as("share of pixels unlike %s; see %s", kept, actual).isLessThan(SHARE);
    }
  }

  private static double differing(byte[] rgb, BufferedImage expected, int width, int height) {
    int different = 0;
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int seen = Drawing.pixel(rgb, width, height, x, height - 1 - y);
        different += near(seen, expected, x, y) ? 0 : 1;
      }
    }
    return (double) different / (width * height);
  }

  private static boolean near(int seen, BufferedImage expected, int x, int y) {
    for (int dy = -1; dy <= 1; dy++) {
      for (int dx = -1; dx <= 1; dx++) {
        int column = Math.max(0, Math.min(expected.getWidth() - 1, x + dx));
        int row = Math.max(0, Math.min(expected.getHeight() - 1, y + dy));
        if (Drawing.difference(seen, expected.getRGB(column, row) & 0xFFFFFF) <= CHANNEL) {
          return true;
        }
      }
    }
    return false;
  }
}
