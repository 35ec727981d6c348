package flankfit.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

/**
 * Surfaces of analytic bodies: closed, of the right kind, volume and creases as by closed forms.
 */
class MeshTest {
  private static final Meshing PLAIN = new Meshing(2, 0, Halt.NEVER);

  private static Mesh closed(Shape shape, double low, double side, int cells) {
    Mesh mesh = PLAIN.mesh(ShapeSolid.uniform(shape, low, side, cells));
    MeshChecks.assertClosed(mesh);
    // slivers along creases may: vertices of neighbouring leaves change places there
    assertThat(MeshChecks.backward(mesh)).isLessThan(1e-4);
    return mesh;
  }

  @Test
  void block_is_exact() {
    Mesh mesh = closed(Shape.block(-1.03, -0.71, -0.52, 1.01, 0.93, 0.61), -2, 4, 16);
    assertThat(mesh.volume()).isCloseTo(2.04 * 1.64 * 1.13, within(1e-9));
    assertThat(mesh.area()).isCloseTo(2 * (2.04 * 1.64 + 2.04 * 1.13 + 1.64 * 1.13), within(1e-9));
    assertThat(MeshChecks.euler(mesh)).isEqualTo(2);
  }

  @Test
  void block_whose_faces_lie_on_the_lattice_is_exact() {
    Mesh mesh = closed(Shape.block(-1, -0.75, -0.5, 1, 1, 0.5), -2, 4, 16);
    assertThat(mesh.volume()).isCloseTo(2 * 1.75 * 1, within(1e-9));
  }

  @Test
  void kinds_of_bodies() {
    assertThat(MeshChecks.euler(closed(Shape.sphere(0.02, 0.01, 0.03, 1), -1.5, 3, 16)))
        .isEqualTo(2);
    assertThat(MeshChecks.euler(closed(Shape.torus(0.01, 1, 0.35), -1.5, 3, 32))).isZero();
    Shape bored =
        Shape.minus(
            Shape.block(-1.03, -0.71, -0.52, 1.01, 0.93, 0.61), Shape.cylinder(2, 0, 0, 0, 0.3));
    assertThat(MeshChecks.euler(closed(bored, -2, 4, 32))).isZero();
    Shape crossed = Shape.minus(bored, Shape.cylinder(0, 0, 0.02, 0, 0.2));
    assertThat(MeshChecks.euler(closed(crossed, -2, 4, 64))).isEqualTo(-4);
  }

  @Test
  void under_resolved_noise_on_leaves_of_three_sizes_is_closed() {
    int middles = 0;
    for (int seed = 0; seed < 6; seed++) {
      double f = 5 + 2.1 * seed;
      Shape noise =
          (x, y, z) ->
              2e-4
                  * (Math.sin(f * x + 1)
                      + Math.sin(f * 1.31 * y + 0.3 * f * x)
                      + Math.sin(f * 0.83 * z - 0.4 * f * y)
                      + Math.sin(f * 1.7 * (x + y + z)));
      Shape body = Shape.both(noise, (x, y, z) -> 1e-3 * Shape.sphere(0, 0, 0, 1.4).at(x, y, z));
      SurfaceCells cells =
          ShapeCells.of(
              body,
              -2,
              -2,
              -2,
              4,
              32,
              (x, y, z) -> x + 0.3 * Math.sin(3 * y) > 0.3 ? 1 : x + z > -0.6 ? 2 : 4);
      Mesh mesh = PLAIN.mesh(new ShapeSolid(body, cells));
      MeshChecks.assertClosed(mesh);
      assertThat(mesh.triangleCount()).isGreaterThan(1000);
      GridEdges edges = GridEdges.of(cells, new LeafIndex(cells), new Workers(1, Halt.NEVER));
      Sheets sheets =
          Sheets.of(
              new ShapeSolid(body, cells),
              cells,
              new LeafIndex(cells),
              edges,
              Share.of(cells, edges),
              new Workers(1, Halt.NEVER));
      middles += Polygons.middles(cells, edges, sheets).count();
    }
    // else the rule for sides between the same two vertices has not been tried
    assertThat(middles).isPositive();
  }

  /** Volumes on cells h, h/2, h/4 against a closed form; returns the lowest order seen. */
  private static double order(Shape shape, double volume, double low, double side, int cells) {
    double[] errors = new double[3];
    for (int i = 0; i < 3; i++) {
      errors[i] = Math.abs(closed(shape, low, side, cells << i).volume() - volume);
    }
    assertThat(errors[2]).as("error at the finest").isLessThan(4e-3 * volume);
    return Math.log(errors[0] / errors[2]) / Math.log(4);
  }

  @Test
  void volume_of_sphere_falls_with_the_square_of_the_cell() {
    assertThat(order(Shape.sphere(0.02, 0.01, 0.03, 1), 4 * Math.PI / 3, -1.5, 3, 16))
        .isGreaterThan(1.8);
  }

  @Test
  void volume_of_torus_falls_with_the_square_of_the_cell() {
    // Pappus: area of the tube times the way of its centre
    assertThat(order(Shape.torus(0.01, 1, 0.35), 2 * Math.PI * Math.PI * 0.35 * 0.35, -1.5, 3, 16))
        .isGreaterThan(1.8);
  }

  @Test
  void volume_of_drilled_hole_with_point_and_countersink_falls_with_the_square_of_the_cell() {
    double r = 0.4;
    double tangent = Math.tan(Math.toRadians(59));
    double point = r / tangent;
    Shape drill =
        Shape.both(
            Shape.cylinder(2, 0.013, 0.021, 0, r),
            Shape.cone(0.013, 0.021, -0.5 - point, Math.toRadians(59)));
    double sink = 0.15;
    Shape countersink = Shape.cone(0.013, 0.021, 0.61 - sink - r, Math.toRadians(45));
    Shape body =
        Shape.minus(
            Shape.block(-1.03, -0.71, -1.02, 1.01, 0.93, 0.61),
            drill.madeBy(3),
            countersink.madeBy(4));
    double big = r + sink;
    double volume =
        2.04 * 1.64 * 1.63
            - Math.PI * r * r * (0.61 - sink + 0.5)
            - Math.PI * r * r * point / 3
            - Math.PI * sink * (big * big + big * r + r * r) / 3;
    assertThat(order(body, volume, -2, 4, 32)).isGreaterThan(1.8);
  }

  @Test
  void volume_of_a_threaded_bore_is_right_to_a_thousandth_of_its_groove() {
    double pitch = 0.8;
    double tangent = Math.tan(Math.toRadians(30));
    double root = 1.5;
    double minor = 0.9;
    Shape body =
        Shape.minus(
            Shape.block(-1.9, -1.9, -0.81, 1.9, 1.9, -0.81 + 2 * pitch),
            Shape.cylinder(2, 0, 0, 0, minor),
            Shape.both(
                Shape.flank(1, pitch, root, tangent, minor / 2),
                Shape.flank(-1, pitch, root, tangent, minor / 2),
                Shape.not(Shape.cylinder(2, 0, 0, 0, minor / 2))));
    // Pappus: a helical motion adds to the way of a point in an axial plane only what lies in that
    // plane, so over whole pitches the groove is its axial section times the centroid's circle
    double deep = root - minor;
    double groove = deep * deep * tangent * 2 * Math.PI * (minor + deep / 3);
    double volume = 2 * (pitch * (3.8 * 3.8 - Math.PI * minor * minor) - groove);
    SurfaceCells cells =
        ShapeCells.of(
            body, -3.007, -3.011, -3.013, 6.05, 128, (x, y, z) -> Math.hypot(x, y) < 1.7 ? 1 : 4);
    Mesh mesh = PLAIN.mesh(new ShapeSolid(body, cells));
    MeshChecks.assertClosed(mesh);
    // No order is asked for: where the groove leaves through the ends the ridge runs out into a
    // knife edge thinner than any cell, and what is missed there goes up and down with the lattice.
    assertThat(mesh.volume()).isCloseTo(volume, within(1e-3 * 2 * groove));
  }

  private static Shape housing() {
    Shape drill =
        Shape.both(
            Shape.cylinder(2, 0.313, 0.021, 0, 0.41),
            Shape.cone(0.313, 0.021, -0.7, Math.toRadians(59)));
    return Shape.minus(
        Shape.block(-1.53, -0.91, -1.02, 1.51, 0.93, 0.61),
        drill.madeBy(3),
        Shape.cylinder(1, 0.31, 0, -0.1, 0.17).madeBy(5),
        Shape.sphere(-0.8, 0.1, 0.9, 0.6).madeBy(7),
        Shape.cone(0.313, 0.021, 0.1, Math.toRadians(45)).madeBy(4));
  }

  private static SurfaceCells graded(Shape shape) {
    return ShapeCells.of(
        shape,
        -2.1,
        -2.1,
        -2.1,
        4.2,
        64,
        (x, y, z) -> Math.hypot(x - 0.3, y) < 0.6 ? 1 : x < -1.45 ? 4 : 2);
  }

  @Test
  void leaves_of_three_sizes_leave_no_crack() {
    SurfaceCells cells = graded(housing());
    int sizes = 0;
    for (int leaf = 0; leaf < cells.count(); leaf++) {
      sizes |= cells.size(leaf);
    }
    assertThat(sizes & 7).isEqualTo(7);
    Mesh mesh = PLAIN.mesh(new ShapeSolid(housing(), cells));
    MeshChecks.assertClosed(mesh);
    assertThat(MeshChecks.backward(mesh)).isLessThan(1e-4);
    // a blind bore with a hole across: as a sphere with two handles
    assertThat(MeshChecks.euler(mesh)).isEqualTo(-2);
    double fine = PLAIN.mesh(ShapeSolid.uniform(housing(), -2.1, 4.2, 128)).volume();
    assertThat(mesh.volume()).isCloseTo(fine, within(2e-3 * fine));
  }

  @Test
  void each_triangle_knows_its_maker() {
    Mesh mesh = PLAIN.mesh(new ShapeSolid(housing(), graded(housing())));
    Shape ball = Shape.sphere(-0.8, 0.1, 0.9, 0.6);
    Set<Integer> makers = new TreeSet<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      makers.add(mesh.maker(t));
      for (int c = 0; c < 3 && mesh.maker(t) == 7; c++) {
        int v = mesh.vertex(t, c);
        assertThat(ball.at(mesh.x(v), mesh.y(v), mesh.z(v))).isCloseTo(0, within(1e-5));
      }
    }
    assertThat(makers).containsExactly(-1, 3, 4, 5, 7);
  }

  private static String columns(Mesh mesh) {
    StringBuilder all = new StringBuilder();
    for (int v = 0; v < mesh.vertexCount(); v++) {
      all.append(Double.doubleToLongBits(mesh.x(v))).append(' ');
      all.append(Double.doubleToLongBits(mesh.y(v))).append(' ');
      all.append(Double.doubleToLongBits(mesh.z(v))).append('\n');
    }
    for (int p = 0; p < mesh.pointCount(); p++) {
      all.append(mesh.vertexOf(p)).append(' ').append(mesh.normalX(p)).append(' ');
      all.append(mesh.normalY(p)).append(' ').append(mesh.normalZ(p)).append(' ');
      all.append(mesh.openness(p)).append('\n');
    }
    for (int t = 0; t < mesh.triangleCount(); t++) {
      all.append(mesh.point(t, 0)).append(' ').append(mesh.point(t, 1)).append(' ');
      all.append(mesh.point(t, 2)).append(' ').append(mesh.maker(t)).append('\n');
    }
    for (int i = 0; i < mesh.creaseCount(); i++) {
      all.append(mesh.creaseVertex(i, 0)).append(' ').append(mesh.creaseVertex(i, 1)).append('\n');
    }
    return all.toString();
  }

  @Test
  void threads_do_not_change_a_bit() {
    Solid solid = new ShapeSolid(housing(), graded(housing()));
    String one = columns(new Meshing(1, 0.05, Halt.NEVER).mesh(solid));
    assertThat(columns(new Meshing(2, 0.05, Halt.NEVER).mesh(solid))).isEqualTo(one);
    assertThat(columns(new Meshing(5, 0.05, Halt.NEVER).mesh(solid))).isEqualTo(one);
  }

  @Test
  void order_of_the_leaves_does_not_matter_to_the_shape() {
    ShapeCells cells = (ShapeCells) graded(housing());
    Mesh there = PLAIN.mesh(new ShapeSolid(housing(), cells));
    Mesh back = PLAIN.mesh(new ShapeSolid(housing(), cells.backwards()));
    assertThat(back.triangleCount()).isEqualTo(there.triangleCount());
    assertThat(back.volume()).isCloseTo(there.volume(), within(1e-5));
  }

  @Test
  void air_is_open_over_a_face_and_closed_in_at_the_ground_of_a_bore() {
    Mesh mesh = new Meshing(2, 0.1, Halt.NEVER).mesh(new ShapeSolid(housing(), graded(housing())));
    int top = 0;
    int deep = 255;
    for (int p = 0; p < mesh.pointCount(); p++) {
      int v = mesh.vertexOf(p);
      if (mesh.normalZ(p) > 0.999 && mesh.z(v) > 0.6 && mesh.x(v) > 1.2) {
        top = Math.max(top, mesh.openness(p));
      }
      if (Math.hypot(mesh.x(v) - 0.313, mesh.y(v) - 0.021) < 0.1 && mesh.z(v) < -0.5) {
        deep = Math.min(deep, mesh.openness(p));
      }
    }
    assertThat(top).isEqualTo(255);
    // at the corner of the ground the air is asked for half way between ground and wall
    assertThat(deep).isLessThan(top - 40);
  }

  @Test
  void halting_ends_the_work() {
    Solid solid = ShapeSolid.uniform(Shape.sphere(0, 0, 0, 1), -1.5, 3, 16);
    assertThatThrownBy(() -> new Meshing(2, 0, () -> true).mesh(solid))
        .isInstanceOf(CancellationException.class);
  }

  @Test
  void cells_that_do_not_hold_the_surface_are_told() {
    Shape ball = Shape.sphere(0, 0, 0, 1);
    SurfaceCells part = ShapeCells.of(ball, -0.4, -0.4, -0.4, 1.6, 16, (x, y, z) -> 1);
    assertThatThrownBy(() -> PLAIN.mesh(new ShapeSolid(ball, part)))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("is not listed");
  }
}
