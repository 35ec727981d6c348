package flankfit.check;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.control.Example;
import flankfit.control.ExampleSheet;
import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.gauge.GaugeRequest;
import flankfit.gauge.ThreadGauging;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every worked example and every probe of the language with the control, the rules and, where a
 * thread is wanted, gauging: all that must be found is found, what must not be is not.
 */
class WorkedExamplesRulesTest {
  private static final int LAST = 59;
  private static final String CONTEXT =
      "G21 G90 G17 G54 G40 G49 G80 S1000 M3 F200.\nG0 X0 Y0 Z5.\n";
  private static final String PROBE_SHEET =
      "D1 = { geometry = 1.0 }, D2 = { geometry = 2.0 }, H1 = { geometry = 100.0 }";

  static Stream<String> examples() {
    return IntStream.rangeClosed(1, LAST).mapToObj(n -> String.format(Locale.ROOT, "ex-%02d", n));
  }

  static Stream<String> probes() {
    return Example.text("examples/probes.txt")
        .lines()
        .filter(row -> !row.startsWith("#") || row.contains(" | "))
        .filter(row -> !row.startsWith("# context"));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void example_gives_what_must_be_found_and_not_what_must_not(String name) {
    Example example = Example.load(name);
    List<Finding> findings = run(example.program(), ExampleSheet.of(example.sheet()));
    List<String> found = new ArrayList<>();
    findings.forEach(f -> found.add(f.code() + "@" + f.place().line()));
    findings.forEach(f -> found.add(f.code().name()));
    assertThat(found).as("%s: %s", example.title(), findings).containsAll(example.must());
    assertThat(found).as(example.title()).doesNotContainAnyElementsOf(orNothing(example.mustNot()));
  }

  private static List<String> orNothing(List<String> codes) {
    return codes.isEmpty() ? List.of("nothing") : codes;
  }

  @ParameterizedTest
  @MethodSource("probes")
  void probe_gives_its_finding_on_its_last_block(String row) {
    int bar = row.lastIndexOf(" | ");
    String blocks = row.substring(0, bar).replaceAll(" ?⏎ ?", "\n");
    String code = row.substring(bar + 3, bar + 7);
    int last = 2 + (int) blocks.lines().count();
    List<Finding> findings = run(CONTEXT + blocks + "\n", ExampleSheet.of(PROBE_SHEET));
    assertThat(findings)
        .as(row)
        .anyMatch(f -> f.code().name().equals(code) && f.place().line() == last);
  }

  @ParameterizedTest
  @MethodSource("examples")
  void rules_come_in_order_and_are_worded_after_the_house(String name) {
    Example example = Example.load(name);
    SetupSheet sheet = ExampleSheet.of(example.sheet());
    List<Finding> findings = ProgramCheck.findings(interpret(example.program(), sheet), sheet);
    assertThat(findings).extracting(Finding::place).isSortedAccordingTo(Place::compareTo);
    for (Finding finding : findings) {
      assertThat(finding.what()).isNotBlank().doesNotEndWith(".").doesNotContain("  ", "NaN");
      assertThat(finding.why() + finding.fix()).isNotBlank().doesNotContain("  ", "null");
    }
  }

  private static List<Finding> run(String program, SetupSheet sheet) {
    Interpretation done = interpret(program, sheet);
    List<Finding> findings = new ArrayList<>(ProgramCheck.checked(done, sheet).findings());
    if (sheet.holes().stream().anyMatch(hole -> hole.thread().isPresent())) {
      GaugeRequest request =
          new GaugeRequest(done.file(), done.tape(), sheet, offsets -> Optional.empty());
      findings.addAll(ThreadGauging.gauge(request).findings());
    }
    return findings;
  }

  private static Interpretation interpret(String program, SetupSheet sheet) {
    byte[] bytes = program.getBytes(StandardCharsets.UTF_8);
    return Interpreter.interpret(SourceText.of("example.nc", bytes), sheet);
  }
}
