package flankfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;

/** {@code motion --trace}, run as a user runs it. */
class TraceCommandTest {
  private static final String PROGRAM = "sample-programs/filter-housing-m20.nc";

  @Test
  void text_tells_the_lines_asked_for() throws Exception {
    FlankfitProcess run =
        FlankfitProcess.run("motion", PROGRAM, "--trace", "--from", "11", "--to", "12");
    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains("line 11, block 8:  N70 G41 D4 G1 X1.3 Y-1.3 F400.", "D4 = -0.045 mm")
        .contains("G40 off → G41 left by -0.045 mm")
        .doesNotContain("line 10,", "line 13,");
    assertThat(run.out().lines())
        .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(110));
  }

  @Test
  void json_keeps_its_shape_and_holds_the_moves_of_the_motion() throws Exception {
    FlankfitProcess run = FlankfitProcess.run("motion", PROGRAM, "--trace", "--format", "json");
    assertThat(run.status()).isZero();
    JsonNode trace = new ObjectMapper().readTree(run.out());
    assertThat(JsonShape.faults("trace", trace)).isEmpty();
    int moves = 0;
    for (JsonNode block : trace.path("blocks")) {
      moves += block.path("moves").size();
    }
    FlankfitProcess motion = FlankfitProcess.run("motion", PROGRAM, "--format", "json");
    assertThat(moves).isEqualTo(new ObjectMapper().readTree(motion.out()).path("moves").size());
  }

  @Test
  void lines_without_a_trace_and_lines_that_are_no_range_are_refused() throws Exception {
    FlankfitProcess without = FlankfitProcess.run("motion", PROGRAM, "--from", "3");
    assertThat(without.status()).isEqualTo(2);
    assertThat(without.err()).contains("--from and --to need --trace");
    FlankfitProcess reversed =
        FlankfitProcess.run("motion", PROGRAM, "--trace", "--from", "9", "--to", "3");
    assertThat(reversed.status()).isEqualTo(2);
    assertThat(reversed.err()).contains("lines 9 to 3 are no range");
    assertThat(reversed.out()).isEmpty();
    FlankfitProcess missing =
        FlankfitProcess.run("motion", "sample-programs/no.nc", "--trace", "--format", "json");
    assertThat(missing.status()).isEqualTo(2);
    assertThat(missing.out()).isEmpty();
  }

  @Test
  void its_schema_is_printed() throws Exception {
    FlankfitProcess run = FlankfitProcess.run("schema", "trace");
    assertThat(run.status()).isZero();
    assertThat(new ObjectMapper().readTree(run.out()).path("$id").asText())
        .isEqualTo("flankfit/trace/1");
  }
}
