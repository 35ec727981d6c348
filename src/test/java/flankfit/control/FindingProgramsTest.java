package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.nc.SourceText;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * For every code the smallest program that raises it, with {@code ; expect severity code line}, and
 * one that does not, with {@code ; absent code}.
 */
class FindingProgramsTest {
  /** Codes with a test of their own: bytes that no text file should hold, assumptions, geometry. */
  private static final Set<String> TESTED_ELSEWHERE =
      Set.of(
          "RD01", "RD04", "RD24", "AS01", "AS02", "AS03", "AS04", "AS05", "AS07", "RC02", "RC03",
          "RC04", "RC05", "RC06", "RC07", "RC17", "RC18", "RC19");

  static Stream<String> codes() {
    return Example.text("programs/index.txt").lines();
  }

  private static String line(String text, String key) {
    return text.lines()
        .filter(line -> line.startsWith(key))
        .map(line -> line.substring(key.length()).strip())
        .findFirst()
        .orElse("");
  }

  private static Interpretation run(String name, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return Interpreter.interpret(
        SourceText.of(name, bytes), ExampleSheet.of(line(text, "; sheet:")));
  }

  @ParameterizedTest
  @MethodSource("codes")
  void program_raises_its_finding_where_it_says(String code) {
    String text = Example.text("programs/" + code + ".nc");
    List<String> expected = Example.words(line(text, "; expect"));
    Interpretation result = run(code + ".nc", text);
    assertThat(result.findings())
        .as("%s", result.findings())
        .anyMatch(
            finding ->
                finding.code().name().equals(expected.get(1))
                    && finding.severity().word().equals(expected.get(0))
                    && finding.place().line() == Integer.parseInt(expected.get(2)));
    Code raised = Code.valueOf(code);
    boolean stops = raised.stops() && expected.get(0).equals("error") && raised != Code.FL21;
    if (stops) {
      assertThat(result.stoppedAt().map(Stop::code)).contains(raised);
    } else if (raised != Code.AR13) { // goes with AR01, which stops
      assertThat(result.complete()).as("%s", result.stoppedAt()).isTrue();
    }
  }

  @ParameterizedTest
  @MethodSource("codes")
  void mended_program_does_not_raise_it(String code) {
    String text = Example.text("programs/" + code + "-mended.nc");
    assertThat(line(text, "; absent")).isEqualTo(code);
    Interpretation result = run(code + "-mended.nc", text);
    assertThat(result.findings()).extracting(Finding::code).doesNotContain(Code.valueOf(code));
    assertThat(result.complete()).as("%s", result.stoppedAt()).isTrue();
  }

  @Test
  void every_code_of_the_control_has_its_programs() {
    List<String> covered = codes().toList();
    Set<String> families = Set.of("RD", "WD", "MD", "AR", "OF", "TL", "RC", "CY", "FL", "AS");
    for (Code code : Code.values()) {
      String name = code.name();
      if (families.contains(name.substring(0, 2)) && !TESTED_ELSEWHERE.contains(name)) {
        assertThat(covered).as("programs for %s", code).contains(name);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("codes")
  void finding_is_worded_after_the_house(String code) {
    for (Finding finding : run(code, Example.text("programs/" + code + ".nc")).findings()) {
      assertThat(finding.what()).isNotBlank().doesNotEndWith(".").doesNotContain("illegal");
      assertThat(finding.why() + finding.fix()).doesNotContain("null").doesNotContain("  ");
    }
  }
}
