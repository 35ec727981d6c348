package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.Extents;
import flankfit.motion.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CameraTest {
  private static Camera camera(View view) {
    Camera camera = new Camera(view);
    camera.resize(400, 300);
    camera.scale(0.1);
    return camera;
  }

  @Test
  void plan_shows_x_to_the_right_and_y_upwards() {
    Camera camera = camera(View.PLAN);
    assertThat(camera.column(1, 2, 3)).isCloseTo(210, within(1e-9));
    assertThat(camera.row(1, 2, 3)).isCloseTo(170, within(1e-9));
  }

  @Test
  void front_shows_x_and_z_side_shows_y_and_z() {
    assertThat(camera(View.FRONT).column(1, 2, 3)).isCloseTo(210, within(1e-9));
    assertThat(camera(View.FRONT).row(1, 2, 3)).isCloseTo(180, within(1e-9));
    assertThat(camera(View.SIDE).column(1, 2, 3)).isCloseTo(220, within(1e-9));
    assertThat(camera(View.SIDE).row(1, 2, 3)).isCloseTo(180, within(1e-9));
  }

  @Test
  void only_upright_views_show_depth() {
    assertThat(camera(View.FRONT).showsDepth()).isTrue();
    assertThat(camera(View.SIDE).showsDepth()).isTrue();
    assertThat(camera(View.PLAN).showsDepth()).isFalse();
    assertThat(camera(View.ISO).showsDepth()).isFalse();
  }

  @ParameterizedTest
  @EnumSource(View.class)
  void zoom_keeps_the_point_under_the_pointer(View view) {
    Camera camera = camera(view);
    double column = camera.column(3, -2, 1);
    double row = camera.row(3, -2, 1);
    camera.zoom(2.5, column, row);
    assertThat(camera.column(3, -2, 1)).isCloseTo(column, within(1e-9));
    assertThat(camera.row(3, -2, 1)).isCloseTo(row, within(1e-9));
    assertThat(camera.millimetresPerPixel()).isCloseTo(0.04, within(1e-12));
  }

  @ParameterizedTest
  @EnumSource(View.class)
  void fit_leaves_every_corner_between_the_insets(View view) {
    Camera camera = camera(view);
    camera.fit(
        new Extents(new Point(-40, 10, -30), new Point(25, 70, 5)), new double[] {50, 20, 40, 10});
    for (int corner = 0; corner < 8; corner++) {
      double x = (corner & 1) == 0 ? -40 : 25;
      double y = (corner & 2) == 0 ? 10 : 70;
      double z = (corner & 4) == 0 ? -30 : 5;
      assertThat(camera.column(x, y, z)).isBetween(50 - 1e-9, 380 + 1e-9);
      assertThat(camera.row(x, y, z)).isBetween(40 - 1e-9, 290 + 1e-9);
    }
  }

  @Test
  void panning_moves_the_picture_with_the_hand() {
    Camera camera = camera(View.ISO);
    double column = camera.column(1, 1, 1);
    double row = camera.row(1, 1, 1);
    camera.pan(12, -7);
    assertThat(camera.column(1, 1, 1)).isCloseTo(column + 12, within(1e-9));
    assertThat(camera.row(1, 1, 1)).isCloseTo(row - 7, within(1e-9));
  }

  @Test
  void the_eye_stops_above_and_below_the_part() {
    Camera camera = camera(View.ISO);
    camera.turn(0, 9);
    assertThat(camera.elevation()).isEqualTo(Math.PI / 2);
  }
}
