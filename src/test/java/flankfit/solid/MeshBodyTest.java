package flankfit.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** Stock from mesh files: the place of any point, and what is refused. */
class MeshBodyTest {
  private static final int MOST = 1_000_000;

  private static MeshBody read(byte[] bytes) throws MeshFileException {
    return MeshBody.read(new ByteArrayInputStream(bytes), "casting.stl", MOST);
  }

  /** Twelve triangles of a block; outward. */
  private static List<Vector3D[]> block(
      double x0, double y0, double z0, double x1, double y1, double z1) {
    Vector3D[] v = new Vector3D[8];
    for (int i = 0; i < 8; i++) {
      v[i] = Vector3D.of((i & 1) == 0 ? x0 : x1, (i & 2) == 0 ? y0 : y1, (i & 4) == 0 ? z0 : z1);
    }
    int[][] quads = {
      {0, 2, 3, 1}, {4, 5, 7, 6}, {0, 1, 5, 4}, {2, 6, 7, 3}, {0, 4, 6, 2}, {1, 3, 7, 5}
    };
    List<Vector3D[]> all = new ArrayList<>();
    for (int[] q : quads) {
      all.add(new Vector3D[] {v[q[0]], v[q[1]], v[q[2]]});
      all.add(new Vector3D[] {v[q[0]], v[q[2]], v[q[3]]});
    }
    return all;
  }

  /** Text STL as commonly written; from memory. */
  private static byte[] text(List<Vector3D[]> facets) {
    StringBuilder all = new StringBuilder("solid casting\n");
    for (Vector3D[] f : facets) {
      all.append("  facet normal 0 0 0\n    outer loop\n");
      for (Vector3D v : f) {
        all.append("      vertex ").append(v.getX()).append(' ').append(v.getY()).append(' ');
        all.append(v.getZ()).append('\n');
      }
      all.append("    endloop\n  endfacet\n");
    }
    return all.append("endsolid casting\n").toString().getBytes(StandardCharsets.US_ASCII);
  }

  private static byte[] binary(Mesh mesh) throws IOException {
    ByteArrayOutputStream to = new ByteArrayOutputStream();
    StlFile.write(mesh, to);
    return to.toByteArray();
  }

  @Test
  void block_of_text_knows_distances_and_sides() throws MeshFileException {
    MeshBody body = read(text(block(-1, -2, -3, 4, 5, 6)));
    assertThat(body.facetCount()).isEqualTo(12);
    assertThat(body.volume()).isCloseTo(5 * 7 * 9, within(1e-9));
    assertThat(body.low(2)).isEqualTo(-3);
    assertThat(body.high(1)).isEqualTo(5);
    Shape exact = Shape.block(-1, -2, -3, 4, 5, 6);
    Random random = new Random(5);
    for (int i = 0; i < 3000; i++) {
      double x = -4 + 11 * random.nextDouble();
      // on the grid of the corners, too: rays then pass through edges and vertices
      double y = i % 3 == 0 ? random.nextInt(9) - 3 : -4 + 11 * random.nextDouble();
      double z = i % 3 == 0 ? random.nextInt(11) - 4 : -4 + 11 * random.nextDouble();
      double bound = exact.at(x, y, z);
      double value = body.value(x, y, z);
      if (bound < 0) {
        assertThat(value).isCloseTo(bound, within(1e-12));
      } else {
        double dx = Math.max(0, Math.max(-1 - x, x - 4));
        double dy = Math.max(0, Math.max(-2 - y, y - 5));
        double dz = Math.max(0, Math.max(-3 - z, z - 6));
        assertThat(value).isCloseTo(Math.sqrt(dx * dx + dy * dy + dz * dz), within(1e-12));
      }
    }
  }

  @Test
  void mesh_of_a_bored_body_agrees_with_the_body() throws IOException, MeshFileException {
    Shape bored =
        Shape.minus(
            Shape.block(-10.3, -9.1, -8.2, 15.1, 9.3, 6.1),
            Shape.cylinder(2, 3.13, 0.21, 0, 4.1),
            Shape.cylinder(0, 0, 0.1, -1, 2.2));
    ShapeSolid solid = ShapeSolid.uniform(bored, -16, 32, 64);
    Mesh mesh = new Meshing(2, 0, Halt.NEVER).mesh(solid);
    MeshBody body = read(binary(mesh));
    assertThat(body.volume()).isCloseTo(mesh.volume(), within(1e-5 * mesh.volume()));
    Random random = new Random(7);
    Crossing crossing = new Crossing();
    int crossings = 0;
    for (int i = 0; i < 2000; i++) {
      double x = -12 + 28 * random.nextDouble();
      double y = -11 + 22 * random.nextDouble();
      double z = -10 + 18 * random.nextDouble();
      double exact = bored.at(x, y, z);
      double value = body.value(x, y, z);
      // chords of 0.5 mm stand off a radius of 2.2 mm by a hundredth
      if (Math.abs(exact) > 0.05) {
        assertThat(value < 0).as("%f %f %f", x, y, z).isEqualTo(exact < 0);
      }
      if (exact < 0) {
        assertThat(value).isCloseTo(exact, within(0.05));
        double ax = x + 40 * (random.nextDouble() - 0.5);
        double ay = y + 40 * (random.nextDouble() - 0.5);
        double az = z + 40;
        body.crossing(x, y, z, ax, ay, az, crossing);
        assertThat(bored.at(crossing.x(), crossing.y(), crossing.z())).isCloseTo(0, within(0.03));
        assertThat(body.value(crossing.x(), crossing.y(), crossing.z())).isCloseTo(0, within(1e-9));
        assertThat(
                crossing.normalX() * (ax - x)
                    + crossing.normalY() * (ay - y)
                    + crossing.normalZ() * (az - z))
            .isPositive();
        assertThat(crossing.maker()).isEqualTo(Crossing.STOCK);
        crossings++;
      }
    }
    assertThat(crossings).isGreaterThan(300);
  }

  @Test
  void segment_into_metal_is_refused() throws MeshFileException {
    MeshBody body = read(text(block(0, 0, 0, 1, 1, 1)));
    assertThatThrownBy(() -> body.crossing(0.5, 0.5, 0.5, 0.6, 0.6, 0.6, new Crossing()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static MeshFileException refused(byte[] bytes) {
    try {
      read(bytes);
    } catch (MeshFileException e) {
      assertThat(e.what()).contains("casting.stl");
      assertThat(e.why()).isNotBlank();
      assertThat(e.fix()).isNotBlank();
      return e;
    }
    throw new AssertionError("was taken");
  }

  @Test
  void open_mesh_is_refused_with_its_first_edge() {
    List<Vector3D[]> facets = block(0, 0, 0, 10, 10, 10);
    facets.remove(11);
    assertThat(refused(text(facets)).what())
        .contains("not closed: 3 edges")
        .contains("from X10.000 Y0.000 Z10.000 to X10.000 Y10.000 Z10.000");
  }

  @Test
  void one_turned_facet_is_refused() {
    List<Vector3D[]> facets = block(0, 0, 0, 10, 10, 10);
    Vector3D[] f = facets.get(0);
    facets.set(0, new Vector3D[] {f[0], f[2], f[1]});
    assertThat(refused(text(facets)).what()).contains("face opposite ways beside 3 edges");
  }

  @Test
  void inside_out_is_refused() {
    List<Vector3D[]> facets = new ArrayList<>();
    for (Vector3D[] f : block(0, 0, 0, 10, 10, 10)) {
      facets.add(new Vector3D[] {f[0], f[2], f[1]});
    }
    assertThat(refused(text(facets)).what()).contains("inside out").contains("-1000.000");
  }

  @Test
  void overlapping_bodies_are_refused() {
    List<Vector3D[]> facets = block(0, 0, 0, 10, 10, 10);
    facets.addAll(block(5, 5.5, 5.25, 15, 16, 17));
    assertThat(refused(text(facets)).what()).contains("crosses itself");
  }

  @Test
  void apart_bodies_and_a_cavity_are_taken() throws MeshFileException {
    List<Vector3D[]> facets = block(0, 0, 0, 10, 10, 10);
    facets.addAll(block(12, 0, 0, 15, 3, 3));
    for (Vector3D[] f : block(2, 2, 2, 4, 4, 4)) {
      facets.add(new Vector3D[] {f[0], f[2], f[1]});
    }
    MeshBody body = read(text(facets));
    assertThat(body.volume()).isCloseTo(1000 + 27 - 8, within(1e-9));
    assertThat(body.value(3, 3, 3)).isCloseTo(1, within(1e-12));
    assertThat(body.value(13, 1, 1)).isCloseTo(-1, within(1e-12));
    assertThat(body.value(11, 1, 1)).isCloseTo(1, within(1e-12));
    assertThat(body.value(1, 5, 5)).isCloseTo(-1, within(1e-12));
  }

  @Test
  void what_is_no_stl_is_refused() throws IOException {
    assertThat(refused(new byte[0]).what()).contains("no facet");
    assertThat(refused("G21 G90\n".getBytes(StandardCharsets.US_ASCII)).what()).contains("no STL");
    assertThat(
            refused("solid casting\nfacet normal 0 0 x\n".getBytes(StandardCharsets.US_ASCII))
                .what())
        .contains("no STL");
    assertThat(
            refused("solid casting\nendsolid casting\n".getBytes(StandardCharsets.US_ASCII)).what())
        .contains("no facet");
    byte[] whole =
        binary(
            new Meshing(1, 0, Halt.NEVER)
                .mesh(ShapeSolid.uniform(Shape.sphere(0, 0, 0, 1), -1.5, 3, 8)));
    byte[] cut = Arrays.copyOf(whole, whole.length - 10);
    assertThat(refused(cut).what()).contains("cut off");
    byte[] random = new byte[5000];
    new Random(3).nextBytes(random);
    assertThat(refused(random).what()).contains("no STL");
  }

  @Test
  void sizes_that_no_machine_holds_are_refused() {
    assertThat(refused(text(block(0, 0, 0, 20_000, 10, 10))).what()).contains("20000.000");
    assertThat(refused(text(block(0, 0, 0, 0.002, 0.004, 0.003))).what())
        .contains("measures 0.002");
    assertThatThrownBy(
            () ->
                MeshBody.read(
                    new ByteArrayInputStream(text(block(0, 0, 0, 9, 9, 9))), "casting.stl", 11))
        .isInstanceOf(MeshFileException.class)
        .hasMessageContaining("11 facets are allowed");
  }

  @Test
  void binary_that_begins_with_solid_is_taken() throws IOException, MeshFileException {
    byte[] bytes =
        binary(
            new Meshing(1, 0, Halt.NEVER)
                .mesh(ShapeSolid.uniform(Shape.block(0, 0, 0, 1, 1, 1), -0.6, 2.2, 8)));
    byte[] name = "solid of some modeller".getBytes(StandardCharsets.US_ASCII);
    System.arraycopy(name, 0, bytes, 0, name.length);
    assertThat(read(bytes).volume()).isCloseTo(1, within(1e-6));
  }

  @Test
  void corners_that_differ_in_the_last_digit_are_one() throws MeshFileException {
    StringBuilder all = new StringBuilder("solid s\n");
    int digit = 0;
    for (Vector3D[] f : block(100.1, 0, 0, 110.3, 10, 10)) {
      all.append("facet normal 0 0 0\nouter loop\n");
      for (Vector3D v : f) {
        digit = (digit + 1) % 3;
        all.append(
            String.format(
                Locale.ROOT,
                "vertex %.7f %.6f %.6f%n",
                v.getX() + 4e-6 * digit,
                v.getY(),
                v.getZ()));
      }
      all.append("endloop\nendfacet\n");
    }
    all.append("endsolid s\n");
    MeshBody body = read(all.toString().getBytes(StandardCharsets.US_ASCII));
    assertThat(body.volume()).isCloseTo(1020, within(1e-2));
  }
}
