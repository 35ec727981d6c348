package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class PngTest {
  @Test
  void another_reader_gets_the_same_pixels() throws Exception {
    byte[] rgb = new byte[3 * 7 * 5];
    for (int i = 0; i < rgb.length; i++) {
      rgb[i] = (byte) (i * 37);
    }
    holds(Png.encode(rgb, 7, 5), rgb);
    holds(Png.encodeSmall(rgb, 7, 5), rgb);
  }

  private static void holds(byte[] png, byte[] rgb) throws Exception {
    BufferedImage read = ImageIO.read(new ByteArrayInputStream(png));
    assertThat(read.getWidth()).isEqualTo(7);
    assertThat(read.getHeight()).isEqualTo(5);
    for (int y = 0; y < 5; y++) {
      for (int x = 0; x < 7; x++) {
        int at = 3 * (7 * y + x);
        int expected = (rgb[at] & 0xFF) << 16 | (rgb[at + 1] & 0xFF) << 8 | (rgb[at + 2] & 0xFF);
        assertThat(read.getRGB(x, y) & 0xFFFFFF).isEqualTo(expected);
      }
    }
  }

  @Test
  void a_wrong_number_of_bytes_is_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Png.encode(new byte[10], 2, 2));
  }
}
