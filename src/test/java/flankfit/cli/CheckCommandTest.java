package flankfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import flankfit.finding.Code;
import flankfit.finding.CodePage;
import flankfit.finding.CodePages;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Many programs at once, and the pages of findings, as a user asks for them. */
class CheckCommandTest {
  private static final Path SAMPLES = Path.of("sample-programs");
  private static final String GOOD = "G21 G90 G17 G54 F100. S900 M3\nG0 X0. Y0. Z5.\nM30\n";
  private static final String OPEN_ARC =
      "G21 G90 G17 G54 F100. S900 M3\nG0 X3. Y0. Z5.\nG3 X0. Y-3.1 I-3. J0.\nM30\n";

  /** Neither drivers nor a display are found. */
  private static final Map<String, String> BARE =
      Map.of(
          "__EGL_VENDOR_LIBRARY_FILENAMES", "/nonexistent.json",
          "__EGL_VENDOR_LIBRARY_DIRS", "/nonexistent",
          "DISPLAY", "",
          "WAYLAND_DISPLAY", "");

  @TempDir private Path folder;

  private Path write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  @Test
  void folder_is_checked_in_order_with_the_sheets_beside_its_programs() throws Exception {
    FlankfitProcess run = FlankfitProcess.run("check", SAMPLES.toString());
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.err()).isEmpty();
    List<String> heads = run.out().lines().filter(line -> line.startsWith("[")).toList();
    try (Stream<Path> files = Files.list(SAMPLES)) {
      List<String> programs =
          files.map(Path::toString).filter(name -> name.endsWith(".nc")).sorted().toList();
      assertThat(heads).hasSameSizeAs(programs);
      for (int i = 0; i < programs.size(); i++) {
        assertThat(heads.get(i)).contains("] " + programs.get(i) + ": ");
        assertThat(heads.get(i).startsWith("[+]")).isEqualTo(!programs.get(i).contains("broken"));
      }
      assertThat(run.out()).contains("\n" + programs.size() + " programs, ");
    }
    assertThat(run.out())
        .contains("port A: M20x1.5-6H, gauges good", "error TH01", "A prediction is no inspection")
        .endsWith("under your own quality system.\n");
  }

  @Test
  void json_holds_every_program_and_fits_its_schema() throws Exception {
    Path broken = write("broken.nc", OPEN_ARC);
    Path good = SAMPLES.resolve("filter-housing-m20.nc");
    FlankfitProcess run =
        FlankfitProcess.run("check", good.toString(), broken.toString(), "--format", "json");
    assertThat(run.status()).isEqualTo(1);
    JsonNode answer = new ObjectMapper().readTree(run.out());
    assertThat(JsonShape.faults("check", answer)).isEmpty();
    JsonNode first = answer.path("programs").get(0);
    assertThat(first.path("file").asText()).isEqualTo(good.toString());
    assertThat(first.path("complete").asBoolean()).isTrue();
    assertThat(first.path("verdicts").get(0).path("verdict").asText()).isEqualTo("gauges good");
    JsonNode second = answer.path("programs").get(1);
    assertThat(second.path("complete").asBoolean()).isFalse();
    assertThat(second.path("verdicts")).isEmpty();
    assertThat(second.path("findings").findValuesAsText("code")).contains("AR01");
    assertThat(answer.at("/totals/programs").asInt()).isEqualTo(2);
    assertThat(answer.at("/totals/errors").asInt()).isEqualTo(1);
  }

  @Test
  void program_that_mills_no_thread_is_not_asked_for_one() throws Exception {
    FlankfitProcess run = FlankfitProcess.run("check", write("flat.nc", GOOD).toString());
    assertThat(run.status()).as(run.out()).isZero();
    assertThat(run.out()).startsWith("[+]").doesNotContain("GA01").contains(", 0 errors");
  }

  @Test
  void one_bad_sheet_or_name_does_not_keep_the_others_from_being_checked() throws Exception {
    Path one = write("one.nc", GOOD);
    write("one.setup.toml", "titel = \"Hub\"\n");
    Path two = write("two.nc", OPEN_ARC);
    FlankfitProcess run =
        FlankfitProcess.run(
            "check", one.toString(), folder.resolve("tow.nc").toString(), two.toString());
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("error SH02", "one.setup.toml line 1: unknown key")
        .contains("error RQ01", "the nearest name in that folder is two.nc")
        .contains("error AR01", "3 programs, 3 errors");
  }

  @Test
  void one_sheet_may_serve_all_programs() throws Exception {
    write("a.nc", "G21 G90 G17 G54 S900 M3\nG0 X25\nM30\n");
    Path sheet = write("all.toml", "[control]\nnumber-reading = \"least-increment\"\n");
    FlankfitProcess run =
        FlankfitProcess.run("check", folder.toString(), "--setup", sheet.toString());
    assertThat(run.status()).as(run.out()).isZero();
    assertThat(run.out()).contains("warning RD16");
  }

  @Test
  void nothing_to_check_is_a_wrong_request() throws Exception {
    FlankfitProcess none = FlankfitProcess.run("check");
    assertThat(none.status()).isEqualTo(2);
    assertThat(none.err()).contains("RQ04", "nothing to check is named");
    FlankfitProcess empty = FlankfitProcess.run("check", folder.toString());
    assertThat(empty.status()).isEqualTo(2);
    assertThat(empty.err()).contains("RQ04", "holds no program");
  }

  @Test
  void many_programs_are_checked_in_one_go() throws Exception {
    for (int i = 0; i < 500; i++) {
      write("p%03d.nc".formatted(i), i % 2 == 0 ? GOOD : OPEN_ARC);
    }
    FlankfitProcess run = FlankfitProcess.run("check", folder.toString());
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.out()).contains("500 programs, 250 errors");
  }

  @Test
  void page_of_a_code_is_printed_for_people() throws Exception {
    FlankfitProcess run = FlankfitProcess.run("check", "--explain", "rc05");
    assertThat(run.status()).isZero();
    assertThat(run.out())
        .startsWith("error RC05 offset-exceeds-arc; it stops what is read or run there\n\nmeans\n")
        .contains(
            "\nmend\n  Enter only the wear", "\nraised by\n  G21", "  D1 = { geometry = 4.0 }")
        .contains("\nmended setup sheet\n", "A prediction is no inspection")
        .doesNotContain("```", "##");
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 98);
    FlankfitProcess byName = FlankfitProcess.run("check", "--explain", "offset-exceeds-arc");
    assertThat(byName.out()).isEqualTo(run.out());
  }

  @Test
  void unknown_code_is_a_wrong_request_and_names_the_nearest() throws Exception {
    FlankfitProcess run = FlankfitProcess.run("check", "--explain", "arc-without-center");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("RQ04", "no finding has the code", "arc-without-centre");
    FlankfitProcess digits = FlankfitProcess.run("check", "--explain", "RC50");
    assertThat(digits.status()).isEqualTo(2);
    assertThat(digits.err()).contains("the nearest is RC05");
    FlankfitProcess both = FlankfitProcess.run("check", "--explain", "RC05", "x.nc");
    assertThat(both.status()).isEqualTo(2);
    assertThat(both.err()).contains("RQ04", "neither programs nor another form");
  }

  @Test
  void schema_of_the_answer_is_printed() throws Exception {
    FlankfitProcess run = FlankfitProcess.run("schema", "check");
    assertThat(run.status()).isZero();
    assertThat(new ObjectMapper().readTree(run.out())).isEqualTo(JsonShape.schema("check"));
  }

  static Stream<Code> codesOfRequests() {
    return Arrays.stream(Code.values()).filter(code -> code.name().startsWith("RQ"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("codesOfRequests")
  void request_of_the_page_raises_its_code_and_the_mended_one_does_not(Code code) throws Exception {
    Path samples = Files.createDirectory(folder.resolve(SAMPLES));
    try (Stream<Path> files = Files.list(SAMPLES)) {
      for (Path file : files.toList()) {
        Files.copy(file, samples.resolve(file.getFileName()));
      }
    }
    CodePage page = CodePages.of(code);
    FlankfitProcess guilty = run(page.guilty());
    // A rewriting or a draft that is refused is an answer, not a wrong request.
    boolean answer = code == Code.RQ08 || code == Code.RQ09;
    assertThat(guilty.status()).isIn(answer ? List.of(1) : List.of(2, 3));
    assertThat(guilty.err()).contains("error " + code.name() + " " + code.inWords());
    FlankfitProcess mended = run(page.mended());
    assertThat(mended.status()).as(mended.err()).isZero();
    assertThat(mended.err()).isEmpty();
  }

  private FlankfitProcess run(CodePage.Case shown) throws Exception {
    List<String> words =
        new ArrayList<>(List.of(shown.request().orElseThrow().strip().split(" ", -1)));
    assertThat(words.remove(0)).isEqualTo("flankfit");
    return FlankfitProcess.runIn(folder, BARE, words.toArray(new String[0]));
  }
}
