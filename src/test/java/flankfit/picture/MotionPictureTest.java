package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.motion.TapeBuilder;
import flankfit.picture.Legend.Sample;
import flankfit.setup.SetupSheet;
import flankfit.unit.LengthUnit;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MotionPictureTest {
  private static final int WIDTH = 560;
  private static final int HEIGHT = 420;
  private static final double[] RAPIDS = {10000, 10000, 10000};

  @Test
  void a_picture_is_the_same_twice() throws Exception {
    byte[] once = MotionPicture.png(Samples.thread(), View.PLAN, 400, 300, Theme.LIGHT);
    byte[] again = MotionPicture.png(Samples.thread(), View.PLAN, 400, 300, Theme.LIGHT);
    assertThat(again).isEqualTo(once);
  }

  @Test
  void twice_as_large_in_all_shows_the_same_when_seen_half_as_large() throws Exception {
    Scene scene = Samples.thread();
    BufferedImage one = image(MotionPicture.png(scene, View.PLAN, WIDTH, HEIGHT, 1, Theme.LIGHT));
    BufferedImage two =
        image(MotionPicture.png(scene, View.PLAN, 2 * WIDTH, 2 * HEIGHT, 2, Theme.LIGHT));
    BufferedImage small =
        image(MotionPicture.png(scene, View.PLAN, 2 * WIDTH, 2 * HEIGHT, 1, Theme.LIGHT));
    assertThat(unlike(one, two)).isLessThan(0.01);
    assertThat(unlike(one, small)).isGreaterThan(0.02);
  }

  private static BufferedImage image(byte[] png) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(png));
  }

  /** Share of pixels that are far from the middle of the four of a larger picture. */
  private static double unlike(BufferedImage one, BufferedImage two) {
    int count = 0;
    for (int x = 0; x < WIDTH; x++) {
      for (int y = 0; y < HEIGHT; y++) {
        int green = 0;
        for (int k = 0; k < 4; k++) {
          green += two.getRGB(2 * x + k % 2, 2 * y + k / 2) >> 8 & 0xFF;
        }
        count += Math.abs((one.getRGB(x, y) >> 8 & 0xFF) - green / 4) > 60 ? 1 : 0;
      }
    }
    return (double) count / (WIDTH * HEIGHT);
  }

  @ParameterizedTest
  @EnumSource(View.class)
  void every_view_draws_without_a_complaint_on_both_papers(View view) throws Exception {
    try (Drawing drawing = new Drawing()) {
      for (Theme theme : Theme.values()) {
        Scene scene = Samples.thread().withCutterAfter(16);
        byte[] rgb = MotionPicture.draw(scene, view, WIDTH, HEIGHT, theme);
        int ground = Drawing.pixel(rgb, WIDTH, HEIGHT, 2, 2);
        assertThat(ground).as(drawing.renderer()).isEqualTo(theme.palette().ground());
        assertThat(inked(rgb, ground)).isGreaterThan(0.05);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(View.class)
  void points_of_the_path_have_the_colour_of_their_mode(View view) throws Exception {
    Scene scene = new Scene(zigzag(MoveKind.LINE), SetupSheet.empty(), "");
    try (Drawing drawing = new Drawing()) {
      byte[] rgb = MotionPicture.draw(scene, view, WIDTH, HEIGHT, Theme.LIGHT);
      Camera camera = MotionPicture.camera(scene, view, WIDTH, HEIGHT);
      double[] p = new double[3];
      for (int move = 1; move < scene.tape().size(); move++) {
        scene.tape().pointAt(move, 0.37, p);
        double column = camera.column(p[0], p[1], p[2]);
        double row = camera.row(p[0], p[1], p[2]);
        int seen = Drawing.pixel(rgb, WIDTH, HEIGHT, column, row);
        assertThat(Drawing.difference(seen, Theme.LIGHT.palette().absolute()))
            .as("move %d in the %s view, %s", move, view.word(), drawing.renderer())
            .isLessThan(6);
      }
    }
  }

  @Test
  void half_of_a_rapid_is_ink() throws Exception {
    Scene scene = new Scene(zigzag(MoveKind.RAPID), SetupSheet.empty(), "");
    try (Drawing drawing = new Drawing()) {
      byte[] rgb = MotionPicture.draw(scene, View.PLAN, WIDTH, HEIGHT, Theme.LIGHT);
      Camera camera = MotionPicture.camera(scene, View.PLAN, WIDTH, HEIGHT);
      double[] p = new double[3];
      int ink = 0;
      int all = 4000;
      for (int i = 0; i < all; i++) {
        scene.tape().pointAt(1, (i + 0.5) / all, p);
        int seen =
            Drawing.pixel(
                rgb, WIDTH, HEIGHT, camera.column(p[0], p[1], p[2]), camera.row(p[0], p[1], p[2]));
        if (Drawing.difference(seen, Theme.LIGHT.palette().ground()) > 70) {
          ink++;
        }
      }
      assertThat((double) ink / all).as(drawing.renderer()).isBetween(0.42, 0.58);
    }
  }

  @Test
  void the_key_names_what_occurs_and_nothing_else() {
    assertThat(new Legend(Samples.pattern()).samples())
        .containsExactly(Sample.ABSOLUTE, Sample.RAPID, Sample.STOCK);
    assertThat(new Legend(Samples.thread().withCutterAfter(16)).samples())
        .containsExactly(
            Sample.INCREMENTAL,
            Sample.RAPID,
            Sample.PROGRAMMED,
            Sample.EARLIER,
            Sample.STOCK,
            Sample.THREAD,
            Sample.CUTTER);
  }

  @Test
  void the_path_beyond_the_cutter_is_paler() throws Exception {
    Scene whole = new Scene(zigzag(MoveKind.LINE), SetupSheet.empty(), "");
    try (Drawing drawing = new Drawing()) {
      byte[] rgb =
          MotionPicture.draw(whole.withCutterAfter(1), View.PLAN, WIDTH, HEIGHT, Theme.LIGHT);
      Camera camera = MotionPicture.camera(whole, View.PLAN, WIDTH, HEIGHT);
      double[] p = new double[3];
      whole.tape().pointAt(3, 0.5, p);
      int seen =
          Drawing.pixel(
              rgb, WIDTH, HEIGHT, camera.column(p[0], p[1], p[2]), camera.row(p[0], p[1], p[2]));
      Theme.Palette palette = Theme.LIGHT.palette();
      int pale = Colours.mix(palette.absolute(), palette.ground(), 0.72);
      assertThat(Drawing.difference(seen, pale)).as(drawing.renderer()).isLessThan(6);
    }
  }

  @Test
  void a_path_of_many_slots_is_drawn_from_end_to_end() throws Exception {
    TapeBuilder tape = new TapeBuilder(Point.ZERO, RAPIDS);
    ModalState state = ModalState.initial(LengthUnit.MILLIMETRE);
    int count = 5000;
    for (int i = 1; i <= count; i++) {
      tape.straight(MoveKind.LINE, i * 0.01, i % 2 * 0.001, 0, i, i, state);
    }
    Scene scene = new Scene(tape.build(), SetupSheet.empty(), "");
    try (Drawing drawing = new Drawing()) {
      byte[] rgb = MotionPicture.draw(scene, View.PLAN, WIDTH, HEIGHT, Theme.LIGHT);
      Camera camera = MotionPicture.camera(scene, View.PLAN, WIDTH, HEIGHT);
      for (int move = 5; move < count; move += 97) {
        double x = scene.tape().toX(move);
        int seen = Drawing.pixel(rgb, WIDTH, HEIGHT, camera.column(x, 0, 0), camera.row(x, 0, 0));
        assertThat(Drawing.difference(seen, Theme.LIGHT.palette().absolute()))
            .as("move %d, %s", move, drawing.renderer())
            .isLessThan(6);
      }
    }
  }

  @Test
  void a_program_without_moves_still_gives_a_picture() throws Exception {
    Tape none = new TapeBuilder(Point.ZERO, RAPIDS).build();
    Scene scene = new Scene(none, SetupSheet.empty(), "nothing");
    assertThat(MotionPicture.png(scene, View.ISO, 300, 240, Theme.DARK)).isNotEmpty();
  }

  @Test
  void without_opengl_it_says_what_why_and_how_to_mend() {
    assertThatExceptionOfType(NoOpenGlException.class)
        .isThrownBy(
            () ->
                MotionPicture.png(
                    Samples.thread(),
                    View.ISO,
                    400,
                    300,
                    Theme.LIGHT,
                    () -> {
                      throw NoOpenGlException.because("EGL offers no device");
                    }))
        .satisfies(
            e -> {
              assertThat(e).hasMessage("no OpenGL 3.3 context can be made");
              assertThat(e.why()).isEqualTo("EGL offers no device");
              assertThat(e.fix()).contains("install an OpenGL driver");
            });
  }

  @Test
  void a_uniform_that_no_shader_uses_is_refused() throws Exception {
    try (Drawing drawing = new Drawing();
        ShaderProgram program = new ShaderProgram("surface")) {
      assertThat(drawing.renderer()).isNotEmpty();
      assertThatIllegalArgumentException()
          .isThrownBy(() -> program.uniform("colours"))
          .withMessageContaining("colours");
    }
  }

  private static double inked(byte[] rgb, int ground) {
    int inked = 0;
    for (int i = 0; i < rgb.length; i += 3) {
      int c = (rgb[i] & 0xFF) << 16 | (rgb[i + 1] & 0xFF) << 8 | (rgb[i + 2] & 0xFF);
      inked += c == ground ? 0 : 1;
    }
    return inked * 3.0 / rgb.length;
  }

  /** Four moves that no view shows end on. */
  private static Tape zigzag(MoveKind kind) {
    TapeBuilder tape = new TapeBuilder(Point.ZERO, RAPIDS);
    ModalState state = ModalState.initial(LengthUnit.MILLIMETRE);
    tape.straight(MoveKind.RAPID, 1, 1, 1, 1, 1, state);
    tape.straight(kind, 30, 10, -8, 2, 2, state);
    tape.straight(kind, 3, 22, 5, 3, 3, state);
    tape.straight(kind, 26, 34, -2, 4, 4, state);
    return tape.build();
  }
}
