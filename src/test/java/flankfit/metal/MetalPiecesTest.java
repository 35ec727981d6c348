package flankfit.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import flankfit.setup.Tool;
import flankfit.solid.Halt;
import flankfit.solid.Mesh;
import flankfit.solid.Meshing;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The surface in pieces: all of it, whichever moment was seen before. */
class MetalPiecesTest {
  private static final double STEP = 0.05;
  private static final double REACH = 0.4;
  private static final Meshing MESHING = new Meshing(1, STEP, Halt.NEVER);

  private static Job job() {
    Tool mill = SampleTools.tool(1, Tool.Kind.END_MILL, 4, 20);
    Job job = new Job().block(-8, -6, -6, 8, 6, 0);
    job.take(mill).rapid(-12, -2, -2).line(12, -2, -2).rapid(12, -2, 5);
    job.rapid(4, 3, 5).line(4, 3, 0).line(-4, 3, -3).rapid(-4, 3, 5);
    job.take(SampleTools.threadMill(2, 3, 2, 1.0)).rapid(1, 0, 5).line(1, 0, -5);
    return job.arc(0, 0, 2 * Math.PI, -4).line(0, 0, -4).rapid(0, 0, 20);
  }

  /** Triangles as numbers that say all of them, in an order of their own. */
  private static List<long[]> triangles(Iterable<Mesh> meshes) {
    List<long[]> all = new ArrayList<>();
    for (Mesh mesh : meshes) {
      for (int t = 0; t < mesh.triangleCount(); t++) {
        long[] one = new long[1 + 3 * 7];
        one[0] = mesh.maker(t);
        for (int k = 0; k < 3; k++) {
          int p = mesh.point(t, k);
          int v = mesh.vertexOf(p);
          int at = 1 + 7 * k;
          one[at] = Double.doubleToLongBits(mesh.x(v));
          one[at + 1] = Double.doubleToLongBits(mesh.y(v));
          one[at + 2] = Double.doubleToLongBits(mesh.z(v));
          one[at + 3] = Float.floatToIntBits(mesh.normalX(p));
          one[at + 4] = Float.floatToIntBits(mesh.normalY(p));
          one[at + 5] = Float.floatToIntBits(mesh.normalZ(p));
          one[at + 6] = mesh.openness(p);
        }
        all.add(one);
      }
    }
    all.sort(Comparator.comparing((long[] a) -> Arrays.hashCode(a)).thenComparing(Arrays::compare));
    return all;
  }

  private static void assertSame(Iterable<Mesh> some, Iterable<Mesh> others) {
    List<long[]> a = triangles(some);
    List<long[]> b = triangles(others);
    assertThat(a).hasSameSizeAs(b);
    for (int i = 0; i < a.size(); i++) {
      assertThat(a.get(i)).isEqualTo(b.get(i));
    }
  }

  @Test
  void pieces_together_are_the_whole_surface_bit_for_bit() {
    Metal metal = job().metal(0.25);
    MetalPieces pieces = metal.pieces(REACH);
    assertThat(pieces.count()).isGreaterThan(4);
    for (int moves : new int[] {0, 4, metal.cuts().tape().size()}) {
      List<Mesh> parts = new ArrayList<>();
      int creases = 0;
      for (int i = 0; i < pieces.count(); i++) {
        Mesh part = MESHING.mesh(pieces.at(i, moves));
        parts.add(part);
        creases += part.creaseCount();
      }
      Mesh whole = MESHING.mesh(metal.at(moves));
      assertSame(parts, List.of(whole));
      assertThat(creases).isEqualTo(whole.creaseCount());
    }
  }

  @Test
  void beyond_the_whole_body_a_reach_makes_all_pieces_depend_on_all_moves() {
    Metal metal = job().metal(0.5);
    int end = metal.cuts().tape().size();
    MetalPieces pieces = metal.pieces(1e12);
    for (int i = 0; i < pieces.count(); i++) {
      assertThat(pieces.mayDiffer(i, 0, end)).isTrue();
      assertThat(pieces.mayDiffer(i, end, end)).isFalse();
    }
    assertThatThrownBy(() -> metal.pieces(-0.1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> metal.pieces(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void forward_and_back_only_pieces_that_may_differ_do() {
    Metal metal = job().metal(0.25);
    MetalPieces pieces = metal.pieces(REACH);
    int end = metal.cuts().tape().size();
    Mesh[] walked = new Mesh[pieces.count()];
    int made = 0;
    int before = -1;
    for (int moves : new int[] {0, 1, 2, 5, 6, 11, end, end - 1, 10, 4, 2, 0}) {
      Mesh[] fresh = new Mesh[pieces.count()];
      for (int i = 0; i < walked.length; i++) {
        fresh[i] = MESHING.mesh(pieces.at(i, moves));
        if (before < 0 || pieces.mayDiffer(i, before, moves)) {
          walked[i] = fresh[i];
          made++;
        }
      }
      assertSame(Arrays.asList(walked), Arrays.asList(fresh));
      before = moves;
    }
    assertThat(made).isLessThan(10 * walked.length);
  }
}
