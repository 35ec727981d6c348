package flankfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ladder, section, and the sweep of a register, as a user asks for them. */
class GaugeDrawingsCommandTest {
  private static final String SAMPLE = "sample-programs/filter-housing-m20.nc";

  @TempDir private Path folder;

  private String file(String name) {
    return folder.resolve(name).toString();
  }

  @Test
  void ladder_section_and_chart_are_drawn_as_png_and_svg() throws Exception {
    for (String ending : new String[] {"png", "svg"}) {
      FlankfitProcess run =
          FlankfitProcess.run(
              "gauge",
              SAMPLE,
              "--ladder",
              file("ladder." + ending),
              "--section",
              file("section." + ending),
              "--sweep",
              "D4=-0.06:0:0.02",
              "--chart",
              file("chart." + ending));
      assertThat(run.status()).as(run.err()).isZero();
      assertThat(run.out()).contains("picture " + file("ladder." + ending));
      for (String name : new String[] {"ladder.", "section.", "chart."}) {
        Path made = folder.resolve(name + ending);
        if (ending.equals("png")) {
          BufferedImage image = ImageIO.read(made.toFile());
          assertThat(image.getWidth()).isEqualTo(1200);
        } else {
          assertThat(Files.readString(made)).startsWith("<svg").contains("M20x1.5-6H");
        }
      }
    }
  }

  @Test
  void a_sweep_is_a_table_and_part_of_the_json() throws Exception {
    FlankfitProcess text = FlankfitProcess.run("gauge", SAMPLE, "--sweep", "D4=-0.1:0:0.05");
    assertThat(text.status()).isZero();
    assertThat(text.out())
        .contains("D4 wear for M20x1.5-6H in port A, mm; the sheet has -0.045")
        .containsPattern("-0\\.100 +19\\.22\\d\\d +19\\.22\\d\\d +\\[x\\] NO-GO enters")
        .containsPattern("-0\\.050 +19\\.12\\d\\d +19\\.12\\d\\d +\\[\\+\\] gauges good")
        .containsPattern("0\\.000 +19\\.02\\d\\d +18\\.98\\d\\d +\\[x\\] GO refused");
    FlankfitProcess json =
        FlankfitProcess.run("gauge", SAMPLE, "--sweep", "D4=-0.1:0:0.05", "--format", "json");
    assertThat(JsonShape.faults("gauge", new ObjectMapper().readTree(json.out()))).isEmpty();
    assertThat(json.out()).contains("\"sweep\"", "\"wear\" : -0.05");
  }

  @ParameterizedTest
  @CsvSource({
    "--sweep,D4=-0.05,is not a sweep",
    "--sweep,H4=-0.05:0.05:0.01,is not a sweep",
    "--sweep,D0=-0.05:0.05:0.01,D0 is always 0",
    "--sweep,D4=0.05:-0.05:0.01,is not a sweep",
    "--sweep,D4=0:100:0.0001,number of entries",
    "--chart,x.png,has nothing to draw",
    "--ladder,x.pdf,neither ending .png nor .svg",
    "--ladder,sample-programs/none/x.png,there is no folder",
    "--hole,port Z,no thread is cut in port Z"
  })
  void what_cannot_be_drawn_is_refused(String option, String value, String said) throws Exception {
    FlankfitProcess run =
        option.equals("--hole")
            ? FlankfitProcess.run("gauge", SAMPLE, option, value, "--ladder", file("l.svg"))
            : FlankfitProcess.run("gauge", SAMPLE, option, value);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(said, "fix").doesNotContain("Exception");
  }
}
