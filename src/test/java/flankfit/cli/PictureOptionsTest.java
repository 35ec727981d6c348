package flankfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.cli.PictureOptions.Pixels;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PictureOptionsTest {
  @ParameterizedTest
  @CsvSource({
    "600,400,600,400",
    "1200,800,1200,800",
    "2400,1600,1200,800",
    "2400,800,2400,800",
    "3000,1600,1500,800",
    "8192,8192,2048,2048"
  })
  void a_large_diagram_is_a_smaller_one_enlarged(int width, int height, int wide, int high) {
    assertThat(PictureOptions.layout(new Pixels(width, height))).isEqualTo(new Pixels(wide, high));
  }
}
