package flankfit.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import de.javagl.jgltf.model.AccessorFloatData;
import de.javagl.jgltf.model.AccessorIntData;
import de.javagl.jgltf.model.AccessorModel;
import de.javagl.jgltf.model.GltfModel;
import de.javagl.jgltf.model.MeshPrimitiveModel;
import de.javagl.jgltf.model.io.GltfModelReader;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.io.euclidean.threed.FacetDefinition;
import org.apache.commons.geometry.io.euclidean.threed.FacetDefinitionReader;
import org.apache.commons.geometry.io.euclidean.threed.stl.StlFacetDefinitionReaders;
import org.junit.jupiter.api.Test;

/** Files read back by readers that are not ours. */
class FileTest {
  private static final Shape PART =
      Shape.minus(
          Shape.block(-10.3, -9.1, -8.2, 15.1, 9.3, 6.1),
          Shape.cylinder(2, 3.13, 0.21, 0, 4.1).madeBy(3),
          Shape.cylinder(0, 0, 0.1, -1, 2.2).madeBy(5));
  private static final Mesh MESH =
      new Meshing(2, 0, Halt.NEVER).mesh(ShapeSolid.uniform(PART, -16, 32, 64));

  /** Triangles as three places each. */
  private static void assertSame(List<double[]> corners, double unit, double size) {
    double six = 0;
    Map<List<Float>, Integer> welded = new HashMap<>();
    List<Integer> ids = new ArrayList<>();
    for (double[] c : corners) {
      List<Float> key = List.of((float) c[0], (float) c[1], (float) c[2]);
      ids.add(welded.computeIfAbsent(key, k -> welded.size()));
    }
    Map<Long, Integer> directed = new HashMap<>();
    for (int t = 0; t < corners.size(); t += 3) {
      double[] a = corners.get(t);
      double[] b = corners.get(t + 1);
      double[] c = corners.get(t + 2);
      six +=
          a[0] * (b[1] * c[2] - b[2] * c[1])
              + a[1] * (b[2] * c[0] - b[0] * c[2])
              + a[2] * (b[0] * c[1] - b[1] * c[0]);
      for (int k = 0; k < 3; k++) {
        int from = ids.get(t + k);
        int to = ids.get(t + (k + 1) % 3);
        directed.merge((long) from << 32 | to, 1, Integer::sum);
      }
    }
    directed.forEach(
        (edge, uses) -> assertThat(directed.get(edge << 32 | edge >>> 32)).isEqualTo(uses));
    double volume = six / 6 / (unit * unit * unit);
    assertThat(volume).isCloseTo(MESH.volume(), within(1e-6 * size * size * size));
  }

  @Test
  void binary_stl_is_read_back_by_a_geometry_library() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    StlFile.write(MESH, bytes);
    assertThat(bytes.size()).isEqualTo(84 + 50 * MESH.triangleCount());
    List<double[]> corners = new ArrayList<>();
    double[] low = {9, 9, 9};
    double[] high = {-9, -9, -9};
    try (FacetDefinitionReader reader =
        StlFacetDefinitionReaders.create(new ByteArrayInputStream(bytes.toByteArray()), null)) {
      for (FacetDefinition facet = reader.readFacet(); facet != null; facet = reader.readFacet()) {
        for (Vector3D v : facet.getVertices()) {
          double[] c = {v.getX(), v.getY(), v.getZ()};
          corners.add(c);
          for (int axis = 0; axis < 3; axis++) {
            low[axis] = Math.min(low[axis], c[axis]);
            high[axis] = Math.max(high[axis], c[axis]);
          }
        }
      }
    }
    assertThat(corners).hasSize(3 * MESH.triangleCount());
    assertThat(low).containsExactly(new double[] {-10.3, -9.1, -8.2}, within(1e-6));
    assertThat(high).containsExactly(new double[] {15.1, 9.3, 6.1}, within(1e-6));
    assertSame(corners, 1, 25);
  }

  @Test
  void binary_gltf_is_read_back_by_a_gltf_library() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    List<Paint> paints =
        List.of(
            new Paint("stock", 0.6, 0.6, 0.62),
            new Paint("drill \"8.2\"", 0.2, 0.4, 0.8),
            new Paint("never used", 0, 0, 0),
            new Paint("cross drill \u00f8 4.4", 0.8, 0.4, 0.1));
    GlbFile.write(MESH, paints, maker -> maker < 0 ? 0 : maker == 3 ? 1 : 3, bytes);
    GltfModel model =
        new GltfModelReader().readWithoutReferences(new ByteArrayInputStream(bytes.toByteArray()));
    List<MeshPrimitiveModel> primitives = model.getMeshModels().get(0).getMeshPrimitiveModels();
    assertThat(primitives).hasSize(3);
    assertThat(model.getMaterialModels())
        .extracting("name")
        .containsExactly("stock", "drill \"8.2\"", "cross drill \u00f8 4.4");
    List<double[]> corners = new ArrayList<>();
    for (MeshPrimitiveModel primitive : primitives) {
      AccessorModel position = primitive.getAttributes().get("POSITION");
      AccessorFloatData places = (AccessorFloatData) position.getAccessorData();
      AccessorFloatData normals =
          (AccessorFloatData) primitive.getAttributes().get("NORMAL").getAccessorData();
      AccessorIntData indices = (AccessorIntData) primitive.getIndices().getAccessorData();
      for (int axis = 0; axis < 3; axis++) {
        float low = Float.POSITIVE_INFINITY;
        float high = Float.NEGATIVE_INFINITY;
        for (int i = 0; i < places.getNumElements(); i++) {
          low = Math.min(low, places.get(i, axis));
          high = Math.max(high, places.get(i, axis));
        }
        assertThat(position.getMin()[axis].floatValue()).isEqualTo(low);
        assertThat(position.getMax()[axis].floatValue()).isEqualTo(high);
      }
      for (int i = 0; i < normals.getNumElements(); i++) {
        double n = Math.hypot(Math.hypot(normals.get(i, 0), normals.get(i, 1)), normals.get(i, 2));
        assertThat(n).isCloseTo(1, within(1e-6));
      }
      for (int i = 0; i < indices.getNumElements(); i++) {
        int at = indices.get(i);
        corners.add(new double[] {places.get(at, 0), places.get(at, 1), places.get(at, 2)});
      }
    }
    assertThat(corners).hasSize(3 * MESH.triangleCount());
    assertSame(corners, 0.001, 25);
    AccessorModel first = primitives.get(0).getAttributes().get("POSITION");
    // Y up: the block's height, in metres
    assertThat(first.getMin()[1].doubleValue()).isCloseTo(-0.0082, within(1e-9));
    assertThat(first.getMax()[1].doubleValue()).isCloseTo(0.0061, within(1e-9));
    assertThat(first.getMax()[2].doubleValue()).isCloseTo(0.0091, within(1e-9));
  }

  @Test
  void group_without_paint_is_told() {
    assertThatThrownBy(
            () ->
                GlbFile.write(
                    MESH,
                    List.of(new Paint("stock", 1, 1, 1)),
                    maker -> maker + 1,
                    new ByteArrayOutputStream()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("there are 1 paints");
  }
}
