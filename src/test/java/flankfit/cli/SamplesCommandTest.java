package flankfit.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every sample program, run as a user runs it, gives the answer it was written to give. */
class SamplesCommandTest {
  private static final Path FOLDER = Path.of("sample-programs");

  static List<String> programs() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.map(Path::toString).filter(name -> name.endsWith(".nc")).sorted().toList();
    }
  }

  @Test
  void all_samples_are_here_with_their_sheets() throws IOException {
    assertThat(programs()).hasSize(8);
    for (String program : programs()) {
      assertThat(Path.of(program.replace(".nc", ".setup.toml"))).exists();
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("programs")
  void answers_keep_the_shapes_of_their_schemas(String program) throws Exception {
    FlankfitProcess gauge = FlankfitProcess.run("gauge", program, "--format", "json");
    assertThat(gauge.err()).isEmpty();
    assertThat(JsonShape.faults("gauge", json(gauge))).isEmpty();
    FlankfitProcess motion = FlankfitProcess.run("motion", program, "--format", "json");
    assertThat(motion.err()).isEmpty();
    assertThat(JsonShape.faults("motion", json(motion))).isEmpty();
    FlankfitProcess lesson = FlankfitProcess.run("lesson", program, "--format", "json");
    assertThat(lesson.err()).isEmpty();
    assertThat(JsonShape.faults("lesson", json(lesson))).isEmpty();
  }

  @Test
  void the_same_question_gives_the_same_bytes() throws Exception {
    String program = FOLDER.resolve("filter-housing-m20.nc").toString();
    String once = FlankfitProcess.run("gauge", program, "--odds", "--format", "json").out();
    assertThat(FlankfitProcess.run("gauge", program, "--odds", "--format", "json").out())
        .isEqualTo(once);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "filter-housing-m20, M20x1.5-6H, right, 1, 19.026, 19.216",
    "valve-block-half-13, 1/2-13 UNC-2B, right, 1, 11.430, 11.595",
    "hub-axle-m16-left, M16x1.5-6H-LH, left, 1, 15.026, 15.216",
    "valve-manifold-four-m12, M12x1.25-6H, right, 4, 11.188, 11.368"
  })
  void good_ones_gauge_good(
      String name, String designation, String hand, int threads, double least, double most)
      throws Exception {
    FlankfitProcess run = gauge(name);
    assertThat(run.status()).isZero();
    JsonNode answer = json(run);
    assertThat(answer.get("threads")).hasSize(threads);
    for (JsonNode thread : answer.get("threads")) {
      assertThat(thread.get("designation").asText()).isEqualTo(designation);
      assertThat(thread.get("hand").asText()).isEqualTo(hand);
      assertThat(thread.get("cutting").asText()).isEqualTo("climb");
      assertThat(thread.get("verdict").asText()).isEqualTo("gauges good");
      assertThat(thread.get("go").get("enters").asBoolean()).isTrue();
      assertThat(thread.get("noGo").get("stops").asBoolean()).isTrue();
      assertThat(thread.get("finished").get("pitchSimple").asDouble()).isBetween(least, most);
    }
    assertThat(codes(answer, "error")).isEmpty();
    assertThat(codes(answer, "warning")).isEmpty();
  }

  @Test
  void three_passes_are_rough_finish_and_spring() throws Exception {
    JsonNode passes = json(gauge("filter-housing-m20")).get("threads").get(0).get("passes");
    assertThat(passes).hasSize(3);
    assertThat(texts(passes, "role")).containsExactly("rough", "finish", "spring");
  }

  @Test
  void rise_of_another_thread_is_named_and_go_is_refused() throws Exception {
    FlankfitProcess run = gauge("broken-rise-is-not-pitch");
    assertThat(run.status()).isEqualTo(1);
    JsonNode answer = json(run);
    assertThat(codes(answer, "error")).contains("TH01");
    assertThat(codes(answer, "warning")).contains("TH13");
    JsonNode thread = answer.get("threads").get(0);
    assertThat(thread.get("verdict").asText()).isEqualTo("GO refused");
    assertThat(thread.get("finished").get("leadError").asDouble()).isCloseTo(-0.25, within(1e-9));
    // A comb cutter spreads the error over one turn: 0.25 cot 30°, by the definition in
    // thread metrology, Δd2 = |δP| cot α (lecture notes "Screw thread measurement").
    assertThat(
            thread.get("finished").get("functional").asDouble()
                - thread.get("finished").get("pitchSimple").asDouble())
        .isCloseTo(-0.25 / Math.tan(Math.PI / 6), within(0.001));
  }

  @Test
  void incremental_mode_left_on_puts_the_second_thread_beside_its_port() throws Exception {
    FlankfitProcess run = gauge("broken-incremental-left-on");
    assertThat(run.status()).isEqualTo(1);
    JsonNode answer = json(run);
    assertThat(codes(answer, "error")).contains("GA02", "GA03");
    assertThat(codes(answer, "warning")).contains("MD07");
    assertThat(texts(answer.get("threads"), "hole")).containsExactly("port A");
    assertThat(run.out()).contains("X0 Y0", "port B");
  }

  @Test
  void compensation_left_on_at_the_retract_is_found() throws Exception {
    FlankfitProcess run = gauge("broken-compensation-left-on");
    assertThat(run.status()).isEqualTo(1);
    JsonNode answer = json(run);
    assertThat(codes(answer, "error")).contains("RC23");
    assertThat(codes(answer, "warning")).contains("RC26");
  }

  @Test
  void wear_of_the_wrong_sign_is_refused_and_mended_by_the_value_given() throws Exception {
    FlankfitProcess run = gauge("broken-wear-sign");
    assertThat(run.status()).isEqualTo(1);
    JsonNode thread = json(run).get("threads").get(0);
    assertThat(thread.get("verdict").asText()).isEqualTo("GO refused");
    JsonNode offset = thread.get("offset");
    assertThat(offset.get("register").asText()).isEqualTo("D4");
    assertThat(offset.get("now").asDouble()).isEqualTo(0.045);
    assertThat(offset.get("sensitivity").asDouble()).isBetween(-2.0, -1.9);

    double key = offset.get("keyToMiddle").asDouble();
    Path sheet = Files.createTempFile("mended", ".setup.toml");
    try {
      Files.writeString(
          sheet,
          Files.readString(FOLDER.resolve("broken-wear-sign.setup.toml"))
              .replace("wear = 0.045", "wear = " + key));
      FlankfitProcess mended =
          FlankfitProcess.run(
              "gauge",
              FOLDER.resolve("broken-wear-sign.nc").toString(),
              "--setup",
              sheet.toString(),
              "--format",
              "json");
      assertThat(mended.status()).isZero();
      JsonNode measured = json(mended).get("threads").get(0).get("finished");
      // The middle of 19.026 and 19.216 (ISO 965-1), to the least increment of the register.
      assertThat(measured.get("pitchSimple").asDouble()).isCloseTo(19.121, within(0.001));
    } finally {
      Files.delete(sheet);
    }
  }

  @Test
  void text_says_the_verdict_first_and_the_cautions_last_on_one_screen() throws Exception {
    FlankfitProcess run =
        FlankfitProcess.run("gauge", FOLDER.resolve("filter-housing-m20.nc").toString());
    List<String> lines = run.out().lines().toList();
    assertThat(lines.get(0)).isEqualTo("[+] M20x1.5-6H in port A: gauges good");
    assertThat(lines.get(lines.size() - 1)).contains("calibrated gauges");
    assertThat(lines).hasSizeLessThan(45);
    assertThat(lines).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
  }

  @Test
  void inputs_are_never_changed() throws Exception {
    List<byte[]> before = inputs();
    for (String program : programs()) {
      FlankfitProcess.run("gauge", program);
    }
    List<byte[]> after = inputs();
    for (int i = 0; i < before.size(); i++) {
      assertThat(after.get(i)).isEqualTo(before.get(i));
    }
  }

  private static List<byte[]> inputs() throws IOException {
    List<byte[]> all = new ArrayList<>();
    try (Stream<Path> files = Files.list(FOLDER)) {
      for (Path file : files.sorted().toList()) {
        all.add(Files.readAllBytes(file));
      }
    }
    return all;
  }

  private static FlankfitProcess gauge(String name) throws IOException, InterruptedException {
    return FlankfitProcess.run(
        "gauge", FOLDER.resolve(name + ".nc").toString(), "--format", "json");
  }

  private static JsonNode json(FlankfitProcess run) throws IOException {
    return new ObjectMapper().readTree(run.out());
  }

  private static List<String> texts(JsonNode array, String key) {
    List<String> all = new ArrayList<>();
    array.forEach(node -> all.add(node.get(key).asText()));
    return all;
  }

  private static List<String> codes(JsonNode answer, String severity) {
    List<String> all = new ArrayList<>();
    for (JsonNode finding : answer.get("findings")) {
      if (finding.get("severity").asText().equals(severity)) {
        all.add(finding.get("code").asText());
      }
    }
    return all;
  }
}
