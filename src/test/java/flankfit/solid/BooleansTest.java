package flankfit.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.ConvexVolume;
import org.apache.commons.geometry.euclidean.threed.Plane;
import org.apache.commons.geometry.euclidean.threed.Planes;
import org.apache.commons.geometry.euclidean.threed.RegionBSPTree3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Volumes and areas against mesh booleans of a general geometry library (binary space partitions of
 * org.apache.commons:commons-geometry-euclidean 1.0). Cutters that are round are sampled as the
 * same polygons on both sides.
 */
class BooleansTest {
  private static final Precision.DoubleEquivalence NEAR =
      Precision.doubleEquivalenceOfEpsilon(1e-9);

  /** Planes as normal and offset; a convex body below all of them. */
  private record Convex(List<double[]> planes) {
    Shape shape() {
      return Shape.both(
          planes.stream().map(p -> Shape.plane(p[0], p[1], p[2], p[3])).toArray(Shape[]::new));
    }

    RegionBSPTree3D tree() {
      List<Plane> all = new ArrayList<>();
      for (double[] p : planes) {
        Vector3D n = Vector3D.of(p[0], p[1], p[2]);
        all.add(Planes.fromPointAndNormal(n.multiply(p[3]), n, NEAR));
      }
      return ConvexVolume.fromBounds(all).toTree();
    }
  }

  /** A frustum of so many sides about a line, its planes tilted by a taper, between two heights. */
  private static Convex frustum(
      int sides,
      double cx,
      double cy,
      double radius,
      double taper,
      double low,
      double high,
      Vector3D u,
      Vector3D v) {
    Vector3D w = u.cross(v);
    List<double[]> planes = new ArrayList<>();
    for (int i = 0; i < sides; i++) {
      double angle = 2 * Math.PI * (i + 0.3) / sides;
      Vector3D n =
          u.multiply(Math.cos(angle) * Math.cos(taper))
              .add(v.multiply(Math.sin(angle) * Math.cos(taper)))
              .subtract(w.multiply(Math.sin(taper)));
      Vector3D at =
          u.multiply(cx + radius * Math.cos(angle))
              .add(v.multiply(cy + radius * Math.sin(angle)))
              .add(w.multiply(high));
      planes.add(new double[] {n.getX(), n.getY(), n.getZ(), n.dot(at)});
    }
    planes.add(new double[] {w.getX(), w.getY(), w.getZ(), high});
    planes.add(new double[] {-w.getX(), -w.getY(), -w.getZ(), -low});
    return new Convex(planes);
  }

  private static Convex upright(
      int sides, double cx, double cy, double radius, double taper, double low, double high) {
    return frustum(
        sides, cx, cy, radius, taper, low, high, Vector3D.Unit.PLUS_X, Vector3D.Unit.PLUS_Y);
  }

  private static Convex tilted(int sides, double radius, double low, double high) {
    Vector3D u = Vector3D.of(0.8, 0.36, 0.48);
    Vector3D v = u.cross(Vector3D.of(0.1, 0.9, 0.3)).normalize();
    return frustum(sides, 0.11, -0.07, radius, 0, low, high, u, v);
  }

  private static final Convex BLOCK =
      new Convex(
          List.of(
              new double[] {1, 0, 0, 1.51}, new double[] {-1, 0, 0, 1.53},
              new double[] {0, 1, 0, 1.03}, new double[] {0, -1, 0, 0.97},
              new double[] {0, 0, 1, 0.61}, new double[] {0, 0, -1, 0.72}));

  private record Part(String name, Convex stock, List<Convex> gone) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Part> parts() {
    return Stream.of(
        new Part("square pocket", BLOCK, List.of(upright(4, 0.2, 0.1, 0.55, 0, -0.13, 0.9))),
        new Part("hole of 12 sides", BLOCK, List.of(upright(12, 0.2, 0.1, 0.61, 0, -0.9, 0.9))),
        new Part(
            "hole and countersink of 12 sides",
            BLOCK,
            List.of(
                upright(12, 0.2, 0.1, 0.41, 0, -0.9, 0.9),
                upright(12, 0.2, 0.1, 0.92, Math.toRadians(45), 0.1, 0.61 + 0.07))),
        new Part("tilted cross hole", BLOCK, List.of(tilted(6, 0.43, -3, 3))),
        new Part(
            "pockets that open into each other",
            BLOCK,
            List.of(
                upright(5, -0.6, 0.1, 0.52, 0, -0.13, 0.9),
                upright(4, 0.13, 0.05, 0.46, 0.1, -0.41, 0.9))),
        new Part(
            "turned bar, end cut off",
            tilted(8, 0.71, -1.2, 1.1),
            List.of(upright(4, 1.2, 0.1, 0.82, 0, -3, 3))));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("parts")
  void volume_and_area_are_those_of_the_booleans(Part part) {
    RegionBSPTree3D tree = part.stock().tree();
    for (Convex gone : part.gone()) {
      tree.difference(gone.tree());
    }
    Shape shape =
        Shape.minus(
            part.stock().shape(), part.gone().stream().map(Convex::shape).toArray(Shape[]::new));
    Mesh mesh = new Meshing(2, 0, Halt.NEVER).mesh(ShapeSolid.uniform(shape, -2.13, 4.2, 128));
    MeshChecks.assertClosed(mesh);
    // faces are plane and no leaf holds two edges of the body, so nothing is rounded off
    assertThat(mesh.volume()).isCloseTo(tree.getSize(), within(1e-10 * tree.getSize()));
    assertThat(mesh.area())
        .isCloseTo(tree.getBoundarySize(), within(1e-10 * tree.getBoundarySize()));
  }
}
