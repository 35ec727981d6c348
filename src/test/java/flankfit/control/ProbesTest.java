package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.finding.Code;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.unit.Angles;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Short probes after a safe context: the finding named, on the last block, and whether it stops.
 */
class ProbesTest {
  private static final String SHEET =
      "D1 = { geometry = 1.0 }, D2 = { geometry = 2.0 }, H1 = { geometry = 100.0 }";
  private static final String CONTEXT =
      "G21 G90 G17 G54 G40 G49 G80 S1000 M3 F200.\nG0 X0 Y0 Z5.\n";

  /** Rules on the finished tape are no part of the control. */
  private static final Set<String> RULES_ON_THE_TAPE = Set.of("HZ02");

  private static List<String> rows() {
    return Example.text("examples/probes.txt")
        .lines()
        .filter(row -> !row.startsWith("#") || row.contains(" | "))
        .filter(row -> !row.startsWith("# context"))
        .toList();
  }

  private static String blocks(String row) {
    return row.substring(0, row.lastIndexOf(" | ")).replaceAll(" ?⏎ ?", "\n");
  }

  private static String code(String row) {
    return row.substring(row.lastIndexOf(" | ") + 3).substring(0, 4);
  }

  private static boolean isKnown(String code) {
    return Arrays.stream(Code.values()).anyMatch(known -> known.name().equals(code));
  }

  static Stream<String> modelled() {
    return rows().stream().filter(row -> !RULES_ON_THE_TAPE.contains(code(row)));
  }

  private static Interpretation run(String blocks) {
    byte[] bytes = (CONTEXT + blocks + "\n").getBytes(StandardCharsets.UTF_8);
    return Interpreter.interpret(SourceText.of("probe.nc", bytes), ExampleSheet.of(SHEET));
  }

  @ParameterizedTest
  @MethodSource("modelled")
  void probe_gives_its_finding(String row) {
    assertThat(isKnown(code(row))).isTrue();
    Interpretation result = run(blocks(row));
    int last = 2 + (int) blocks(row).lines().count();
    assertThat(result.findings())
        .anyMatch(f -> f.code().name().equals(code(row)) && f.place().line() == last);
    boolean stops = row.endsWith("stops") || row.contains("stops (");
    assertThat(result.complete()).as("%s", result.stoppedAt()).isEqualTo(!stops);
    if (stops) {
      assertThat(result.stoppedAt()).contains(new Stop(last, Code.valueOf(code(row))));
    }
  }

  @Test
  void blank_inside_a_number_is_read_over() {
    assertThat(run("G1 X1 5.").tape().toX(1)).isEqualTo(15);
  }

  @Test
  void short_arc_by_radius_sweeps_as_computed() {
    Tape tape = run("G3 X9.9 Y0 R4.96").tape();
    assertThat(Math.round(Angles.toDegrees(tape.sweep(1)) * 1e6)).isEqualTo(172722206L);
  }
}
