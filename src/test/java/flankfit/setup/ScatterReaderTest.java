package flankfit.setup;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a sheet may say of tolerances, for the odds. */
class ScatterReaderTest {
  private static final String INCH_SHEET =
      """
      units = "inch"
      [control]
      wear-limit = 0.02
      [machine]
      circle-radius-tolerance = 0.0002
      circle-roundness = "0.008 mm"
      [workpiece]
      material = "steel C45"
      force-uncertainty = 0.2
      [[hole]]
      name = "a"
      at = [0, 0]
      diameter = 0.7
      diameter-tolerance = 0.002
      depth = "through"
      [[tool]]
      number = 4
      kind = "thread mill"
      diameter = 0.5
      diameter-tolerance = 0
      runout = 0.0002
      crest-flat = 0.01
      crest-flat-tolerance = 0.0004
      flank-angle = 60
      form = "straight"
      rows = 1
      """;

  @Test
  void all_of_it_arrives_in_millimetres() {
    SheetReading reading = SheetText.read(INCH_SHEET);
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
    String text =
        INCH_SHEET
            .replaceAll("(?m)^.*(tolerance|roundness|runout|uncertainty|wear-limit).*\n", "")
            .replaceAll("\\[(control|machine)\\]\n", "");
    SetupSheet sheet = SheetText.read(text).sheet().orElseThrow();
    assertThat(sheet.scatter()).isEqualTo(Scatter.unknown());
    assertThat(sheet.holes().get(0).diameterTolerance()).isEmpty();
    assertThat(sheet.control().tools().wearLimit()).isEmpty();
    Tool.Stated stated = sheet.tool(4).orElseThrow().stated();
    assertThat(stated.diameterTolerance()).isEmpty();
    assertThat(stated.runout()).isEmpty();
    assertThat(stated.crestTolerance()).isEmpty();
  }

  @Test
  void impossible_values_are_found_where_they_stand() {
    List<Finding> findings =
        SheetText.read(
                """
                [control]
                wear-limit = 0
                [machine]
                circle-roundness = -0.01
                circle-radius-tolerance = "wide"
                [workpiece]
                force-uncertainty = 1
                [[hole]]
                name = "a"
                at = [0, 0]
                diameter = 18.5
                diameter-tolerance = 20
                depth = "through"
                [[tool]]
                number = 4
                kind = "thread mill"
                diameter = 14
                crest-flat = 0.2
                crest-flat-tolerance = -1
                flank-angle = 60
                form = "straight"
                rows = 1
                """)
            .findings();
    assertThat(findings)
        .extracting(f -> f.place().line() + " " + f.code())
        .containsExactly("2 SH05", "4 SH05", "5 SH04", "7 SH05", "12 SH05", "19 SH05");
  }

  @Test
  void a_slip_in_a_key_names_the_nearest() {
    String text =
        """
        [machine]
        circle-rondness = 0.01
        """;
    Finding finding = SheetText.read(text).findings().get(0);
    assertThat(finding.code()).isEqualTo(Code.SH02);
    assertThat(finding.fix()).contains("circle-roundness");
  }
}
