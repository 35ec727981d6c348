package flankfit.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.metal.CellVolume.Surface;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Shares of a cell, against the volumes of boxes and tetrahedra (elementary geometry). */
class CellVolumeTest {
  /** What the weight of the middle against the planes costs (1). */
  private static final double WEIGHED = 2e-6;

  private static final double EXACT = 1e-15;
  private static final int ALL = 255;

  private double bulge = 1;
  private final CellVolume cell = new CellVolume((ax, ay, az, bx, by, bz) -> bulge);

  /** Crosses the edges between unlike corners at one share from the lower end, a direction each. */
  private void cross(int metal, double share, double[]... directions) {
    for (int e = 0; e < CellVolume.EDGES; e++) {
      int from = CellVolume.from(e);
      int axis = e >> 2;
      if ((metal >> from & 1) != (metal >> (from | 1 << axis) & 1)) {
        cell.cross(e, share);
        cell.direct(e, directions[axis], 0);
      }
    }
  }

  private static double[] v(double x, double y, double z) {
    return new double[] {x, y, z};
  }

  @ParameterizedTest
  @EnumSource(Surface.class)
  void without_surface_a_cell_is_all_metal_or_none(Surface surface) {
    assertThat(cell.share(0, surface)).isZero();
    assertThat(cell.share(ALL, surface)).isEqualTo(1);
  }

  @ParameterizedTest
  @EnumSource(Surface.class)
  void a_plane_across_leaves_its_share_from_either_side_along_each_axis(Surface surface) {
    int[] lows = {0x55, 0x33, 0x0f};
    for (int axis = 0; axis < 3; axis++) {
      for (double share : new double[] {0, 1e-9, 0.3, 1}) {
        double[] n = v(axis == 0 ? 1 : 0, axis == 1 ? 1 : 0, axis == 2 ? 1 : 0);
        cross(lows[axis], share, n, n, n);
        assertThat(cell.share(lows[axis], surface)).isCloseTo(share, within(EXACT));
        assertThat(cell.share(ALL ^ lows[axis], surface)).isCloseTo(1 - share, within(EXACT));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Surface.class)
  void a_plane_before_a_corner_leaves_a_tetrahedron(Surface surface) {
    double a = Math.sqrt(1.0 / 3);
    cross(1, 0.6, v(a, a, a), v(a, a, a), v(a, a, a));
    double volume = 0.6 * 0.6 * 0.6 / 6;
    assertThat(cell.share(1, surface)).isCloseTo(volume, within(EXACT));
    assertThat(cell.share(ALL ^ 1, surface)).isCloseTo(1 - volume, within(EXACT));
  }

  @Test
  void three_faces_meet_in_the_corner_of_a_box() {
    cross(1, 0.4, v(1, 0, 0), v(0, 1, 0), v(0, 0, 1));
    assertThat(cell.share(1, Surface.CREASED)).isCloseTo(0.064, within(WEIGHED));
    // Nothing rounds the corner off when the surface lies no nearer than the end of the way.
    assertThat(cell.share(1, Surface.ROUNDED)).isCloseTo(0.064, within(WEIGHED));
    assertThat(cell.share(ALL ^ 1, Surface.CREASED)).isCloseTo(1 - 0.064, within(WEIGHED));
    assertThat(cell.share(1, Surface.FLAT)).isCloseTo(0.064 / 6, within(EXACT));
  }

  @Test
  void two_faces_meet_in_an_edge() {
    int metal = 0x11;
    cross(metal, 0.4, v(1, 0, 0), v(0, 1, 0), v(0, 0, 1));
    assertThat(cell.share(metal, Surface.CREASED)).isCloseTo(0.16, within(WEIGHED));
    assertThat(cell.share(metal, Surface.FLAT)).isCloseTo(0.08, within(EXACT));
    // Between the secants' volume and the tangents' two thirds are metal.
    assertThat(cell.share(metal, Surface.SMOOTH)).isCloseTo(0.08 * (1 + 2.0 / 3), within(WEIGHED));
  }

  @Test
  void a_round_lies_between_its_secant_and_its_corner_without_a_step() {
    int metal = 0x11;
    cross(metal, 0.4, v(1, 0, 0), v(0, 1, 0), v(0, 0, 1));
    double before = 0;
    for (int i = 0; i <= 100; i++) {
      bulge = i / 100.0;
      double share = cell.share(metal, Surface.ROUNDED);
      assertThat(share).isBetween(0.08 - WEIGHED, 0.16 + WEIGHED);
      assertThat(share - before).isBetween(i == 0 ? 0 : -EXACT, i == 0 ? 1 : 0.0033);
      before = share;
    }
    bulge = 0.5;
    double half = cell.share(metal, Surface.ROUNDED);
    assertThat(half).isCloseTo(cell.share(metal, Surface.SMOOTH), within(WEIGHED));
  }

  @Test
  void metal_at_corners_across_a_face_or_the_cell_stays_apart() {
    double[] any = v(1, 0, 0);
    // Corners 0 and 3 across the low face, 0 and 7 across the cell; half of each edge.
    cross(0x09, 0.5, any, any, any);
    assertThat(cell.share(0x09, Surface.FLAT)).isCloseTo(2 * 0.125 / 6, within(EXACT));
    cross(0x81, 0.5, any, any, any);
    assertThat(cell.share(0x81, Surface.FLAT)).isCloseTo(2 * 0.125 / 6, within(EXACT));
  }
}
