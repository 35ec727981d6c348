package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class PixelBoxTest {
  @Test
  void a_part_of_a_picture_has_the_rows_and_columns_of_the_box() {
    byte[] rgb = new byte[3 * 4 * 3];
    for (int i = 0; i < rgb.length; i++) {
      rgb[i] = (byte) i;
    }
    PixelBox box = new PixelBox(1, 1, 3, 3);
    assertThat(box.of(rgb, 4)).containsExactly(15, 16, 17, 18, 19, 20, 27, 28, 29, 30, 31, 32);
    assertThat(new PixelBox(0, 0, 4, 3).of(rgb, 4)).isEqualTo(rgb);
    assertThatThrownBy(() -> new PixelBox(2, 0, 2, 3)).isInstanceOf(IllegalArgumentException.class);
  }
}
