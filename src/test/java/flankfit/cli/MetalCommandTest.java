package flankfit.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code metal}, as a process. */
class MetalCommandTest {
  private static final String PROGRAM =
      Path.of("sample-programs", "filter-housing-m20.nc").toString();

  @TempDir private Path folder;

  private static FlankfitProcess metal(String... more) throws Exception {
    String[] all = new String[more.length + 4];
    all[0] = "metal";
    all[1] = PROGRAM;
    all[2] = "--cell";
    all[3] = "0.4";
    System.arraycopy(more, 0, all, 4, more.length);
    return FlankfitProcess.run(all);
  }

  @Test
  void json_fits_its_schema_and_its_volumes_add_up() throws Exception {
    Path mesh = folder.resolve("port.stl");
    FlankfitProcess run = metal("--format", "json", "--mesh", mesh.toString());
    JsonNode answer = new ObjectMapper().readTree(run.out());
    assertThat(JsonShape.faults("metal", answer)).isEmpty();
    // 80 x 60 x 30 less a bore of 18.5 by 22 and a countersink of 21 by 90 degrees, closed forms
    double bore = Math.PI / 4 * 18.5 * 18.5 * 22;
    double sink = Math.PI * 1.25 / 3 * (10.5 * 10.5 + 10.5 * 9.25 - 2 * 9.25 * 9.25);
    double stock = answer.get("stockVolume").asDouble();
    assertThat(stock).isCloseTo(80 * 60 * 30 - bore - sink, within(0.001 * 144000));
    double removed = answer.get("removedVolume").asDouble();
    assertThat(removed).isEqualTo(answer.get("byTool").get(0).get("removed").asDouble());
    assertThat(stock - removed).isCloseTo(answer.get("remainingVolume").asDouble(), within(1e-6));
    // binary STL: 80 bytes, a count, 50 bytes a facet
    byte[] stl = Files.readAllBytes(mesh);
    assertThat((stl.length - 84) % 50).isZero();
    assertThat(stl.length).isGreaterThan(20_000);
  }

  @Test
  void text_tells_what_each_tool_took_away_and_a_picture_is_drawn_cut_open() throws Exception {
    Path image = folder.resolve("port.png");
    FlankfitProcess run =
        metal("--image", image.toString(), "--section", "y=0", "--by-tool", "--size", "500x400");
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out())
        .contains("stock, block", "T4 thread mill 14 mm", "left", "A prediction is no inspection");
    BufferedImage seen = ImageIO.read(image.toFile());
    assertThat(seen.getWidth()).isEqualTo(500);
    assertThat(seen.getHeight()).isEqualTo(400);
  }

  @Test
  void wrong_requests_say_what_would_be_right() throws Exception {
    wrong("z=high", "--section", "z=high");
    wrong("write x=0, y=12.5 or z=-8", "--section", "w=3");
    wrong("port A", "--close", "port B");
    wrong(".stl", "--mesh", folder.resolve("port.obj").toString());
    wrong("line 99 moves nothing", "--to", "99");
  }

  private static void wrong(String told, String... more) throws Exception {
    FlankfitProcess run = metal(more);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(told, "fix").doesNotContain("\tat ");
  }

  @Test
  void cells_that_do_not_fit_into_the_memory_are_refused_with_what_would() throws Exception {
    FlankfitProcess run = FlankfitProcess.run("metal", PROGRAM, "--cell", "0.01", "--memory", "16");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("0.01 mm", "fit").doesNotContain("\tat ");
  }

  @Test
  void a_sheet_without_stock_is_told() throws Exception {
    Path program = Files.copy(Path.of(PROGRAM), folder.resolve("bare.nc"));
    FlankfitProcess run = FlankfitProcess.run("metal", program.toString());
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("no stock", "add [stock]").doesNotContain("\tat ");
  }

  @Test
  void shank_in_stock_from_a_mesh_is_an_answer_of_no() throws Exception {
    StringBuilder block = new StringBuilder("solid block\n");
    String[] all = new String[8];
    for (int i = 0; i < 8; i++) {
      all[i] = 60 * (i & 1) + " " + 40 * (i >> 1 & 1) + " " + 20 * (i >> 2);
    }
    int[][] sides = {
      {0, 2, 3, 1}, {4, 5, 7, 6}, {0, 1, 5, 4}, {2, 6, 7, 3}, {0, 4, 6, 2}, {1, 3, 7, 5}
    };
    for (int[] s : sides) {
      for (int[] f : new int[][] {{s[0], s[1], s[2]}, {s[0], s[2], s[3]}}) {
        block.append("facet normal 0 0 0\nouter loop\n");
        for (int corner : f) {
          block.append("vertex ").append(all[corner]).append('\n');
        }
        block.append("endloop\nendfacet\n");
      }
    }
    Files.writeString(folder.resolve("block.stl"), block.append("endsolid block\n"));
    Files.writeString(
        folder.resolve("slot.setup.toml"),
        """
        [stock]
        shape = "mesh"
        file = "block.stl"
        zero = [0.0, 0.0, 20.0]
        [[tool]]
        number = 1
        kind = "end mill"
        diameter = 10.0
        flute-length = 6.0
        shank = { diameter = 12.0, length = 40.0 }
        [offsets]
        H1 = { geometry = 80.0 }
        """);
    Path program =
        Files.writeString(
            folder.resolve("slot.nc"),
            """
            G21 G90 G17 G54
            T1 M6
            S3000 M3
            G0 X-10. Y20.
            G43 H1 Z2.
            G1 Z-10. F500.
            X70. F300.
            G0 Z50.
            M30
            """);
    FlankfitProcess run =
        FlankfitProcess.run("metal", program.toString(), "--cell", "1", "--format", "json");
    assertThat(run.status()).as(run.err()).isEqualTo(1);
    JsonNode answer = new ObjectMapper().readTree(run.out());
    assertThat(JsonShape.faults("metal", answer)).isEmpty();
    assertThat(answer.get("stockVolume").asDouble()).isCloseTo(60 * 40 * 20, within(48.0));
    assertThat(answer.get("removedVolume").asDouble()).isCloseTo(60 * 10 * 6, within(36.0));
    JsonNode touch = answer.get("collisions").get(0);
    assertThat(touch.get("code").asText()).isEqualTo("HZ16");
    assertThat(touch.get("line").asInt()).isEqualTo(7);
    assertThat(touch.get("what").asText()).contains("shank of tool 1 goes 4 mm into metal");
    assertThat(answer.get("assumptions").toString()).doesNotContain("are not tried");
  }
}
