package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.nc.SourceText;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a program does when it is started again and its end has reset nothing. */
class SecondRunTest {
  private static final String KEEP = "end-reset = \"keep\"";
  private static final String SAFE = "G21 G90 G17 G54 G40 G49 G80 G94\n";

  private static List<Finding> findings(String sheet, String... lines) {
    byte[] text = (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8);
    Interpretation result =
        Interpreter.interpret(SourceText.of("part.nc", text), ExampleSheet.of(KEEP + ", " + sheet));
    assertThat(result.complete()).as("%s", result.findings()).isTrue();
    return result.findings().stream().filter(f -> f.code() == Code.AS06).toList();
  }

  private static Finding finding(String sheet, String... lines) {
    List<Finding> found = findings(sheet, lines);
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  @Test
  void program_that_states_what_it_needs_is_clean() {
    assertThat(
            findings(
                "H1 = { geometry = 80.0 }, D1 = { geometry = 0.02 }",
                SAFE + "T1 M6",
                "S2000 M3",
                "G0 X10. Y10.",
                "G43 H1 Z5. M8",
                "G1 Z-2. F200.",
                "G41 D1 X20.",
                "G3 X20. Y30. J10.",
                "G1 G40 X10.",
                "G0 Z50.",
                "X100. Y80.",
                "M30"))
        .isEmpty();
  }

  @Test
  void tool_that_comes_from_elsewhere_makes_no_difference_before_it_is_named() {
    assertThat(
            findings(
                "",
                SAFE + "S900 M3 F100.",
                "G0 Z20.",
                "X5. Y5.",
                "G1 Z-1.",
                "G0 Z9.",
                "X50.",
                "M30"))
        .isEmpty();
  }

  @Test
  void power_up_at_the_end_makes_no_second_run() {
    byte[] text =
        "G21 G54 G17 F100. S9 M3\nG0 X5. Y1.\nG91 G1 X1.\nM30\n".getBytes(StandardCharsets.UTF_8);
    Interpretation result = Interpreter.interpret(SourceText.of("a.nc", text), ExampleSheet.of(""));
    assertThat(result.findings()).extracting(Finding::code).doesNotContain(Code.AS06);
  }

  @Test
  void incremental_mode_left_on_is_told_at_the_first_block_that_it_leads_elsewhere() {
    Finding found =
        finding(
            "",
            "G21 G17 G54 S900 M3 F100.",
            "G0 X10. Y10. Z5.",
            "G1 Z-1.",
            "G91 X5.",
            "G0 Z10.",
            "M30");
    assertThat(found.severity()).isEqualTo(Severity.WARNING);
    assertThat(found.place().line()).isEqualTo(2);
    assertThat(found.what())
        .isEqualTo("second run differs from line 2 on: goes to X25 instead of X10");
    assertThat(found.why()).isEqualTo("the first run leaves G91 on");
    assertThat(found.fix()).isEqualTo("state G90 at the start");
  }

  @Test
  void compensation_left_on_displaces_the_next_run() {
    Finding found =
        finding(
            "D1 = { geometry = 4.0 }",
            "G90 S900 M3 F100.",
            "G0 X0 Y0 Z5.",
            "G1 Z-1.",
            "X10.",
            "G41 D1 Y10.",
            "X30.",
            "G0 Z50.",
            "M30");
    assertThat(found.place().line()).isEqualTo(2);
    assertThat(found.why()).isEqualTo("the first run leaves G41 D1 on");
    assertThat(found.fix()).isEqualTo("state G40 at the start");
  }

  @Test
  void work_offset_is_refused_while_compensation_is_left_on() {
    Finding found =
        finding(
            "D1 = { geometry = 4.0 }",
            "G21 G90 G17 G54 S900 M3 F100.",
            "G0 X0 Y0 Z5.",
            "G41 D1 G1 X10.",
            "Y30.",
            "M30");
    assertThat(found.place().line()).isEqualTo(1);
    assertThat(found.what()).contains("stops with RC24");
    assertThat(found.why()).isEqualTo("the first run leaves G41 D1 on");
  }

  @Test
  void variable_left_behind_counts_on() {
    Finding found =
        finding(
            "",
            SAFE + "S900 M3 F100.",
            "IF [#500 NE #0] GOTO 5",
            "#500=0",
            "N5 G0 X[10+#500] Y0 Z5.",
            "G1 Z-1.",
            "G0 Z5.",
            "#500=#500+2",
            "M30");
    assertThat(found.place().line()).isEqualTo(5);
    assertThat(found.what()).endsWith("goes to X12 instead of X10");
    assertThat(found.why()).isEqualTo("the first run leaves #500 = 2");
  }

  @Test
  void shift_that_adds_up_is_told() {
    Finding found =
        finding(
            "start = [0, 0, 100]",
            SAFE + "S900 M3 F100.",
            "G0 X0 Y0 Z5.",
            "G92 X-10.",
            "G1 Z-1.",
            "X0",
            "G0 Z100.",
            "X0 Y0",
            "M30");
    assertThat(found.what()).endsWith("line 5 on: goes to X10 instead of X0");
    assertThat(found.why()).isEqualTo("the first run leaves G92 shift X10 Y0 Z0 on");
    assertThat(found.fix()).contains("G92.1");
  }

  @Test
  void local_shift_ends_with_the_program() {
    assertThat(
            findings("", SAFE + "S900 M3 F100.", "G0 X5. Y5. Z5.", "G52 X7.", "G1 X1. Z-1.", "M30"))
        .isEmpty();
  }

  @Test
  void program_in_distances_only_depends_on_where_the_tool_stands() {
    Finding found =
        finding(
            "", "G21 G91 G17 G54 S900 M3 F100.", "G0 X10. Y5. Z-195.", "G1 Z-8.", "G0 Z20.", "M30");
    assertThat(found.place().line()).isEqualTo(2);
    assertThat(found.why())
        .isEqualTo("the first run leaves the tool at X10 Y5 Z17 instead of X0 Y0 Z200");
  }

  @Test
  void two_causes_are_both_named() {
    Finding found =
        finding(
            "start = [0, 0, 100]",
            "G21 G17 S900 M3 F100.",
            "G0 X10. Y10. Z5.",
            "G1 Z-1.",
            "G92 X20.",
            "G0 Z100.",
            "G53 X0 Y0",
            "G91",
            "M30");
    assertThat(found.place().line()).isEqualTo(2);
    assertThat(found.why()).isEqualTo("the first run leaves G91 on, and G92 shift X-10 Y0 Z0 on");
    assertThat(found.fix()).isEqualTo("state G90, G52 X0 Y0 Z0 and G92.1 at the start");
  }

  @Test
  void loop_that_a_variable_shortens_is_told() {
    Finding found =
        finding(
            "",
            SAFE + "S900 M3 F100.",
            "G0 X0 Y0 Z5.",
            "WHILE [#100 LT 3] DO1",
            "#100=#100+1",
            "G1 X#100",
            "END1",
            "G0 Z50.",
            "M30");
    assertThat(found.place().line()).isEqualTo(6);
    assertThat(found.why()).isEqualTo("the first run leaves #100 = 3");
  }

  @Test
  void plane_left_on_stops_the_second_run() {
    Finding found =
        finding(
            "",
            "G21 G90 G54 S900 M3 F100.",
            "G0 X10. Y10. Z-1.",
            "G2 X20. I5. J0",
            "G0 Z50.",
            "G18",
            "M30");
    assertThat(found.place().line()).isEqualTo(3);
    assertThat(found.what()).contains("stops with AR06 (");
    assertThat(found.why()).isEqualTo("the first run leaves G18 on");
  }

  @Test
  void feed_and_speed_left_in_force_are_told_where_they_cut() {
    assertThat(
            finding(
                    "",
                    "G21 G90 G54 G17 M3",
                    "G0 X10. Y10. Z5.",
                    "G1 Z-1. F100.",
                    "S900 X5.",
                    "G0 Z50.",
                    "M30")
                .what())
        .isEqualTo("second run differs from line 3 on: turns at 900 1/min instead of 0 1/min");
    assertThat(
            finding(
                    "",
                    "G21 G90 G54 G17 S500 M3",
                    "G0 X10. Y10. Z5.",
                    "G1 Z-1. F100.",
                    "G95 F.1 X5.",
                    "G0 Z50.",
                    "M30")
                .why())
        .isEqualTo("the first run leaves G95 on");
  }

  @Test
  void registers_and_offsets_set_by_the_program_stay() {
    Finding found =
        finding(
            "D1 = { geometry = 0.0, wear = 0.0 }",
            SAFE + "S900 M3 F100.",
            "G0 X0 Y0 Z5.",
            "G1 Z-1.",
            "G91 G10 L13 P1 R.01",
            "G90 G41 D1 X10.",
            "Y10.",
            "G40 X0",
            "G0 Z50.",
            "M30");
    assertThat(found.place().line()).isEqualTo(6);
    assertThat(found.why()).isEqualTo("the first run leaves D1 as set by G10");
  }

  @Test
  void run_that_stops_has_no_second_one() {
    byte[] text = "G91 G0 X5.\nG1 X1.\nM30\n".getBytes(StandardCharsets.UTF_8);
    Interpretation result =
        Interpreter.interpret(SourceText.of("a.nc", text), ExampleSheet.of(KEEP));
    assertThat(result.complete()).isFalse();
    assertThat(result.findings()).extracting(Finding::code).doesNotContain(Code.AS06);
  }
}
