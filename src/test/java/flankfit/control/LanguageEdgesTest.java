package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.nc.SourceText;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Limits exactly at their edge, the rarer severities, and every function of the tables: what is
 * just allowed, and what is just not.
 */
class LanguageEdgesTest {
  private static final String HEAD = "G21 G90 G17 G54 S1000 M3 F200.\nG0 X0 Y0 Z5.\n";
  private static final String NOTHING = "-";

  private static Interpretation run(String text, String sheet) {
    return Interpreter.interpret(
        SourceText.of("edge.nc", text.getBytes(StandardCharsets.UTF_8)), ExampleSheet.of(sheet));
  }

  private static Optional<Severity> severity(Code code, String blocks, String sheet) {
    String body = blocks.replace(" ; ", "\n");
    return run(HEAD + body + "\nM30\n", sheet).findings().stream()
        .filter(finding -> finding.code() == code)
        .map(Finding::severity)
        .findFirst();
  }

  private static void expect(Code code, String expected, String blocks, String sheet) {
    String found = severity(code, blocks, sheet).map(Severity::word).orElse(NOTHING);
    assertThat(found).as("%s in %s", code, blocks).isEqualTo(expected);
  }

  @ParameterizedTest(name = "{2}: {0} {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          AR11 | -       | G2 X20.0028 I10.
          AR11 | warning | G2 X20.0029 I10.
          AR11 | -       | G2 X19.9972 I10.
          AR11 | warning | G2 X20.0199 I10.
          AR01 | -       | G2 X20.0199 I10.
          AR01 | error   | G2 X20.0201 I10.
          AR11 | -       | G20 ; F9. ; G2 X2.00028 I1.
          AR11 | warning | G20 ; F9. ; G2 X2.00029 I1.
          AR12 | warning | G2 X20. R9.981
          AR05 | error   | G2 X20. R9.979
          AR12 | -       | G2 X20. R10.
          AR10 | warning | G2 X.0027 I10.
          AR10 | -       | G2 X.003 Y.001 I10.
          AR09 | -       | G3 X19.8269 R10.
          AR09 | warning | G3 X19.8302 R10.
          AR09 | warning | G3 X19.8302 R-10.
          AR09 | -       | G3 X19.8269 R-10.
          AR09 | -       | G3 X2.615 R-10.
          AR09 | warning | G3 X2.605 R-10.
          """)
  void arcs_at_the_edge(Code code, String expected, String blocks) {
    expect(code, expected, blocks, "");
  }

  @ParameterizedTest(name = "{2}: {0} {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          RD12 | -       | G1 X1.23456789012345
          RD12 | error   | G1 X1.234567890123456
          RD12 | -       | G1 X0000000000000000001.
          RD13 | -       | G1 X1.001
          RD13 | warning | G1 X1.0001
          RD13 | -       | G20 ; F9. ; G1 X1.0001
          RD13 | warning | G20 ; F9. ; G1 X1.00001
          WD10 | -       | G1.00001 X5.
          WD10 | error   | G1.001 X5.
          WD11 | -       | G1 X100000.
          WD11 | error   | G1 X100000.1
          WD11 | -       | G43 H999 Z5.
          WD11 | error   | G43 H1000 Z5.
          WD11 | -       | T99999999
          WD11 | error   | T100000000
          WD11 | error   | S-1
          WD11 | -       | G54.1 P99
          WD11 | error   | G54.1 P100
          WD11 | error   | G4 P-1
          WD13 | -       | M3 M8 M48
          WD13 | note    | M3 M7 M8 M48
          MD09 | -       | F1. ; G1 X5.
          MD09 | warning | F.9 ; G1 X5.
          MD09 | -       | F20000. ; G1 X5.
          MD09 | warning | F20001. ; G1 X5.
          CY17 | -       | G4 P10.
          CY17 | warning | G4 P10.1
          CY17 | -       | G4 P10000
          CY17 | warning | G4 P10001
          OF23 | -       | G51 P99. ; G50
          OF23 | warning | G51 P100. ; G50
          OF23 | -       | G51 P.011 ; G50
          OF23 | warning | G51 P.01 ; G50
          FL02 | -       | #1=[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[1]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]
          FL02 | error   | #1=[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[1]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]
          CY04 | warning | G83 X5. Z-5. R2. Q1. ; G80
          CY04 | -       | G83 X5. Z-5. R2. Q1.01 ; G80
          CY04 | -       | G83 X5. Z-1998. R2. Q2. ; G80
          CY04 | error   | G83 X5. Z-1998.1 R2. Q2. ; G80
          """)
  void numbers_at_the_edge(Code code, String expected, String blocks) {
    expect(code, expected, blocks, "");
  }

  @ParameterizedTest(name = "{3}, {2}: {0} {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          WD11 | -       | G2 I5. P1000             | arc-turns = "P"
          WD11 | error   | G2 I5. P1001             | arc-turns = "P"
          WD11 | error   | G2 I5. P0                | arc-turns = "P"
          WD11 | -       | G2 I5. L1000             | arc-turns = "L"
          AR08 | error   | G2 I5. P2                | arc-turns = "L"
          AR14 | error   | G2 X5. R-5.              | long-arc-by-negative-r = "false"
          CY10 | warning | G81 X5. Z-1. R2. ; G80 ; X9. | after-g80 = "previous-motion"
          CY10 | error   | G81 X5. Z-1. R2. ; G80 ; X9. | after-g80 = "error"
          RD16 | warning | X999                     | number-reading = "least-increment"
          RD16 | -       | X1000                    | number-reading = "least-increment"
          RD16 | -       | X0                       | number-reading = "least-increment"
          RC29 | -       | G41 D1 G1 X9. ; Y9. ; G40 X0 | D1 = { geometry = 0.0, wear = 0.5 }
          RC29 | warning | G41 D1 G1 X9. ; Y9. ; G40 X0 | D1 = { geometry = 0.0, wear = 0.51 }
          RC15 | warning | G41 D1 G1 X9. ; Y9. ; G40 X0 | D1 = { geometry = -2.0 }
          FL24 | -       | #1=0 ; WHILE [#1 LT 3] DO1 ; #1=#1+1 ; END1 | loop-limit = 3
          FL24 | error   | #1=0 ; WHILE [#1 LT 4] DO1 ; #1=#1+1 ; END1 | loop-limit = 3
          FL25 | -       | G1 X1. ; X2.             | block-limit = 5
          FL25 | error   | G1 X1. ; X2. ; X3.       | block-limit = 5
          """)
  void switches_at_the_edge(Code code, String expected, String blocks, String sheet) {
    expect(code, expected, blocks, sheet);
  }

  @ParameterizedTest
  @CsvSource({"256,-", "257,warning", "65536,warning", "65537,error"})
  void line_may_be_so_long(int characters, String expected) {
    String block = "G1 X5. (" + "a".repeat(characters - 9) + ")";
    assertThat(block).hasSize(characters);
    expect(Code.RD18, expected, block, "");
    assertThat(run(HEAD + block + "\nM30\n", "").complete()).isEqualTo(!expected.equals("error"));
  }

  @Test
  void text_outside_the_percent_marks_weighs_by_what_it_holds() {
    String program = "%\nO1\n" + HEAD + "M30\n%\n";
    assertThat(rd02("valve block\n" + program)).contains(Severity.NOTE);
    assertThat(rd02(program + "\n")).isEmpty();
    assertThat(rd02(program + "----\n")).contains(Severity.NOTE);
    assertThat(rd02(program + "G0 X5.\n")).contains(Severity.WARNING);
  }

  private static Optional<Severity> rd02(String text) {
    return run(text, "").findings().stream()
        .filter(finding -> finding.code() == Code.RD02)
        .map(Finding::severity)
        .findFirst();
  }

  @Test
  void control_characters_up_to_a_hundredth_are_no_reason_to_refuse() {
    assertThat(withControlCharacters(10)).isEqualTo(Code.RD05);
    assertThat(withControlCharacters(11)).isEqualTo(Code.RD01);
  }

  /** What stops a text of 1001 bytes of which some are no characters. */
  private static Code withControlCharacters(int number) {
    String end = "\u0001".repeat(number) + "\nM30\n";
    String text = HEAD + "(" + "a".repeat(1001 - HEAD.length() - 2 - end.length()) + ")" + end;
    assertThat(text).hasSize(1001); // the last line end does not count
    return run(text, "").stoppedAt().orElseThrow().code();
  }

  @Test
  void end_marks_of_old_systems_and_letters_of_any_language_in_comments_are_accepted() {
    assertThat(run(HEAD + "G1 X5.\nM30\n\u001a", "").complete()).isTrue();
    assertThat(run(HEAD + "G1 X5.\nM30\n\u0004\n", "").complete()).isTrue();
    assertThat(run(HEAD + "(" + "ä文я".repeat(80) + ")\nM30\n", "").complete()).isTrue();
  }

  @Test
  void missing_points_are_a_slip_beside_others_and_a_habit_alone() {
    assertThat(severity(Code.RD15, "G1 X5", "")).contains(Severity.WARNING);
    Interpretation habit = run("G21 G90 G17 G54 S9 M3 F200\nG0 X5 Y5 Z5\nX0\nM30\n", "");
    List<Finding> notes = habit.findings().stream().filter(f -> f.code() == Code.RD15).toList();
    assertThat(notes).extracting(Finding::severity).containsExactly(Severity.NOTE);
  }

  @Test
  void calls_go_ten_deep() {
    StringBuilder chain = new StringBuilder(HEAD + "M98 P1\nM30\n");
    for (int program = 1; program < 10; program++) {
      chain.append("O").append(program).append("\nM98 P").append(program + 1).append("\nM99\n");
    }
    assertThat(run(chain + "O10\nG1 X5.\nM99\n", "").complete()).isTrue();
    assertThat(run(chain + "O10\nM98 P11\nM99\nO11\nM99\n", "").stoppedAt())
        .hasValueSatisfying(stop -> assertThat(stop.code()).isEqualTo(Code.FL23));
  }

  @ParameterizedTest
  @CsvSource({
    "N99999999 G1 X5., true",
    "N999999999 G1 X5., false",
    "M98 P5 L9999, true",
    "M98 P5 L10000, false"
  })
  void numbers_of_blocks_and_calls_have_so_many_digits(String block, boolean accepted) {
    String text = HEAD + block + "\nM30\nO5\nM99\n";
    assertThat(run(text, "").complete()).isEqualTo(accepted);
  }

  /** G functions by the table, each as the shortest block that uses it. */
  private static final List<String> FUNCTIONS =
      List.of(
          "G0 X5.",
          "G1 X5.",
          "G2 I5.",
          "G3 I5.",
          "G4 P1.",
          "G9 G1 X5.",
          "G10 L10 P1 R5.",
          "G15",
          "G17",
          "G18",
          "G19",
          "G20",
          "G21",
          "G28 Z5.",
          "G30 Z5.",
          "G40",
          "G41 D0 G1 X5.",
          "G42 D0 G1 X5.",
          "G43 H0 Z5.",
          "G44 H0 Z5.",
          "G49",
          "G50",
          "G51 P2.",
          "G50.1",
          "G51.1 X0",
          "G52 X5.",
          "G53 G0 X5.",
          "G54",
          "G55",
          "G56",
          "G57",
          "G58",
          "G59",
          "G54.1 P1",
          "G59.1",
          "G59.2",
          "G59.3",
          "G61",
          "G61.1",
          "G64",
          "G65 P5",
          "G66 P5",
          "G67",
          "G68 R5.",
          "G69",
          "G70",
          "G71",
          "G73 X5. Z-5. R2. Q2.",
          "G76 X5. Z-5. R2. Q1.",
          "G80",
          "G81 X5. Z-5. R2.",
          "G82 X5. Z-5. R2. P1.",
          "G83 X5. Z-5. R2. Q2.",
          "G84 X5. Z-5. R2.",
          "G85 X5. Z-5. R2.",
          "G86 X5. Z-5. R2.",
          "G87 X5. Z5. R-9. Q1.",
          "G88 X5. Z-5. R2.",
          "G89 X5. Z-5. R2.",
          "G90",
          "G91",
          "G90.1",
          "G91.1",
          "G92 X5.",
          "G92.1",
          "G92.2",
          "G92.3",
          "G93",
          "G94",
          "G95",
          "G97",
          "G98",
          "G99");

  static Stream<String> functions() {
    return FUNCTIONS.stream();
  }

  @ParameterizedTest
  @MethodSource("functions")
  void function_of_the_table_is_executed(String block) {
    Interpretation result = run(HEAD + block + "\nM30\nO5\nM99\n", "");
    assertThat(result.complete()).as("%s", result.findings()).isTrue();
    assertThat(result.findings()).extracting(Finding::code).doesNotContain(Code.WD01, Code.WD09);
  }

  @Test
  void left_hand_tapping_wants_the_spindle_the_other_way() {
    assertThat(run(HEAD + "G74 X5. Z-5. R2.\nM30\n", "").stoppedAt())
        .hasValueSatisfying(stop -> assertThat(stop.code()).isEqualTo(Code.CY08));
    assertThat(run(HEAD + "M5\nM4\nG74 X5. Z-5. R2.\nG80\nM30\n", "").complete()).isTrue();
  }

  /** Every number to G199.9 that is not in the table. */
  static Stream<String> otherFunctions() {
    List<String> known =
        Stream.concat(FUNCTIONS.stream(), Stream.of("G74")).map(b -> b.split(" ", 2)[0]).toList();
    return IntStream.range(0, 2000)
        .mapToObj(n -> "G" + n / 10 + (n % 10 == 0 ? "" : "." + n % 10))
        .filter(name -> !known.contains(name));
  }

  @Test
  void function_that_is_not_in_the_table_stops() {
    assertThat(otherFunctions())
        .allSatisfy(
            name ->
                assertThat(run(HEAD + name + "\nM30\n", "").stoppedAt().map(Stop::code))
                    .as(name)
                    .contains(Code.WD01));
  }

  @ParameterizedTest
  @ValueSource(strings = {"G33", "G31", "G16", "G12", "G13", "G5.1", "G60", "G43.4", "G96"})
  void well_known_function_is_named_when_it_is_refused(String name) {
    Finding refused =
        run(HEAD + name + "\nM30\n", "").findings().stream()
            .filter(f -> f.code() == Code.WD01)
            .findFirst()
            .orElseThrow();
    assertThat(refused.what()).startsWith(name + " is not modelled: ");
  }

  @Test
  void every_m_function_is_known_or_told() {
    List<Integer> known = List.of(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 19, 30, 48, 49, 60, 98, 99);
    for (int m = 0; m < 200; m++) {
      String block = m == 6 ? "T1 M6" : m == 98 ? "M98 P5" : "M" + m;
      Interpretation result = run(HEAD + block + "\nM30\nO5\nM99\n", "");
      assertThat(result.complete()).as(block).isTrue();
      boolean told = result.findings().stream().anyMatch(f -> f.code() == Code.WD07);
      assertThat(told).as(block).isEqualTo(!known.contains(m));
    }
  }
}
