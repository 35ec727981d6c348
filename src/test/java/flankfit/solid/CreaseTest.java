package flankfit.solid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Creases stand where faces meet: distances by the definitions of the bodies. */
class CreaseTest {
  private static final Meshing PLAIN = new Meshing(2, 0, Halt.NEVER);

  private interface Distance {
    double of(double x, double y, double z);
  }

  private static double farthest(Mesh mesh, Distance distance) {
    double most = 0;
    for (int i = 0; i < mesh.creaseCount(); i++) {
      for (int end = 0; end < 2; end++) {
        int v = mesh.creaseVertex(i, end);
        most = Math.max(most, distance.of(mesh.x(v), mesh.y(v), mesh.z(v)));
      }
    }
    return most;
  }

  private static double length(Mesh mesh) {
    ToDoubleFunction<Integer> one =
        i -> {
          int a = mesh.creaseVertex(i, 0);
          int b = mesh.creaseVertex(i, 1);
          return Math.sqrt(
              Math.pow(mesh.x(a) - mesh.x(b), 2)
                  + Math.pow(mesh.y(a) - mesh.y(b), 2)
                  + Math.pow(mesh.z(a) - mesh.z(b), 2));
        };
    double sum = 0;
    for (int i = 0; i < mesh.creaseCount(); i++) {
      sum += one.applyAsDouble(i);
    }
    return sum;
  }

  @Test
  void edges_of_a_turned_wedge_are_met_to_a_nanometre() {
    double c = Math.cos(0.3);
    double s = Math.sin(0.3);
    Shape[] sides = {
      Shape.plane(c, s, 0, 0.83),
      Shape.plane(-s, c, 0, 0.71),
      Shape.plane(-0.6, -0.64, 0.48, 0.55),
      Shape.plane(0, 0.6, 0.8, 0.77),
      Shape.plane(0.36, -0.48, -0.8, 0.66)
    };
    Mesh mesh = PLAIN.mesh(ShapeSolid.uniform(Shape.both(sides), -4, 8, 64));
    MeshChecks.assertClosed(mesh);
    // at the sharp tip vertices of neighbouring leaves change places along a crease
    assertThat(MeshChecks.backward(mesh)).isLessThan(1e-3);
    assertThat(mesh.creaseCount()).isGreaterThan(50);
    assertThat(
            farthest(
                mesh,
                (x, y, z) -> {
                  // on two planes at least: the second smallest distance
                  double first = 9;
                  double second = 9;
                  for (Shape side : sides) {
                    double off = Math.abs(side.at(x, y, z));
                    if (off < first) {
                      second = first;
                      first = off;
                    } else {
                      second = Math.min(second, off);
                    }
                  }
                  return second;
                }))
        .isLessThan(1e-6);
  }

  @Test
  void rim_of_a_hole_is_a_circle() {
    double r = 0.317;
    double cell = 4.0 / 64;
    Shape body =
        Shape.minus(
            Shape.both(Shape.plane(0, 0, 1, 0.52), Shape.sphere(0, 0, 0.2, 1.3)),
            Shape.both(Shape.cylinder(2, 0.013, 0.021, 0, r), Shape.plane(0, 0, -1, 0.1)));
    Mesh mesh = PLAIN.mesh(ShapeSolid.uniform(body, -2, 4, 64));
    MeshChecks.assertClosed(mesh);
    double big = Math.sqrt(1.3 * 1.3 - 0.32 * 0.32);
    assertThat(
            farthest(
                mesh,
                (x, y, z) -> {
                  double rim = Math.abs(Math.hypot(x - 0.013, y - 0.021) - r);
                  double mouth = Math.hypot(rim, z - 0.52);
                  double floor = Math.hypot(rim, z + 0.1);
                  double outer = Math.hypot(Math.hypot(x, y) - big, z - 0.52);
                  return Math.min(mouth, Math.min(floor, outer));
                }))
        .isLessThan(0.01 * cell * cell / (8 * r));
    double circles = 2 * Math.PI * (2 * r + big);
    assertThat(length(mesh)).isBetween(0.99 * circles, circles);
  }

  @Test
  void crest_and_root_of_a_thread_are_helices() {
    double pitch = 0.8;
    double tangent = Math.tan(Math.toRadians(30));
    double root = 1.5;
    double minor = 1.5 - 0.6;
    Shape groove =
        Shape.both(
            Shape.flank(1, pitch, root, tangent, minor / 2),
            Shape.flank(-1, pitch, root, tangent, minor / 2),
            Shape.not(Shape.cylinder(2, 0, 0, 0, minor / 2)));
    Shape body =
        Shape.minus(
            Shape.block(-2, -2, -1.1, 2, 2, 1.03),
            Shape.cylinder(2, 0, 0, 0, minor).madeBy(1),
            groove.madeBy(2));
    double cell = 6.0 / 128;
    Mesh mesh =
        PLAIN.mesh(
            new ShapeSolid(
                body,
                ShapeCells.of(
                    body,
                    -3.007,
                    -3.011,
                    -3.013,
                    6,
                    128,
                    (x, y, z) -> Math.hypot(x, y) < 1.7 ? 1 : 4)));
    MeshChecks.assertClosed(mesh);
    assertThat(MeshChecks.backward(mesh)).isLessThan(1e-4);
    int inner = 0;
    double most = 0;
    for (int i = 0; i < mesh.creaseCount(); i++) {
      for (int end = 0; end < 2; end++) {
        int v = mesh.creaseVertex(i, end);
        double z = mesh.z(v);
        double r = Math.hypot(mesh.x(v), mesh.y(v));
        if (Math.abs(z) < 0.9 && r < 1.7) {
          inner++;
          double turn = z - pitch / (2 * Math.PI) * Math.atan2(mesh.y(v), mesh.x(v));
          double along = Math.abs(turn - pitch * Math.rint(turn / pitch));
          double atRoot = Math.hypot(r - root, along);
          double atCrest = Math.hypot(r - minor, along - (root - minor) * tangent);
          most = Math.max(most, Math.min(atRoot, atCrest));
        }
      }
    }
    assertThat(inner).isGreaterThan(500);
    assertThat(most).isLessThan(cell * cell / (8 * minor));
  }
}
