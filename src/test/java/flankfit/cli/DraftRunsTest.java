package flankfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command in this process: what it prints and writes, and what it refuses. */
class DraftRunsTest {
  private static final Path KEPT = Path.of("src/test/resources/flankfit/cli/draft");
  private static final String HOUSING = "sample-programs/filter-housing-m20.setup.toml";
  private static final String BLOCK = "sample-programs/valve-block-half-13.setup.toml";

  @TempDir private Path folder;

  private static Run draft(String... args) {
    return Run.of("draft", args);
  }

  /** Kept texts are written anew with {@code -Dgolden=write}, and then read in the diff. */
  private static void isKept(String name, String text) throws IOException {
    Path file = KEPT.resolve(name);
    if (System.getProperty("golden", "").equals("write")) {
      Files.createDirectories(KEPT);
      Files.writeString(file, text);
    }
    assertThat(text).isEqualTo(Files.readString(file));
    assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThan(101));
  }

  @Test
  void draft_of_the_filter_housing_as_text() throws Exception {
    Run run = draft("--setup", HOUSING, "--mode", "incremental", "--passes", "2");
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    isKept("filter-housing.txt", run.out());
  }

  @Test
  void draft_of_the_valve_block_as_text_by_contour_in_inch() throws Exception {
    Run run = draft("--setup", BLOCK);
    assertThat(run.err()).isEmpty();
    isKept("valve-block.txt", run.out());
  }

  @Test
  void json_keeps_the_shape_of_its_schema_and_a_sheet_that_belongs_to_it() throws Exception {
    Run run =
        draft(
            "--thread",
            "M16x1.5-6g",
            "--boss",
            "--mill",
            "12",
            "--depth",
            "12",
            "--tool",
            "3",
            "--format",
            "json");
    assertThat(run.err()).isEmpty();
    JsonNode answer = new ObjectMapper().readTree(run.out());
    assertThat(JsonShape.faults("draft", answer)).isEmpty();
    assertThat(answer.at("/threads/0/go/enters").asBoolean()).isTrue();
    double wear = answer.at("/register/wear").asDouble();
    assertThat(answer.path("setup").toString()).contains("wear = " + Figures.plain(wear, 9));
    assertThat(answer.path("program").get(0).asText()).isEqualTo("%");
    ((ObjectNode) answer).put("colour", "red");
    assertThat(JsonShape.faults("draft", answer)).containsExactly("draft: unknown key colour");
  }

  @Test
  void files_are_written_together_and_never_over_others_without_force() throws Exception {
    Path program = folder.resolve("port.nc");
    Path sheet = folder.resolve("port.setup.toml");
    Path given = folder.resolve("given.toml");
    // Without the register, which the draft adds; nothing else of the sheet may change.
    String text = Files.readString(Path.of(HOUSING)).replaceAll("(?m)^D4 .*\n", "");
    Files.writeString(given, text);
    Files.writeString(sheet, "# mine\n");
    String[] asked = {"--setup", given.toString(), "--out", program.toString()};
    Run refused = draft(asked);
    assertThat(refused.status()).isEqualTo(2);
    assertThat(refused.err()).contains("RQ03", "port.setup.toml is there already", "--force");
    assertThat(sheet).hasContent("# mine");
    assertThat(program).doesNotExist();
    List<String> forced = new ArrayList<>(List.of(asked));
    forced.add("--force");
    Run run = draft(forced.toArray(String[]::new));
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.out()).contains("program " + program, "sheet   " + sheet);
    assertThat(program).content().startsWith("%\nO1001 (M20x1.5-6H)\n").endsWith("M30\n%\n");
    String written = Files.readString(sheet);
    assertThat(written).containsPattern("(?m)^D4 = \\{ geometry = 0\\.0, wear = -0\\.05\\d* \\}$");
    assertThat(written.replaceAll("(?m)^D4 .*\n", "")).isEqualTo(text);
    try (var files = Files.list(folder)) {
      assertThat(files).containsExactlyInAnyOrder(program, sheet, given);
    }
  }

  @Test
  void program_alone_is_nothing_else() {
    Run run = draft("--setup", HOUSING, "--program-only");
    assertThat(run.out()).startsWith("%\n").endsWith("\n%\n").doesNotContain("mm");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--thread M20x1.5-6H --mill 14                       | 2 | RQ04 | --depth",
        "--thread M20x1.6-6H --mill 14 --depth 16            | 2 | SH07 | M20",
        "--thread M20x1.5-6H --hand left --mill 14 --depth 9 | 2 | RQ04 | write M20x1.5-6H-LH",
        "--thread M20x1.5-6g --mill 14 --depth 16            | 2 | RQ04 | add --boss",
        "--thread M20x1.5-6H --mill 14x --depth 16           | 2 | RQ04 | is no length",
        "--thread M20x1.5-6H --mill 14 --depth -1            | 2 | RQ04 | above 0",
        "--thread M20x1.5-6H --mill 14 --depth 9 --material steal | 2 | RQ04 | steel",
        "--thread M20x1.5-6H --mill 14 --depth 9 --passes 12 | 2 | RQ04 | 1 to 9",
        "--thread M20x1.5-6H --mill 14 --depth 9 --at 3      | 2 | RQ04 | with a comma",
        "--thread M20x1.5-6H --mill 14 --depth 9 --force     | 2 | RQ04 | add --out",
        "--setup none.toml                                   | 2 | RQ01 | does not exist",
        "--setup sample-programs/filter-housing-m20.setup.toml --mill 12 | 2 | RQ04 | beside"
            + " --setup",
        "--setup sample-programs/filter-housing-m20.setup.toml --tool 7  | 1 | RQ09 | name one of"
            + " 4",
        "--thread M20x1.5-6H --mill 14 --depth 16 --hole 19.5            | 1 | RQ09 | drill 18.5"
            + " mm",
        "--thread M20x1.5-6H --mill 14 --depth 16 --hole-depth 10 | 1 | RQ09 | least depth is 18"
            + " mm",
        "--thread M20x1.5-6H --mill 0.75in --depth 16             | 1 | RQ09 | largest mill"
      })
  void requests_that_cannot_be_met_say_what_would(
      String request, int status, String code, String words) {
    Run run = draft(request.strip().split(" +"));
    assertThat(run.status()).as(run.err()).isEqualTo(status);
    assertThat(run.err()).contains(code, words);
  }
}
