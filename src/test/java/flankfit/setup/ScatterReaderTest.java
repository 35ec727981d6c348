package flankfit.setup;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a sheet may say of tolerances, for the odds. */
class ScatterReaderTest {
  private static final String TOOL =
      "[[tool]]\nnumber = 4\nkind = \"thread mill\"\ndiameter = 14.0\nflutes = 4\nrows = 12\n"
          + "pitch = 1.5\nflank-angle = 60.0\ncrest-flat = 0.1875\nform = \"straight\"\n";
  private static final String HOLE =
      "[[hole]]\nname = \"a\"\nat = [0, 0]\ndiameter = 18.5\ndepth = \"through\"\n";

  @Test
  void all_of_it_arrives_in_millimetres() {
    SheetReading reading =
        SheetText.read(
            "units = \"inch\"\n[control]\nwear-limit = 0.02\n"
                + "[machine]\ncircle-radius-tolerance = 0.0002\ncircle-roundness = \"0.008 mm\"\n"
                + "[workpiece]\nmaterial = \"steel C45\"\nforce-uncertainty = 0.2\n"
                + HOLE.replace("18.5", "0.7")
                + "diameter-tolerance = 0.002\n"
                + TOOL.replace("14.0", "0.5")
                + "diameter-tolerance = 0\nrunout = 0.0002\ncrest-flat-tolerance = 0.0004\n");
    assertThat(reading.findings()).isEmpty();
    SetupSheet sheet = reading.sheet().orElseThrow();
    assertThat(sheet.scatter().circleRadius()).contains(0.0002 * 25.4);
    assertThat(sheet.scatter().roundness()).contains(0.008);
    assertThat(sheet.scatter().force()).contains(0.2);
    assertThat(sheet.workpieceMaterial()).isEqualTo("steel C45");
    assertThat(sheet.holes().get(0).diameterTolerance()).contains(0.002 * 25.4);
    assertThat(sheet.control().tools().wearLimit()).contains(0.02 * 25.4);
    Tool.Stated stated = sheet.tool(4).orElseThrow().stated();
    assertThat(stated.diameterTolerance()).contains(0.0);
    assertThat(stated.runout()).contains(0.0002 * 25.4);
    assertThat(stated.crestTolerance()).contains(0.0004 * 25.4);
    assertThat(sheet.withOffsets(Offsets.none()).scatter()).isEqualTo(sheet.scatter());
  }

  @Test
  void what_is_left_out_is_left_open() {
    SetupSheet sheet = SheetText.read(HOLE + TOOL).sheet().orElseThrow();
    assertThat(sheet.scatter()).isEqualTo(Scatter.unknown());
    assertThat(sheet.holes().get(0).diameterTolerance()).isEmpty();
    assertThat(sheet.control().tools().wearLimit()).isEmpty();
    assertThat(sheet.tool(4).orElseThrow().stated().diameterTolerance()).isEmpty();
  }

  @Test
  void impossible_values_are_found_where_they_stand() {
    List<Finding> findings =
        SheetText.read(
                "[control]\nwear-limit = 0\n[machine]\ncircle-roundness = -0.01\n"
                    + "circle-radius-tolerance = \"wide\"\n[workpiece]\nforce-uncertainty = 1\n"
                    + HOLE
                    + "diameter-tolerance = 20\n"
                    + TOOL
                    + "crest-flat-tolerance = -1\n")
            .findings();
    assertThat(findings)
        .extracting(f -> f.place().line() + " " + f.code())
        .containsExactly("2 SH05", "4 SH05", "5 SH04", "7 SH05", "13 SH05", "24 SH05");
  }

  @Test
  void a_slip_in_a_key_names_the_nearest() {
    Finding finding = SheetText.read("[machine]\ncircle-rondness = 0.01\n").findings().get(0);
    assertThat(finding.code()).isEqualTo(Code.SH02);
    assertThat(finding.fix()).contains("circle-roundness");
  }
}
