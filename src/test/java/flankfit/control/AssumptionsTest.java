package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.nc.SourceText;
import flankfit.unit.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the control assumes, said once, and how lengths are worded. */
class AssumptionsTest {
  private static final String HEAD = "G21 G90 G17 G54 S1000 M3 F200.\n";

  private static Interpretation run(String text, String sheet) {
    return Interpreter.interpret(
        SourceText.of("a.nc", text.getBytes(StandardCharsets.UTF_8)), ExampleSheet.of(sheet));
  }

  private static List<String> whats(Interpretation result, Code code) {
    return result.findings().stream().filter(f -> f.code() == code).map(Finding::what).toList();
  }

  @Test
  void straight_rapids_are_assumed_only_where_a_dog_leg_would_differ() {
    assertThat(whats(run(HEAD + "G0 X5.\nZ5.\nX9. Y4.\nM30\n", ""), Code.AS01)).isEmpty();
    assertThat(whats(run(HEAD + "G0 X5. Y9.\nX1. Y2.\nM30\n", ""), Code.AS01)).hasSize(1);
  }

  @Test
  void exact_corners_are_assumed_only_where_something_is_fed() {
    assertThat(whats(run(HEAD + "G0 X5.\nM30\n", ""), Code.AS02)).isEmpty();
    assertThat(whats(run(HEAD + "G1 X5.\nG3 I4.\nM30\n", ""), Code.AS02)).hasSize(1);
  }

  @Test
  void tool_length_comes_from_its_register() {
    String program = HEAD + "T2 M6\nG43 H2 Z50.\nG43 H2 Z40.\nM30\n";
    assertThat(whats(run(program, "H2 = { geometry = 80.0 }"), Code.AS04))
        .containsExactly("length of tool 2 taken from register H2");
    assertThat(whats(run(program, ""), Code.AS04))
        .containsExactly("length of tool 2 unknown: the tip stands where Z says");
  }

  @Test
  void top_of_the_part_is_assumed_only_without_stock() {
    String program = HEAD + "T2 M6\nM30\n";
    assertThat(whats(run(program, ""), Code.AS05))
        .containsExactly("top of the part taken as Z0 of G54");
    assertThat(whats(run(program, "stock block 60 x 40 x 20, top at Z0"), Code.AS05)).isEmpty();
  }

  @Test
  void switch_that_is_set_is_listed() {
    assertThat(whats(run(HEAD + "M30\n", "arc-turns = \"P\""), Code.AS07))
        .containsExactly("arc-turns = p");
    assertThat(whats(run(HEAD + "M30\n", ""), Code.AS07)).isEmpty();
  }

  @Test
  void cycle_switches_are_listed_by_the_words_of_the_sheet() {
    String sheet =
        "scale-reading = \"thousandths\", cycle-repeat = \"L\", after-g80 = \"error\","
            + " bore-shift = \"+Y\", back-bore = \"Z-bottom\"";
    assertThat(whats(run(HEAD + "M30\n", sheet), Code.AS07))
        .containsExactlyInAnyOrder(
            "scale-reading = thousandths",
            "cycle-repeat = L",
            "after-g80 = error",
            "bore-shift = +Y",
            "back-bore = Z-bottom");
  }

  @Test
  void unit_is_the_first_one_stated_or_that_of_power_up() {
    assertThat(run("G20 G90\nG21\nM30\n", "").unit()).isEqualTo(LengthUnit.INCH);
    assertThat(run("G90\nM30\n", "").unit()).isEqualTo(LengthUnit.MILLIMETRE);
  }

  @Test
  void lengths_of_an_inch_program_are_given_in_both_units() {
    Interpretation result = run("G20 G90 G17 G54 S1000 M3 F20.\nG2 X1. I.4\nM30\n", "");
    assertThat(whats(result, Code.AR01))
        .containsExactly(
            "arc does not close: radius 0.4 in (10.16 mm) at the start, 0.6 in (15.24 mm) at the end");
  }

  @Test
  void length_register_counts_whichever_way_it_was_measured() {
    String program = HEAD + "T2 M6\nG43 H2 Z50.\nM30\n";
    for (String geometry : List.of("80.0", "-312.5")) {
      Interpretation result = run(program, "H2 = { geometry = " + geometry + ", wear = 0.04 }");
      assertThat(result.tape().toZ(0)).isEqualTo(50.04);
    }
  }

  @Test
  void missing_length_offset_is_only_a_warning_when_the_length_is_unknown() {
    Interpretation result = run("G21 G90 G17 G54\nT2 M6\nS900 M3\nG0 Z5.\nM30\n", "");
    assertThat(result.findings())
        .anyMatch(f -> f.code() == Code.TL04 && f.severity() == Severity.WARNING);
  }

  @Test
  void state_of_a_run_of_moves_is_one_object() {
    Interpretation result = run(HEAD + "G1 X5.\nY5.\nX0\nM30\n", "");
    assertThat(result.tape().states()).hasSize(1);
  }

  @Test
  void helix_feed_may_hold_in_the_plane() {
    String program = HEAD + "G0 X10. Y0 Z0\nG3 I-10. Z20.\nM30\n";
    Interpretation along = run(program, "");
    Interpretation inPlane = run(program, "helix-feed = \"in-plane\"");
    assertThat(along.tape().state(1).feed()).isEqualTo(200);
    double ratio = along.tape().length(1) / (20 * Math.PI);
    assertThat(inPlane.tape().state(1).feed() / 200).isCloseTo(ratio, within(1e-12));
    assertThat(ratio).isGreaterThan(1.04);
  }
}
