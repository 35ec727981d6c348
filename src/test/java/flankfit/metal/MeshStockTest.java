package flankfit.metal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.motion.Extents;
import flankfit.motion.Point;
import flankfit.setup.SetupSheet;
import flankfit.setup.Stock;
import flankfit.setup.Tool;
import flankfit.solid.Halt;
import flankfit.solid.Mesh;
import flankfit.solid.MeshBody;
import flankfit.solid.Meshing;
import flankfit.solid.StlFile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Stock from a mesh file is cut like any other. */
class MeshStockTest {
  /** An angle: a block of 40 x 30 x 20 less the part beyond X20 above Z10, as text STL. */
  private static MeshBody angle(double dx, double dy, double dz) throws Exception {
    double[][] outline = {{0, 0}, {40, 0}, {40, 10}, {20, 10}, {20, 20}, {0, 20}};
    int[][] faces = {{0, 1, 2}, {0, 2, 3}, {0, 3, 4}, {0, 4, 5}};
    StringBuilder text = new StringBuilder("solid angle\n");
    for (int[] face : faces) {
      facet(
          text, p(outline, face[0], 0), p(outline, face[1], 0), p(outline, face[2], 0), dx, dy, dz);
      facet(
          text,
          p(outline, face[0], 30),
          p(outline, face[2], 30),
          p(outline, face[1], 30),
          dx,
          dy,
          dz);
    }
    for (int i = 0; i < 6; i++) {
      int j = (i + 1) % 6;
      facet(text, p(outline, i, 0), p(outline, i, 30), p(outline, j, 30), dx, dy, dz);
      facet(text, p(outline, i, 0), p(outline, j, 30), p(outline, j, 0), dx, dy, dz);
    }
    byte[] bytes = text.append("endsolid angle\n").toString().getBytes(StandardCharsets.US_ASCII);
    return MeshBody.read(new ByteArrayInputStream(bytes), "angle.stl", 1000);
  }

  private static double[] p(double[][] outline, int i, double y) {
    return new double[] {outline[i][0], y, outline[i][1]};
  }

  private static void facet(
      StringBuilder text, double[] a, double[] b, double[] c, double dx, double dy, double dz) {
    text.append("facet normal 0 0 0\nouter loop\n");
    for (double[] v : new double[][] {a, b, c}) {
      text.append("vertex ").append(v[0] + dx).append(' ').append(v[1] + dy).append(' ');
      text.append(v[2] + dz).append('\n');
    }
    text.append("endloop\nendfacet\n");
  }

  private static Stock stock() {
    Extents box = new Extents(new Point(-20, -15, -20), new Point(20, 15, 0));
    return new Stock(Stock.Shape.MESH, box, 0, Optional.of("angle.stl"));
  }

  private static Metal metal(Job job, MeshBody body, double cell) throws Exception {
    SetupSheet plain = job.sheet();
    SetupSheet sheet =
        new SetupSheet(
            "",
            "",
            plain.unit(),
            plain.control(),
            Optional.of(stock()),
            plain.keepOuts(),
            plain.workOffsets(),
            plain.holes(),
            plain.tools(),
            plain.offsets(),
            "",
            plain.gauges(),
            plain.assumptions());
    return Metal.of(
        job.tape(),
        sheet,
        Optional.of(body),
        MetalOptions.usual().withCell(cell),
        MetalProgress.NONE);
  }

  private static Job slot() {
    Job job = new Job().block(0, 0, 0, 1, 1, 1);
    job.take(SampleTools.tool(1, Tool.Kind.END_MILL, 8, 20));
    return job.rapid(-30, 0, 10).rapid(-30, 0, -14).line(30, 0, -14).rapid(30, 0, 10);
  }

  @Test
  void volumes_are_those_of_the_angle_wherever_its_file_puts_it() throws Exception {
    for (double shift : new double[] {123}) {
      Job job = slot();
      Metal metal = metal(job, angle(shift, -shift, 2 * shift), 2);
      int end = job.tape().size();
      // a slot of 8: 14 deep in the high half, 4 deep in the low one
      double whole = 30 * (20 * 20 + 20 * 10);
      assertThat(metal.volume(0)).isCloseTo(whole, within(1e-3 * whole));
      double cut = 8 * 20 * (14 + 4);
      assertThat(metal.volume(0) - metal.volume(end)).isCloseTo(cut, within(1e-3 * cut));
    }
  }

  @Test
  void surface_of_what_is_left_is_closed_and_can_be_stock_again() throws Exception {
    Job job = slot();
    Metal metal = metal(job, angle(0, 0, 0), 2);
    Mesh mesh = new Meshing(2, 0, Halt.NEVER).mesh(metal.at(job.tape().size()));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    StlFile.write(mesh, bytes);
    MeshBody again =
        MeshBody.read(new ByteArrayInputStream(bytes.toByteArray()), "left.stl", 1_000_000);
    double left = metal.volume(job.tape().size());
    assertThat(again.volume()).isCloseTo(left, within(2e-3 * left));
  }

  @Test
  void touches_see_the_mesh_and_not_its_box() throws Exception {
    Tool mill = ContactsTest.endMill(8, 4, 12, 12);
    Job job = new Job().block(0, 0, 0, 1, 1, 1).take(mill).rapid(10, -30, 10);
    // over the low half, whose top is at Z-10: 3 deep, the shank ends above it
    job.rapid(10, -30, -13).line(10, 30, -13).rapid(10, 30, 10);
    Metal metal = metal(job, angle(0, 0, 0), 1);
    assertThat(Contacts.of(metal, List.of()).all(job.tape().size())).isEmpty();
    Job deeper = new Job().block(0, 0, 0, 1, 1, 1).take(mill).rapid(10, -30, 10);
    deeper.rapid(10, -30, -15).line(10, 30, -15).rapid(10, 30, 10);
    Metal other = metal(deeper, angle(0, 0, 0), 1);
    Contact shank = Contacts.of(other, List.of()).all(deeper.tape().size()).get(0);
    assertThat(shank.part()).isEqualTo(Contact.Part.SHANK);
    assertThat(shank.depth()).isCloseTo(1, within(1e-3));
  }
}
