package flankfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Gauging a program that enters its D register itself, as a user asks for it. */
class ProgramSetsRegisterCommandTest {
  private static final Path SAMPLE = Path.of("sample-programs", "filter-housing-m20.nc");
  private static final Path SHEET = Path.of("sample-programs", "filter-housing-m20.setup.toml");

  @TempDir private Path folder;

  private Path program() throws IOException {
    Files.copy(SHEET, folder.resolve("port.setup.toml"));
    String text = Files.readString(SAMPLE).replace("N50 ", "G10 L13 P4 R-.02\nN50 ");
    return Files.writeString(folder.resolve("port.nc"), text);
  }

  @Test
  void text_names_the_block_that_is_to_be_changed() throws Exception {
    FlankfitProcess run = FlankfitProcess.run("gauge", program().toString());
    assertThat(run.status()).isZero();
    assertThat(run.out())
        .contains("    D4 wear is -0.020 mm; ")
        .contains(
            "      R-.02 of G10 in line 8 overwrites what is keyed in: write the value there\n")
        .contains("      value for the middle of the limits       -0.048 mm\n")
        .doesNotContain("key in for");
  }

  @Test
  void entries_that_the_control_does_not_take_are_marked() throws Exception {
    String limited = Files.readString(SHEET).replace("[control]", "[control]\nwear-limit = 0.03");
    Files.writeString(folder.resolve("port.setup.toml"), limited);
    Files.copy(SAMPLE, folder.resolve("port.nc"));
    FlankfitProcess run = FlankfitProcess.run("gauge", folder.resolve("port.nc").toString());
    assertThat(run.out())
        .containsPattern("the middle of the limits +-0.048 mm  beyond the control's limit\n")
        .containsPattern("at which GO enters +-0.009 mm\n")
        .containsPattern("at which NO-GO stops +-0.098 mm  beyond the control's limit\n");
  }

  @Test
  void json_names_it_too_and_fits_its_schema() throws Exception {
    FlankfitProcess run = FlankfitProcess.run("gauge", program().toString(), "--format", "json");
    JsonNode answer = new ObjectMapper().readTree(run.out());
    assertThat(JsonShape.faults("gauge", answer)).isEmpty();
    JsonNode setBy = answer.path("threads").get(0).path("offset").path("setBy");
    assertThat(setBy.path("line").asInt()).isEqualTo(8);
    assertThat(setBy.path("word").asText()).isEqualTo("R-.02");
    assertThat(setBy.path("file").asText()).endsWith("port.nc");
  }
}
