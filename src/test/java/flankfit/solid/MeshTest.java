package flankfit.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Surfaces of analytic bodies: closed, of the right kind, volume and creases as by closed forms.
 */
class MeshTest {
  private static final Meshing PLAIN = new Meshing(2, 0, Halt.NEVER);

  private static Mesh closed(Shape shape, double low, double side, int cells) {
    Mesh mesh = PLAIN.mesh(ShapeSolid.uniform(shape, low, side, cells));
    MeshChecks.assertClosed(mesh);
    assertThat(MeshChecks.backward(mesh)).isZero();
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
}
