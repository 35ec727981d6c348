package flankfit.picture;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Whole pictures against kept ones, with the software renderer only; see {@link KeptPicture}.
 * Rewritten with {@code -Dgolden=write}.
 */
class GoldenPictureTest {
  private static final int WIDTH = 480;
  private static final int HEIGHT = 360;

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
    KeptPicture.compare(name + "-" + view.word() + "-" + theme.word() + ".png", rgb, WIDTH, HEIGHT);
  }
}
