package flankfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bad input: what, where, why, fix; the right status; no stack trace; nothing written. */
class BadInputCommandTest {
  private static final String SAMPLE = "sample-programs/filter-housing-m20.nc";
  private static final String GOOD_SHEET = "sample-programs/filter-housing-m20.setup.toml";

  @TempDir private Path folder;

  @Test
  void missing_program_names_the_nearest_file() throws Exception {
    FlankfitProcess run = FlankfitProcess.run("gauge", "sample-programs/filter-housing-m2.nc");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .contains("RQ01", "does not exist", "why", "filter-housing-m20.nc")
        .doesNotContain("Exception", "\tat ");
  }

  @Test
  void missing_sheet_is_a_wrong_request() throws Exception {
    FlankfitProcess run = FlankfitProcess.run("gauge", SAMPLE, "--setup", "nowhere.toml");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("RQ01", "setup sheet nowhere.toml does not exist");
  }

  @Test
  void empty_file_is_not_a_program() throws Exception {
    FlankfitProcess run = motion("");
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.out()).contains("error RD01", "not program text").doesNotContain("\tat ");
  }

  @Test
  void binary_file_is_not_a_program() throws Exception {
    Path file = folder.resolve("binary.nc");
    byte[] bytes = new byte[4096];
    for (int i = 0; i < bytes.length; i++) {
      bytes[i] = (byte) (i * 31 % 29);
    }
    Files.write(file, bytes);
    FlankfitProcess run = FlankfitProcess.run("motion", file.toString());
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.out()).contains("error RD01").doesNotContain("\tat ");
  }

  @Test
  void arc_that_does_not_close_is_told_with_line_and_column() throws Exception {
    FlankfitProcess run =
        motion("G21 G90 G17 G54 F100. S900 M3\nG0 X3. Y0. Z5.\nG3 X0. Y-3.1 I-3. J0.\nM30\n");
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.out())
        .contains(
            ":3:", "error AR01 arc-end-off-circle", "what", "why", "fix", "stopped at line 3");
  }

  @Test
  void compensation_larger_than_an_inside_arc_is_told() throws Exception {
    Path sheet = folder.resolve("p.setup.toml");
    Files.writeString(sheet, "[offsets]\nD1 = { geometry = 4.0, wear = 0.0 }\n");
    FlankfitProcess run =
        motion(
            """
            G21 G90 G17 G54 F100. S900 M3
            G0 X0. Y0. Z5.
            G1 G41 D1 X3. Y0.
            G3 I-3.
            G1 G40 X0. Y0.
            M30
            """);
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.out()).contains("error RC05 offset-exceeds-arc", ":4");
  }

  @Test
  void subprogram_files_lie_beside_the_sheet() throws Exception {
    Files.writeString(folder.resolve("p.setup.toml"), "[control]\nsubprograms = [\"holes.nc\"]\n");
    String text = "G21 G90 G17 G54 F100. S900 M3\nG0 X0. Y0. Z5.\nM98 P70\nM30\n";
    FlankfitProcess missing = motion(text);
    assertThat(missing.status()).isEqualTo(2);
    assertThat(missing.err()).contains("RQ01", "subprogram file", "holes.nc does not exist");
    Files.writeString(folder.resolve("holes.nc"), "O70\nG1 X5. R2.\nM99\n");
    FlankfitProcess run = motion(text);
    assertThat(run.status()).isEqualTo(0);
    assertThat(run.out()).contains("holes.nc:2:8: warning WD09", "2 | G1 X5. R2.");
  }

  @Test
  void unknown_words_are_named_not_skipped() throws Exception {
    for (String word : List.of("G12", "M98", "A5.", "#100=1", "G16")) {
      FlankfitProcess run =
          motion("G21 G90 G17 G54 F100. S900 M3\n" + word + " R1. Z-2. X1.\nM30\n");
      assertThat(run.status()).as(word).isEqualTo(1);
      assertThat(run.out()).as(word).contains("error", word.substring(0, 1));
    }
  }

  @Test
  void sheet_with_a_wrong_key_names_the_nearest() throws Exception {
    FlankfitProcess run =
        withSheet(sheet().replace("diameter-tolerance", "x").replace("rows  ", "row  "));
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("SH02", "row", "rows", "setup.toml:").doesNotContain("\tat ");
  }

  @Test
  void sheet_with_a_wrong_unit_is_told() throws Exception {
    FlankfitProcess run = withSheet(sheet().replace("= 18.5", "= \"18.5 furlong\""));
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("SH06", "furlong").doesNotContain("\tat ");
  }

  @Test
  void hole_without_thread_and_no_thread_found_are_told() throws Exception {
    FlankfitProcess without =
        withSheet(
            sheet()
                .replace("thread       = \"M20x1.5-6H\"", "")
                .replace("thread-depth = 16.0", ""));
    assertThat(without.status()).isEqualTo(1);
    assertThat(without.out()).contains("GA02");

    Path file = folder.resolve("flat.nc");
    Files.writeString(file, "G21 G90 G17 G54 F100. S900 M3\nG0 X0. Y0. Z5.\nG1 X9.\nM30\n");
    FlankfitProcess none = FlankfitProcess.run("gauge", file.toString());
    assertThat(none.status()).isEqualTo(1);
    assertThat(none.out()).contains("GA01");
  }

  @Test
  void output_file_is_never_an_input_and_nothing_is_left_behind() throws Exception {
    byte[] before = Files.readAllBytes(Path.of(SAMPLE));
    FlankfitProcess run = FlankfitProcess.run("motion", SAMPLE, "--image", SAMPLE);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("RQ03", "input");
    assertThat(Files.readAllBytes(Path.of(SAMPLE))).isEqualTo(before);

    Path picture = folder.resolve("missing").resolve("x.png");
    assertThat(FlankfitProcess.run("motion", SAMPLE, "--image", picture.toString()).status())
        .isEqualTo(2);
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).isEmpty();
    }
  }

  @Test
  void usage_mistakes_end_with_two_and_a_hint() throws Exception {
    FlankfitProcess run = FlankfitProcess.run("motion", SAMPLE, "--veiw", "plan");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("--view").doesNotContain("\tat ");
    assertThat(FlankfitProcess.run().status()).isEqualTo(2);
    assertThat(FlankfitProcess.run("thread", "M20x1.5-6Q").status()).isEqualTo(2);
  }

  private FlankfitProcess motion(String program) throws IOException, InterruptedException {
    Path file = folder.resolve("p.nc");
    Files.writeString(file, program, StandardCharsets.US_ASCII);
    return FlankfitProcess.run("motion", file.toString());
  }

  private FlankfitProcess withSheet(String sheet) throws IOException, InterruptedException {
    Path file = folder.resolve("changed.setup.toml");
    Files.writeString(file, sheet);
    return FlankfitProcess.run("gauge", SAMPLE, "--setup", file.toString());
  }

  private static String sheet() throws IOException {
    return Files.readString(Path.of(GOOD_SHEET));
  }
}
