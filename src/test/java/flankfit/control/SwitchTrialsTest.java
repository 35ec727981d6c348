package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.nc.SourceText;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which defaults of the control are told because another value moves the tool otherwise. */
class SwitchTrialsTest {
  private static final String SHEET = "D1 = { geometry = 2.0, wear = 0.1 } D2 = { geometry = 3.0 }";

  /** Names of the switches told, with what is told of each. */
  private static List<String> told(Interpretation result) {
    return result.assumptions().stream().filter(a -> a.contains(" (the default; ")).toList();
  }

  private static Interpretation run(String text) {
    return Programs.run(text.replace('|', '\n') + "\nM30\n", SHEET);
  }

  // A vertical bar ends a block. The head takes two lines: the first block stands in line 3.
  @ParameterizedTest(name = "{0}: {2}")
  @CsvSource(
      delimiter = '!',
      quoteCharacter = '\0',
      value = {
        "input-rounding     ! G1 X1.0005                         ! G1 X1.0000",
        "semicolon          ! G1 X1. ;Y2.                        ! G1 X1. ;",
        "block-delete       ! /G1 X1.                            ! /M8|M9",
        "dwell-p            ! G4 P2                              ! G4 X2.",
        "arc-centre         ! G1 X5.|G2 X7. Y0 I1. J0            ! G2 X2. Y0 I1. J0",
        "long-arc-by-negative-r ! G2 X5. Y5. R-5.                ! G2 X5. Y5. R5.",
        "helix-feed         ! G3 I5. J0 Z2.                      ! G3 I5. J0",
        "scale-reading      ! G51 X0 Y0 Z0 P2|G1 X5.|G50         ! G1 X5.",
        "tool-change        ! T4|G1 X1.|M6|G1 X2.                ! M6 T4|G1 X1.",
        "tool-change-moves  ! G1 X1.|T4 M6                       ! G1 X1.",
        "geometry-entry     ! G41 D1 G1 X5. Y5.|Y20.|G40 X0      ! G1 X5. Y5.|Y20.|X0",
        "wear-entry         ! G41 D1 G1 X5. Y5.|Y20.|G40 X0      ! G41 D2 G1 X5. Y5.|Y20.|G40 X0",
        "compensation-start ! G41 D1 G1 X5. Y5.|Y20.|G40 X0      ! G41 D3 G1 X5. Y5.|Y20.|G40 X0",
        "outside-corner     ! G41 D1 G1 X5. Y5.|Y20.|X10. Y19.|G40 X0 Y0 ! G41 D1 G1 X5. Y5.|Y20.|G40 X0",
        "inside-corner      ! G41 D1 G1 X15. Y5.|Y20.|X5.|Y0|G40 X0 ! G1 X5. Y5.|Y20.|X0",
        "cycle-repeat       ! G91 G81 X5. Z-9. R-1. L2|G90 G80   ! G81 X5. Z-9. R1.|G80",
        "after-g80          ! G1 X1.|G81 Z-5. R1.|G80|X5.        ! G1 X1.|G81 Z-5. R1.|G80|G1 X5.",
        "peck-clearance     ! G83 Z-9. R1. Q2.|G80               ! G81 Z-9. R1.|G80",
        "chip-break-retract ! G73 Z-9. R1. Q2.|G80               ! G81 Z-9. R1.|G80",
        "bore-shift         ! G76 Z-9. R1. Q.5|G80               ! G85 Z-9. R1.|G80",
        "fix-rounding       ! G1 X[FIX[-1.5]]                    ! G1 X[FIX[1.5]]",
      })
  void default_is_told_where_it_matters_and_only_there(String name, String where, String whereNot) {
    assertThat(run(where).stoppedAt()).isEmpty();
    assertThat(run(whereNot).stoppedAt()).isEmpty();
    assertThat(told(run(where))).filteredOn(a -> a.startsWith(name + " = ")).hasSize(1);
    assertThat(told(run(whereNot))).noneMatch(a -> a.startsWith(name + " = "));
  }

  @Test
  void switch_with_an_assumption_of_its_own_is_not_told_twice() {
    Interpretation result = run("G0 X5 Y9|G1 X1");
    assertThat(result.findings()).extracting(Finding::code).contains(Code.AS01, Code.AS03);
    assertThat(told(result))
        .noneMatch(a -> a.startsWith("rapid-path") || a.startsWith("number-reading"));
  }

  @Test
  void unit_at_power_up_matters_until_one_is_stated() {
    String rest = "G90 G17 G54 S100 M3 F90.\nG1 X5.\nM30\n";
    assertThat(told(interpret(rest))).anyMatch(a -> a.startsWith("power-up-units = mm"));
    assertThat(told(interpret("G21 " + rest))).isEmpty();
  }

  @Test
  void long_program_is_not_tried_and_a_replay_never() {
    String arc = "G21 G90 G17 G54 S100 M3 F90.\nG3 I5. J0 Z2.\n";
    String many = arc + "G1 X1.\n".repeat(SwitchTrials.MOST_BLOCKS) + "M30\n";
    assertThat(interpret(many).assumptions())
        .contains(
            "which defaults of [control] matter was not tried: more than 20000 blocks were"
                + " executed");
    SourceText source = Programs.source("a.nc", arc + "M30\n");
    Interpretation replay = Interpreter.replay(source, ExampleSheet.of(""), List.of());
    assertThat(told(replay)).isEmpty();
    Interpretation whole = interpret(arc + "M30\n");
    assertThat(told(whole)).isNotEmpty();
    Programs.assertSame(whole.tape(), replay.tape());
  }

  @Test
  void program_that_stops_is_not_tried() {
    Interpretation stopped = run("G3 I5. J0 Z2.|G1 X5. X6.");
    assertThat(stopped.complete()).isFalse();
    assertThat(told(stopped)).isEmpty();
  }

  private static Interpretation interpret(String text) {
    return Interpreter.interpret(Programs.source("a.nc", text), ExampleSheet.of(""));
  }

  @Test
  void sentence_names_the_other_value_and_the_line() {
    assertThat(told(run("G1 X9.|G3 I5. J0 Z2.")))
        .contains("helix-feed = along-path (the default; in-plane changes the motion from line 4)");
    assertThat(told(run("G1 X1.|G81 Z-5. R1.|G80|X5.")))
        .anyMatch(a -> a.startsWith("after-g80 = previous-motion (the default; error stops"));
  }
}
