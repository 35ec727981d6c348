package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BundledFontTest {
  @ParameterizedTest
  @EnumSource(BundledFont.class)
  void all_digits_are_equally_wide(BundledFont font) {
    int[] advances = TextAtlas.advances(font, "0123456789");
    assertThat(advances[0]).isPositive();
    assertThat(Arrays.stream(advances).distinct().count()).isEqualTo(1);
  }

  @ParameterizedTest
  @EnumSource(BundledFont.class)
  void minus_and_plus_are_equally_wide(BundledFont font) {
    int[] advances = TextAtlas.advances(font, "−+");
    assertThat(advances[0]).isPositive().isEqualTo(advances[1]);
  }

  @Test
  void the_licence_lies_beside_the_fonts() throws Exception {
    try (InputStream in =
        BundledFont.class.getResourceAsStream("/flankfit/font/LICENSE-DejaVu.txt")) {
      assertThat(in).isNotNull();
      assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8))
          .contains("Permission is hereby granted, free of charge");
    }
  }
}
