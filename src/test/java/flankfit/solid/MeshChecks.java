package flankfit.solid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** What any closed surface has to be. */
final class MeshChecks {
  private MeshChecks() {}

  /** Every edge joins two triangles that run along it in opposite senses. */
  static void assertClosed(Mesh mesh) {
    Map<Long, Integer> directed = new HashMap<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      for (int c = 0; c < 3; c++) {
        int a = mesh.vertex(t, c);
        int b = mesh.vertex(t, (c + 1) % 3);
        assertThat(a).as("triangle %d uses a vertex twice", t).isNotEqualTo(b);
        directed.merge((long) a << 32 | b, 1, Integer::sum);
      }
    }
    directed.forEach(
        (edge, uses) -> {
          if (uses != 1 || !Integer.valueOf(1).equals(directed.get(edge << 32 | edge >>> 32))) {
            throw new AssertionError(
                "edge "
                    + (edge >>> 32)
                    + " to "
                    + edge.intValue()
                    + " is used "
                    + uses
                    + " times, backwards "
                    + directed.get(edge << 32 | edge >>> 32));
          }
        });
    assertOneFan(mesh);
  }

  /** The triangles round each vertex are one ring. */
  private static void assertOneFan(Mesh mesh) {
    Map<Integer, Map<Integer, Integer>> next = new HashMap<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      for (int c = 0; c < 3; c++) {
        next.computeIfAbsent(mesh.vertex(t, c), v -> new HashMap<>())
            .put(mesh.vertex(t, (c + 1) % 3), mesh.vertex(t, (c + 2) % 3));
      }
    }
    next.forEach(
        (vertex, ring) -> {
          int start = ring.keySet().iterator().next();
          int at = ring.get(start);
          int steps = 1;
          while (at != start) {
            at = ring.get(at);
            steps++;
          }
          assertThat(steps).as("ring of vertex %d", vertex).isEqualTo(ring.size());
        });
  }

  /** Vertices less edges plus faces. */
  static int euler(Mesh mesh) {
    Set<Integer> vertices = new HashSet<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      for (int c = 0; c < 3; c++) {
        vertices.add(mesh.vertex(t, c));
      }
    }
    return vertices.size() - mesh.triangleCount() / 2;
  }

  /** Share of area in triangles that face away from the normals of all their points (1). */
  static double backward(Mesh mesh) {
    double sum = 0;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      int a = mesh.vertex(t, 0);
      int b = mesh.vertex(t, 1);
      int c = mesh.vertex(t, 2);
      double ux = mesh.x(b) - mesh.x(a);
      double uy = mesh.y(b) - mesh.y(a);
      double uz = mesh.z(b) - mesh.z(a);
      double vx = mesh.x(c) - mesh.x(a);
      double vy = mesh.y(c) - mesh.y(a);
      double vz = mesh.z(c) - mesh.z(a);
      double nx = uy * vz - uz * vy;
      double ny = uz * vx - ux * vz;
      double nz = ux * vy - uy * vx;
      double best = -1;
      double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
      for (int k = 0; k < 3; k++) {
        int p = mesh.point(t, k);
        best = Math.max(best, nx * mesh.normalX(p) + ny * mesh.normalY(p) + nz * mesh.normalZ(p));
      }
      if (best < -1e-9 * length) {
        sum += length / 2;
      }
    }
    return sum / mesh.area();
  }
}
