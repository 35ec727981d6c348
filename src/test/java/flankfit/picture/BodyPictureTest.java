package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.motion.TapeBuilder;
import flankfit.setup.SetupSheet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BodyPictureTest {
  private static final int WIDTH = 420;
  private static final int HEIGHT = 320;
  private static final Extents BOX = new Extents(new Point(-20, -10, -12), new Point(20, 10, 0));

  /** A box with a floor of its own colour, machined along X at the top. */
  private static BodyScene box(Optional<BodyScene.Cut> cut) {
    BodyFaces faces = new BodyFaces(new Point(3, -2, 1));
    for (int axis = 0; axis < 3; axis++) {
      for (int side = -1; side <= 1; side += 2) {
        face(faces, axis, side);
      }
    }
    Scene ground =
        new Scene(
            new TapeBuilder(new Point(0, 0, 20), new double[] {1e4, 1e4, 1e4}).build(),
            SetupSheet.empty(),
            "Bracket");
    return new BodyScene(
        ground,
        faces,
        new BodyFaces(new Point(3, -2, 1)),
        List.of(),
        Coordinates.NONE,
        cut,
        List.of(new BodyScene.KeyRow(0xD8D8D8, "steel")));
  }

  private static void face(BodyFaces faces, int axis, int side) {
    int u = (axis + 1) % 3;
    int v = (axis + 2) % 3;
    double[] n = new double[3];
    n[axis] = side;
    int[] corner = new int[4];
    for (int k = 0; k < 4; k++) {
      double[] p = new double[3];
      p[axis] = side > 0 ? BOX.max().axis(axis) : BOX.min().axis(axis);
      p[u] = k == 1 || k == 2 ? BOX.max().axis(u) : BOX.min().axis(u);
      p[v] = k >= 2 ? BOX.max().axis(v) : BOX.min().axis(v);
      corner[k] = faces.vertex(p[0], p[1], p[2], n[0], n[1], n[2]);
      faces.tint(0xE8E9E9, 255);
      if (axis == 2 && side > 0) {
        faces.grain(1, 0, 0);
      }
    }
    if (side > 0) {
      faces.triangle(corner[0], corner[1], corner[2]);
      faces.triangle(corner[0], corner[2], corner[3]);
    } else {
      faces.triangle(corner[0], corner[2], corner[1]);
      faces.triangle(corner[0], corner[3], corner[2]);
    }
  }

  /** The half with y above 0 is kept, the cut closed by the box's own rectangle. */
  private static BodyScene.Cut half() {
    double[] cap = {-20, 0, -12, 20, 0, -12, 20, 0, 0, -20, 0, -12, 20, 0, 0, -20, 0, 0};
    double[] outline = {
      -20, 0, -12, 20, 0, -12, 20, 0, -12, 20, 0, 0, 20, 0, 0, -20, 0, 0, -20, 0, 0, -20, 0, -12
    };
    return new BodyScene.Cut(0, 1, 0, 0, new Coordinates(cap), new Coordinates(outline));
  }

  @Test
  void a_picture_is_the_same_twice() throws Exception {
    byte[] once = BodyPicture.png(box(Optional.empty()), View.ISO, BOX, 300, 240, Theme.LIGHT);
    byte[] again = BodyPicture.png(box(Optional.empty()), View.ISO, BOX, 300, 240, Theme.LIGHT);
    assertThat(again).isEqualTo(once);
  }

  @ParameterizedTest
  @EnumSource(View.class)
  void metal_fills_its_outline_and_nothing_else(View view) throws Exception {
    try (Drawing drawing = new Drawing()) {
      for (Theme theme : Theme.values()) {
        byte[] rgb = BodyPicture.draw(box(Optional.empty()), view, BOX, WIDTH, HEIGHT, theme);
        Camera camera = camera(view);
        Point middle = BOX.middle();
        int inside = at(rgb, camera, middle.x() + 3, middle.y() - 2, middle.z() + 1);
        assertThat(Drawing.difference(inside, theme.palette().ground()))
            .as("%s %s, %s", view, theme, drawing.renderer())
            .isGreaterThan(12);
        assertThat(Drawing.pixel(rgb, WIDTH, HEIGHT, WIDTH / 2.0, HEIGHT - 8))
            .isEqualTo(theme.palette().ground());
      }
    }
  }

  @Test
  void metal_is_grey_where_its_mirror_is_grey() throws Exception {
    // The tone curve may not shift hues: colours tell tools apart.
    try (Drawing drawing = new Drawing()) {
      byte[] rgb =
          BodyPicture.draw(box(Optional.empty()), View.FRONT, BOX, WIDTH, HEIGHT, Theme.LIGHT);
      int seen = at(rgb, camera(View.FRONT), 4, -10, -6);
      int red = seen >> 16 & 0xFF;
      assertThat(seen >> 8 & 0xFF).as(drawing.renderer()).isCloseTo(red, within(3));
      assertThat(seen & 0xFF).isCloseTo(red, within(3));
    }
  }

  @Test
  void a_cut_takes_away_what_lies_before_it_and_is_hatched() throws Exception {
    try (Drawing drawing = new Drawing()) {
      BodyScene whole = box(Optional.empty());
      BodyScene cut = box(Optional.of(half()));
      Camera plan = camera(View.PLAN);
      byte[] above = BodyPicture.draw(whole, View.PLAN, BOX, WIDTH, HEIGHT, Theme.LIGHT);
      byte[] halved = BodyPicture.draw(cut, View.PLAN, BOX, WIDTH, HEIGHT, Theme.LIGHT);
      int ground = Theme.LIGHT.palette().ground();
      assertThat(Drawing.difference(at(above, plan, 5, -5, 0), ground)).isGreaterThan(12);
      assertThat(at(halved, plan, 5, -5, 0)).as(drawing.renderer()).isEqualTo(ground);
      assertThat(at(halved, plan, 5, 5, 0)).isEqualTo(at(above, plan, 5, 5, 0));
      byte[] front = BodyPicture.draw(cut, View.FRONT, BOX, WIDTH, HEIGHT, Theme.LIGHT);
      assertThat(inkOfHatching(front)).isBetween(0.10, 0.35);
    }
  }

  /** Share of the cut's pixels that are darker than its paper. */
  private static double inkOfHatching(byte[] rgb) {
    Camera camera = camera(View.FRONT);
    int dark = 0;
    int all = 0;
    int paper = Colours.mix(Theme.LIGHT.palette().stock(), Theme.LIGHT.palette().ground(), 0.45);
    for (double x = -18; x <= 18; x += 0.1) {
      for (double z = -10.5; z <= -1.5; z += 0.1) {
        all++;
        if (Drawing.difference(at(rgb, camera, x, 0, z), paper) > 30) {
          dark++;
        }
      }
    }
    return (double) dark / all;
  }

  private static Camera camera(View view) {
    return BodyPicture.camera(view, BOX, WIDTH, HEIGHT);
  }

  private static int at(byte[] rgb, Camera camera, double x, double y, double z) {
    return Drawing.pixel(rgb, WIDTH, HEIGHT, camera.column(x, y, z), camera.row(x, y, z));
  }
}
