package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.motion.TapeBuilder;
import flankfit.setup.SetupSheet;
import flankfit.unit.LengthUnit;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.lwjgl.opengl.GL33C;

/** A path that is drawn in pieces, frame by frame, against the same drawn at once. */
@Timeout(120)
class LivePictureTest {
  private static final int WIDTH = 420;
  private static final int HEIGHT = 360;

  private static Camera camera(Scene scene, View view) {
    Camera camera = new Camera(view);
    camera.resize(WIDTH, HEIGHT);
    camera.fit(scene.bounds(), Insets.ofWindow(1).widened(18));
    return camera;
  }

  private static void frame(LivePicture picture, Scene scene, Camera camera) {
    picture.draw(scene, camera, Theme.LIGHT, LengthUnit.MILLIMETRE, Insets.ofWindow(1));
  }

  private static byte[] atRest(LivePicture picture, Scene scene, Camera camera) {
    do {
      frame(picture, scene, camera);
    } while (picture.isUnfinished());
    try (RenderTarget copy = new RenderTarget(WIDTH, HEIGHT, 0)) {
      copy.bind();
      picture.copyTo(GL33C.glGetInteger(GL33C.GL_FRAMEBUFFER_BINDING), 0, 0);
      return copy.readRgb();
    }
  }

  private static byte[] atOnce(Scene scene, Camera camera) {
    try (RenderTarget target = new RenderTarget(WIDTH, HEIGHT, 0);
        SceneRenderer renderer = new SceneRenderer(1)) {
      target.bind();
      renderer.show(scene);
      renderer.draw(camera, Theme.LIGHT, LengthUnit.MILLIMETRE, Insets.ofWindow(1));
      return target.readRgb();
    }
  }

  /** Share of pixels that differ by more than a shade hardly seen (1). */
  private static double differing(byte[] a, byte[] b) {
    int count = 0;
    for (int i = 0; i < a.length; i += 3) {
      for (int k = 0; k < 3; k++) {
        if (Math.abs((a[i + k] & 0xFF) - (b[i + k] & 0xFF)) > 40) {
          count++;
          break;
        }
      }
    }
    return 3.0 * count / a.length;
  }

  @Test
  void a_path_that_grew_looks_like_one_that_was_there_at_once() throws Exception {
    Tape tape = LongPaths.surface(90_000);
    GrowingScene growing = new GrowingScene(SetupSheet.empty(), "", Map.of());
    try (Drawing drawing = new Drawing();
        LivePicture picture = new LivePicture(1, 0);
        LivePicture fresh = new LivePicture(1, 0)) {
      Scene scene = growing.grow(LongPaths.first(tape, 1));
      Camera camera = camera(new Scene(tape, SetupSheet.empty(), ""), View.ISO);
      for (int moves = 1; moves < tape.size(); moves += 7919) {
        scene = growing.grow(LongPaths.first(tape, moves));
        frame(picture, scene, camera);
      }
      Scene whole = growing.finish(tape);
      byte[] grown = atRest(picture, whole, camera);
      byte[] alone = atRest(fresh, new Scene(tape, SetupSheet.empty(), ""), camera);
      assertThat(differing(grown, alone)).as(drawing.renderer()).isLessThan(0.004);
      byte[] once = atOnce(new Scene(tape, SetupSheet.empty(), ""), camera);
      assertThat(differing(alone, once)).as(drawing.renderer()).isLessThan(0.02);
    }
  }

  @Test
  void a_step_and_another_eye_lead_to_the_same_picture_as_a_fresh_one() throws Exception {
    Tape tape = LongPaths.surface(70_000);
    Scene scene = new Scene(tape, SetupSheet.empty(), "");
    try (Drawing drawing = new Drawing();
        LivePicture picture = new LivePicture(1, 0);
        LivePicture fresh = new LivePicture(1, 0)) {
      Camera camera = camera(scene, View.ISO);
      atRest(picture, scene.withCutterAfter(5), camera);
      frame(picture, scene.withCutterAfter(40_000), camera);
      byte[] stepped = atRest(picture, scene.withCutterAfter(40_000), camera);
      byte[] alone = atRest(fresh, scene.withCutterAfter(40_000), camera);
      assertThat(differing(stepped, alone)).as(drawing.renderer()).isLessThan(0.004);
      camera.zoom(6, 200, 150);
      byte[] nearer = atRest(picture, scene.withCutterAfter(40_000), camera);
      assertThat(differing(nearer, atRest(fresh, scene.withCutterAfter(40_000), camera)))
          .isLessThan(0.004);
      assertThat(differing(nearer, stepped)).isGreaterThan(0.1);
    }
  }

  @Test
  void a_thinned_chord_is_told_apart_where_the_cutter_stands() throws Exception {
    TapeBuilder builder = new TapeBuilder(Point.ZERO, new double[] {1, 1, 1});
    ModalState state = ModalState.initial(LengthUnit.MILLIMETRE);
    int moves = PathLines.EXACT_MOVES + 10_000;
    for (int i = 1; i <= moves; i++) {
      builder.straight(MoveKind.LINE, i * 0.001, 0, 0, i, i, state);
    }
    builder.straight(MoveKind.LINE, 60, 30, 0, moves + 1, moves + 1, state);
    Tape tape = builder.build();
    Scene scene = new Scene(tape, SetupSheet.empty(), "").withCutterAfter(29_999);
    try (Drawing drawing = new Drawing()) {
      Camera camera = camera(scene, View.PLAN);
      byte[] rgb = atOnce(scene, camera);
      Theme.Palette palette = Theme.LIGHT.palette();
      int done = Drawing.pixel(rgb, WIDTH, HEIGHT, camera.column(27, 0, 0), camera.row(27, 0, 0));
      int ahead = Drawing.pixel(rgb, WIDTH, HEIGHT, camera.column(33, 0, 0), camera.row(33, 0, 0));
      assertThat(Drawing.difference(done, palette.absolute())).isLessThan(6);
      int pale = Colours.mix(palette.absolute(), palette.ground(), 0.72);
      assertThat(Drawing.difference(ahead, pale)).as(drawing.renderer()).isLessThan(6);
    }
  }

  @Test
  void a_scene_that_grew_is_the_scene_of_the_whole_tape() {
    Scene whole = Samples.thread();
    Tape tape = whole.tape();
    GrowingScene growing = new GrowingScene(whole.setup(), whole.title(), Map.of("port", 20.0));
    Scene early = growing.grow(new TapeBuilder(tape.start(), new double[] {1, 1, 1}).build());
    Scene late = growing.grow(tape);
    Scene last = growing.finish(tape);
    assertThat(early.sharesGround(late)).isTrue();
    assertThat(last.sharesProgram(early)).isTrue();
    assertThat(last.bounds()).isEqualTo(whole.bounds());
    assertThat(last.reach()).isEqualTo(whole.reach());
    assertThat(last.subject()).isEqualTo(whole.subject());
    assertThat(last.kinds()).isEqualTo(late.kinds()).isEqualTo(whole.kinds());
    assertThat(last.passes().several()).isEqualTo(whole.passes().several());
  }
}
