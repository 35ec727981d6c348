package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.picture.Camera;
import flankfit.picture.View;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Planes that open the metal: what they take away, and how hand and keys move them. */
class SectionsTest {
  private static final Extents BOX = new Extents(new Point(-12, -8, -10), new Point(12, 8, 0));
  private final Sections sections = new Sections();
  private final Camera camera = new Camera(View.ISO);

  SectionsTest() {
    sections.begin(BOX, new Point(6, 0, -4));
    camera.resize(900, 600);
    camera.fit(BOX, new double[] {80, 20, 80, 30});
  }

  @Test
  void planes_begin_in_the_axis_of_the_hole_and_take_the_side_of_the_eye() {
    assertThat(sections.takes(camera, 0, -5, -2)).isFalse();
    sections.toggle(1);
    assertThat(sections.held()).isEqualTo(1);
    // the eye of the free view stands before the front
    assertThat(sections.takes(camera, 0, -5, -2)).isTrue();
    assertThat(sections.takes(camera, 0, 5, -2)).isFalse();
    camera.turn(Math.PI, 0.5);
    assertThat(sections.takes(camera, 0, -5, -2)).isFalse();
    assertThat(sections.takes(camera, 0, 5, -2)).isTrue();
  }

  @Test
  void two_planes_take_a_quarter_away() {
    sections.toggle(0);
    sections.toggle(1);
    assertThat(sections.cuts(camera)).hasSize(2);
    int taken = 0;
    for (int x = -1; x <= 1; x += 2) {
      for (int y = -1; y <= 1; y += 2) {
        taken += sections.takes(camera, 6 + x, y, -2) ? 1 : 0;
      }
    }
    assertThat(taken).isEqualTo(1);
    sections.toggle(1);
    assertThat(sections.held()).isZero();
    sections.close();
    assertThat(sections.isAny()).isFalse();
  }

  @Test
  void steps_make_round_figures_and_end_at_the_stock() {
    assertThat(Sections.stepped(0.234, 0.1, 1)).isCloseTo(0.3, within(1e-12));
    assertThat(Sections.stepped(0.234, 0.1, -1)).isCloseTo(0.2, within(1e-12));
    assertThat(Sections.stepped(0.3, 0.1, 1)).isCloseTo(0.4, within(1e-12));
    assertThat(Sections.stepped(-1.0, 1.0, -1)).isEqualTo(-2.0);
    assertThat(sections.to(0, 40)).isTrue();
    assertThat(sections.at(0)).isEqualTo(12);
    assertThat(sections.to(0, 41)).isFalse();
  }

  @Test
  void a_dragged_grip_stays_under_the_pointer() {
    Random random = new Random(4);
    for (int i = 0; i < 200; i++) {
      camera.turn(random.nextDouble() * 6, random.nextDouble() * 1.2 - 0.2);
      int axis = random.nextInt(3);
      double across = camera.right(axis);
      double upward = camera.up(axis);
      double length = Math.hypot(across, upward);
      if (length < 0.15) {
        continue;
      }
      double pixels = random.nextDouble() * 60 - 30;
      // along the plane's own way on the screen, and something aside, which counts for nothing
      double aside = random.nextDouble() * 20;
      double columns = (pixels * across - aside * upward) / length;
      double rows = (pixels * upward + aside * across) / length;
      double way = SectionGrips.way(camera, axis, columns, rows);
      assertThat(way * length / camera.millimetresPerPixel()).isCloseTo(pixels, within(1e-9));
    }
    camera.look(View.PLAN);
    // looked at straight, a pointer that goes up lifts the plane to the eye
    assertThat(SectionGrips.way(camera, 2, 5, 10))
        .isCloseTo(10 * camera.millimetresPerPixel(), within(1e-12));
  }

  @Test
  void grips_lie_on_their_planes_in_sight_and_are_met_there() {
    for (View view : View.values()) {
      camera.look(view);
      for (int axis = 0; axis < 3; axis++) {
        Point grip = SectionGrips.grip(sections, axis, camera);
        assertThat(grip.axis(axis)).isEqualTo(sections.at(axis));
        double column = camera.column(grip.x(), grip.y(), grip.z());
        double row = camera.row(grip.x(), grip.y(), grip.z());
        assertThat(column).isBetween(40.0, 880.0);
        assertThat(row).isBetween(40.0, 580.0);
        assertThat(SectionGrips.at(sections, camera, column, row, 10)).isEqualTo(-1);
        sections.toggle(axis);
        assertThat(SectionGrips.at(sections, camera, column + 6, row - 6, 10)).isEqualTo(axis);
        assertThat(SectionGrips.at(sections, camera, column + 16, row, 10)).isEqualTo(-1);
        sections.toggle(axis);
      }
    }
    // so near that no side is seen: in the middle of the scene
    camera.look(View.ISO);
    camera.scale(1e-3);
    camera.centre(new Point(6, 0, -4));
    Point grip = SectionGrips.grip(sections, 0, camera);
    assertThat(camera.column(grip.x(), grip.y(), grip.z())).isBetween(0.0, 900.0);
  }

  @Test
  void places_are_round_figures_at_the_scale_of_the_picture() {
    assertThat(SectionGrips.rounded(1.2345, 0.03, 1)).isCloseTo(1.23, within(1e-12));
    assertThat(SectionGrips.rounded(1.2345, 0.3, 1)).isCloseTo(1.2, within(1e-12));
    assertThat(SectionGrips.rounded(25.4 * 0.1234, 0.03, 25.4))
        .isCloseTo(25.4 * 0.123, within(1e-12));
  }
}
