package flankfit.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Odds, advice after gauging and the log of a batch, as a user asks for them. */
class OddsCommandTest {
  private static final String SAMPLE = "sample-programs/filter-housing-m20.nc";
  private static final String FOUR = "sample-programs/valve-manifold-four-m12.nc";
  private static final String LOG = "sample-programs/filter-housing-m20.parts.jsonl";

  @TempDir private Path folder;

  private static JsonNode json(FlankfitProcess run) throws Exception {
    JsonNode answer = new ObjectMapper().readTree(run.out());
    assertThat(JsonShape.faults("gauge", answer)).isEmpty();
    return answer;
  }

  @Test
  void odds_are_told_and_keep_their_shape() throws Exception {
    FlankfitProcess text = FlankfitProcess.run("gauge", SAMPLE, "--odds");
    assertThat(text.status()).isZero();
    assertThat(text.out()).contains("odds for M20x1.5-6H in port A", "what scatters most");
    assertThat(text.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThan(101));
    FlankfitProcess run = FlankfitProcess.run("gauge", FOUR, "--odds", "--format", "json");
    for (JsonNode thread : json(run).get("threads")) {
      JsonNode odds = thread.get("odds");
      assertThat(odds.get("good").asDouble()).isBetween(0.5, 1.0);
      double sum = 0;
      for (JsonNode contributor : odds.get("contributors")) {
        sum += contributor.get("share").asDouble();
      }
      assertThat(sum).isCloseTo(1, within(1e-6));
      assertThat(thread.has("gauging")).isFalse();
    }
  }

  @Test
  void what_a_gauge_did_gives_the_value_to_key_in() throws Exception {
    JsonNode thread =
        json(FlankfitProcess.run(
                "gauge",
                SAMPLE,
                "--observed",
                "pitch=19.105±0.004",
                "--observed",
                "go=enters",
                "--format",
                "json"))
            .get("threads")
            .get(0);
    JsonNode key = thread.get("gauging").get("key");
    assertThat(key.get("register").asText()).isEqualTo("D4");
    // 19.105 is to become about 19.130: 0.025 by 1.98 is 0.013 less wear than -0.045.
    assertThat(key.get("wear").asDouble()).isCloseTo(-0.058, within(0.004));
    assertThat(key.get("good").asDouble()).isGreaterThan(0.99);
    FlankfitProcess text = FlankfitProcess.run("gauge", FOUR, "--observed", "port 3: go=stops:3");
    assertThat(text.out()).contains("after gauging port 3: go=stops:3", "key in D");
  }

  @Test
  void observations_that_are_none_end_with_two_and_say_what_is_wanted() throws Exception {
    for (String[] words :
        new String[][] {
          {FOUR, "--observed", "go=enters"},
          {FOUR, "--observed", "port 9: go=enters"},
          {SAMPLE, "--observed", "go=entres"},
          {SAMPLE, "--part", "3"},
          {SAMPLE, "--observed", "go=enters", "--part", "0"},
          {SAMPLE, "--observed", "go=enters", "--date", "yesterday"},
          {SAMPLE, "--odds", "--draws", "0"}
        }) {
      List<String> all = new ArrayList<>(List.of("gauge"));
      all.addAll(List.of(words));
      FlankfitProcess run = FlankfitProcess.run(all.toArray(new String[0]));
      assertThat(run.status()).as("%s", all).isEqualTo(2);
      assertThat(run.err()).contains("RQ04", "why").doesNotContain("\tat ");
      assertThat(run.out()).isEmpty();
    }
  }

  @Test
  void observations_that_clash_are_named_and_an_answer_is_given() throws Exception {
    FlankfitProcess run =
        FlankfitProcess.run(
            "gauge", SAMPLE, "--observed", "go=stops", "--observed", "no-go=enters");
    assertThat(run.out()).contains("warning GA10", "go=stops", "no-go=enters", "key in D4 wear");
  }

  @Test
  void the_sample_log_shows_wear_and_is_not_changed_by_reading() throws Exception {
    byte[] before = Files.readAllBytes(Path.of(LOG));
    FlankfitProcess run = FlankfitProcess.run("gauge", SAMPLE, "--log", LOG, "--format", "json");
    assertThat(run.status()).isZero();
    JsonNode trend = json(run).get("threads").get(0).get("gauging").get("trend");
    assertThat(trend.get("pitchPerPart").get("value").asDouble()).isBetween(-0.0015, -0.0003);
    assertThat(trend.get("reenterAt").asInt()).isBetween(60, 400);
    assertThat(Files.readAllBytes(Path.of(LOG))).isEqualTo(before);
    for (String line : Files.readAllLines(Path.of(LOG))) {
      assertThat(JsonShape.faults("part", new ObjectMapper().readTree(line))).isEmpty();
    }
  }

  @Test
  void a_log_of_another_program_is_refused_and_not_written() throws Exception {
    Path log = folder.resolve("log.jsonl");
    Files.copy(Path.of(LOG), log);
    byte[] before = Files.readAllBytes(log);
    FlankfitProcess run =
        FlankfitProcess.run(
            "gauge", FOUR, "--log", log.toString(), "--observed", "port 1: go=enters");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("error RQ07", "filter-housing-m20.nc");
    assertThat(Files.readAllBytes(log)).isEqualTo(before);
    assertThat(
            FlankfitProcess.run("gauge", SAMPLE, "--log", SAMPLE, "--observed", "go=enters").err())
        .contains("RQ03");
  }

  @Test
  void many_writers_at_once_leave_whole_lines() throws Exception {
    Path log = folder.resolve("log.jsonl");
    List<CompletableFuture<FlankfitProcess>> runs = new ArrayList<>();
    for (int i = 1; i <= 4; i++) {
      String part = Integer.toString(i);
      runs.add(
          CompletableFuture.supplyAsync(
              () -> {
                try {
                  return FlankfitProcess.run(
                      "gauge",
                      SAMPLE,
                      "--log",
                      log.toString(),
                      "--part",
                      part,
                      "--observed",
                      "go=enters");
                } catch (Exception e) {
                  throw new CompletionException(e);
                }
              }));
    }
    for (CompletableFuture<FlankfitProcess> run : runs) {
      assertThat(run.join().status()).isZero();
    }
    List<Integer> parts = new ArrayList<>();
    for (String line : Files.readAllLines(log)) {
      parts.add(new ObjectMapper().readTree(line).get("part").asInt());
    }
    assertThat(parts).containsExactlyInAnyOrder(1, 2, 3, 4);
  }
}
