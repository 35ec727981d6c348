package flankfit.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Places nearest to planes, against geometry of the plane and the line (elementary). */
class QefTest {
  private static final double CLOSE = 1e-12;

  private final Qef qef = new Qef();

  private void assertPlace(double x, double y, double z) {
    assertThat(qef.answer(0)).isCloseTo(x, within(CLOSE));
    assertThat(qef.answer(1)).isCloseTo(y, within(CLOSE));
    assertThat(qef.answer(2)).isCloseTo(z, within(CLOSE));
  }

  @Test
  void without_planes_the_base_stays() {
    qef.clear(1, -2, 3);
    assertThat(qef.solve(0.1)).isZero();
    assertPlace(1, -2, 3);
    qef.clear(1, -2, 3);
    assertThat(qef.solveMeeting(0.1)).isZero();
    assertPlace(1, -2, 3);
  }

  @Test
  void of_one_plane_the_foot_of_the_base_is_nearest() {
    qef.clear(1, 2, 3);
    qef.add(5, 5, 0, 0.6, 0, 0.8);
    assertThat(qef.solve(0.1)).isEqualTo(1);
    // 0.6 (1 - 5) + 0.8 * 3 = 0: the base lies on the plane.
    assertPlace(1, 2, 3);
    qef.clear(1, 2, 8);
    qef.add(5, 5, 0, 0.6, 0, 0.8);
    assertThat(qef.solve(0.1)).isEqualTo(1);
    assertPlace(1 - 4 * 0.6, 2, 8 - 4 * 0.8);
  }

  @Test
  void of_two_planes_the_foot_on_their_line() {
    for (boolean meeting : new boolean[] {false, true}) {
      qef.clear(3, 4, 5);
      qef.add(1, 0, 0, 1, 0, 0);
      qef.add(0, 2, 0, Math.sqrt(0.5), Math.sqrt(0.5), 0);
      assertThat(meeting ? qef.solveMeeting(0.1) : qef.solve(0.1)).isEqualTo(2);
      assertPlace(1, 1, 5);
    }
  }

  @Test
  void three_planes_meet_in_a_point_however_they_lie() {
    double[][] normals = {{0.36, 0.48, 0.8}, {0.8, -0.6, 0}, {0.48, 0.64, -0.6}};
    qef.clear(0.5, 0.5, 0.5);
    for (double[] n : normals) {
      qef.add(7, -3, 2, n[0], n[1], n[2]);
    }
    assertThat(qef.solve(1e-3)).isEqualTo(3);
    assertPlace(7, -3, 2);
  }

  @Test
  void the_same_plane_many_times_is_one() {
    qef.clear(0, 0, 10);
    for (int i = 0; i < 40; i++) {
      qef.add(i, -i, 4, 0, 0, 1);
    }
    assertThat(qef.solve(1e-9)).isEqualTo(1);
    assertPlace(0, 0, 4);
  }

  @Test
  void a_direction_of_which_little_is_said_is_left_on_the_asked_side_of_the_limit() {
    // Two planes that turn by 2 * 0.1 rad about X: eigenvalues 2 sin² 0.1 and 2 cos² 0.1.
    double share = Math.pow(Math.tan(0.1), 2);
    for (double factor : new double[] {0.99, 1.01}) {
      qef.clear(0, 3, 3);
      qef.add(0, 0, 0, 0, Math.sin(0.1), Math.cos(0.1));
      qef.add(0, 0, 0, 0, -Math.sin(0.1), Math.cos(0.1));
      boolean both = factor < 1;
      assertThat(qef.solve(factor * share)).isEqualTo(both ? 2 : 1);
      assertPlace(0, both ? 0 : 3, 0);
    }
  }

  @Test
  void along_the_edge_of_a_slightly_curved_face_the_weakest_direction_is_left() {
    // Beside the second direction the third counts for little, beside the first for less.
    double turn = 0.2;
    for (double truncation : new double[] {0.001, 0.1}) {
      qef.clear(0, 0, 6);
      qef.add(0, 0, 0, 1, 0, 0);
      qef.add(0, 0, 0, 0, Math.cos(turn), Math.sin(turn));
      qef.add(0, 0, 0, 0, Math.cos(turn), -Math.sin(turn));
      boolean all = truncation < 0.01;
      assertThat(qef.solveMeeting(truncation)).isEqualTo(all ? 3 : 2);
      assertPlace(0, 0, all ? 0 : 6);
    }
  }
}
