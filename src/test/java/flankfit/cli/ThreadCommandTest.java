package flankfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;

/** The command {@code thread}, as a process. */
class ThreadCommandTest {
  @Test
  void several_designations_in_one_answer() throws Exception {
    FlankfitProcess run =
        FlankfitProcess.run(
            "thread",
            "--format",
            "json",
            "M20x1.5-6H",
            "M20-6H",
            "M12x1.25-6g",
            "1/2-13 UNC-2B",
            "#10-32 UNF-2B",
            "10-32 UNF-2B",
            ".500-20 UNF-3B",
            "M16x1.5-6H-LH");
    assertThat(run.status()).isZero();
    JsonNode answer = new ObjectMapper().readTree(run.out());
    assertThat(JsonShape.faults("thread", answer)).isEmpty();
    assertThat(answer.get("threads")).hasSize(8);
    // Machinery's Handbook, limits of M20x1.5 6H (ISO 965-1): 19.026 to 19.216 mm.
    JsonNode limits = answer.get("threads").get(0).get("limits");
    assertThat(limits.get("pitchMin").asDouble()).isEqualTo(19.026);
    assertThat(limits.get("pitchMax").asDouble()).isEqualTo(19.216);
  }

  @Test
  void text_shows_inch_first_for_unified_and_says_what_to_check() throws Exception {
    FlankfitProcess run = FlankfitProcess.run("thread", "5/16-18 UNC-2B");
    assertThat(run.status()).isZero();
    // 5/16-18: major diameter 0.3125 in, tapped from a 0.257 in drill: common practice, no source.
    assertThat(run.out())
        .contains("0.3125", "0.2764", "0.2817", "letter F", "0.2570 in")
        .contains("gauge limits: check against the standard");
  }

  @Test
  void bad_designation_says_what_is_wrong_and_what_is_near() throws Exception {
    FlankfitProcess run = FlankfitProcess.run("thread", "M20x1.5-6Q", "M20x1.1-6H");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("6Q", "M20x1.5-6H", "1.1", "fix").doesNotContain("\tat ");
  }

  @Test
  void schema_is_printed() throws Exception {
    for (String name : new String[] {"motion", "gauge", "thread"}) {
      FlankfitProcess run = FlankfitProcess.run("schema", name);
      assertThat(run.status()).isZero();
      assertThat(new ObjectMapper().readTree(run.out()).get("$schema").asText())
          .contains("json-schema.org");
    }
    assertThat(FlankfitProcess.run("schema", "pocket").status()).isEqualTo(2);
  }
}
