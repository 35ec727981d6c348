package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.SetupReader;
import flankfit.setup.SheetReading;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What each switch of a sheet does to the tape, for those that no worked example sets. */
class SwitchesTest {
  private static final String HEAD = "G90 G17 G54 S1000 M3 F200.\nG0 X0 Y0 Z5.\n";
  private static final double EXACT = 1e-9;

  private static Interpretation run(String sheet, String blocks) {
    SheetReading reading = SetupReader.read("sheet.toml", sheet.replace(" ; ", "\n"));
    assertThat(reading.findings()).as("sheet").isEmpty();
    String text = HEAD + blocks.replace(" ; ", "\n") + "\nM30\n";
    return Interpreter.interpret(
        SourceText.of("switch.nc", text.getBytes(StandardCharsets.UTF_8)),
        reading.sheet().orElseThrow());
  }

  private static boolean has(Interpretation result, Code code) {
    return result.findings().stream().map(Finding::code).anyMatch(code::equals);
  }

  private static Tape tape(String control, String blocks) {
    Interpretation result = run("[control]\n" + control, blocks);
    assertThat(result.complete()).as("%s", result.findings()).isTrue();
    return result.tape();
  }

  private static Point last(Tape tape) {
    return tape.to(tape.size() - 1);
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          input-rounding = "none"                                       | G1 X1.00049      | 1.00049
          input-rounding = "least-increment"                            | G1 X1.00049      | 1.0
          input-rounding = "least-increment"                            | G1 X1.0005       | 1.001
          input-rounding = "least-increment"                            | G1 X-1.0005      | -1.001
          input-rounding = "least-increment"                            | G20 F9. G1 X.12344 | 3.13436
          input-rounding = "least-increment" ; least-increment-mm = 0.01 | G1 X1.006       | 1.01
          input-rounding = "least-increment" ; least-increment-inch = 0.00001 | G20 F9. G1 X.12344 | 3.135376
          number-reading = "least-increment"                            | G1 X25           | 0.025
          number-reading = "least-increment" ; least-increment-mm = 0.01 | G1 X25          | 0.25
          number-reading = "least-increment" ; least-increment-inch = 0.001 | G20 F9. G1 X25 | 0.635
          number-reading = "least-increment"                            | #1=25 ; G1 X#1   | 25
          number-reading = "least-increment"                            | G1 X[20+5]       | 25
          power-up-units = "inch"                                       | G1 X1.           | 25.4
          power-up-units = "mm"                                         | G1 X1.           | 1
          optional-stop = true                                          | G1 X1. ; M1 ; X2. | 2
          block-delete = false                                          | G1 X1. ; /X2. ; /2 X3. ; /3 X4. | 4
          block-delete = true                                           | G1 X1. ; /X2. ; /2 X3. ; /3 X4. | 1
          block-delete = [1, 3]                                         | G1 X1. ; /X2. ; /2 X3. ; /3 X4. | 3
          block-delete = [2]                                            | G1 X1. ; /2 X3. ; /X2. | 2
          semicolon = "end-of-block"                                    | G1 X1. ;X2.      | 2
          semicolon = "comment"                                         | G1 X1. ;X2.      | 1
          start = [3.0, 0.0, 9.0]                                       | G91 G1 X1.       | 1
          """)
  void number_and_block_reading(String control, String blocks, double x) {
    assertThat(last(tape(control, blocks)).x()).isCloseTo(x, within(EXACT));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "by-point, P500, 0.5", "by-point, P1.5, 1.5", "by-point, X2, 2", "milliseconds, P500, 0.5",
    "milliseconds, P500., 0.5", "milliseconds, X2., 2", "seconds, P3, 3", "seconds, P3., 3"
  })
  void dwell_is_read_by_its_switch(String reading, String word, double seconds) {
    Tape tape = tape("dwell-p = \"" + reading + "\"", "G4 " + word);
    assertThat(tape.seconds(tape.size() - 1)).isEqualTo(seconds);
  }

  @Test
  void arc_centre_at_the_start_is_incremental_or_absolute() {
    Tape absolute = tape("arc-centre = \"absolute\"", "G0 X10. ; G2 X20. I15. J0");
    assertThat(absolute.centreU(absolute.size() - 1)).isEqualTo(15);
    Tape incremental = tape("arc-centre = \"incremental\"", "G0 X10. ; G2 X20. I5. J0");
    assertThat(incremental.centreU(incremental.size() - 1)).isEqualTo(15);
    assertThat(run("[control] ; arc-centre = \"absolute\"", "G0 X10. ; G2 X20. I5. J0").stoppedAt())
        .hasValueSatisfying(stop -> assertThat(stop.code()).isEqualTo(Code.AR01));
  }

  @Test
  void arcs_may_close_by_so_much() {
    String gap = "G2 X20.05 I10.";
    assertThat(has(run("[control] ; arc-closure-limit = 0.1", gap), Code.AR11)).isTrue();
    assertThat(has(run("[control] ; arc-closure-limit = 0.02", gap), Code.AR01)).isTrue();
    String coarse = "[control] ; least-increment-mm = 0.01";
    assertThat(has(run(coarse, "G2 X20.019 I10."), Code.AR11)).as("rounding").isFalse();
  }

  @ParameterizedTest(name = "{0} mm: {1} {2}")
  @CsvSource({
    "0.001, X2.123, false",
    "0.001, X2.1234, true",
    "0.001, X2.1230, false",
    "0.01, X2.12, false",
    "0.01, X2.123, true",
    "0.1, X2.12, true",
    "0.1, X2.10, false",
    "0.002, X2.124, false",
    "0.002, X2.123, true",
    "0.0005, X2.1235, false",
    "0.0005, X2.1234, true"
  })
  void numbers_finer_than_a_least_increment_are_told(String increment, String word, boolean told) {
    String sheet = "[control] ; least-increment-mm = " + increment;
    assertThat(has(run(sheet, "G1 " + word), Code.RD13)).as("one block").isEqualTo(told);
    assertThat(has(run(sheet, "G1 X9. ; X8. ; " + word), Code.RD13)).as("a run").isEqualTo(told);
  }

  @Test
  void feed_and_wear_of_the_sheet_s_limits() {
    assertThat(has(run("[control] ; max-feed = 500.0", "F501. ; G1 X5."), Code.MD09)).isTrue();
    assertThat(has(run("[control] ; max-feed = 500.0", "F500. ; G1 X5."), Code.MD09)).isFalse();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          geometry-entry = "radius"   ; wear-entry = "radius"   | 4.2
          geometry-entry = "diameter" ; wear-entry = "radius"   | 2.2
          geometry-entry = "radius"   ; wear-entry = "diameter" | 4.1
          geometry-entry = "diameter" ; wear-entry = "diameter" | 2.1
          """)
  void registers_hold_radii_or_diameters(String control, double radius) {
    String sheet = "[control] ; " + control + " ; [offsets] ; D1 = { geometry = 4.0, wear = 0.2 }";
    Interpretation result = run(sheet, "G41 D1 G1 X20. ; X40. ; G40 Y-9.");
    assertThat(result.tape().toY(1)).isCloseTo(radius, within(EXACT));
  }

  @Test
  void register_of_the_tool_is_used_when_the_switch_says_so() {
    String offsets = " ; [offsets] ; D7 = { geometry = 4.0 }";
    String blocks = "T7 M6 ; S900 M3 ; G41 G1 X20. ; X40. ; G40 Y-9.";
    Interpretation byTool = run("[control] ; d-default = \"tool-number\"" + offsets, blocks);
    assertThat(byTool.tape().toY(1)).isCloseTo(4, within(EXACT));
    assertThat(has(run("[control] ; d-default = \"modal\"" + offsets, blocks), Code.RC01)).isTrue();
  }

  @Test
  void compensation_may_start_on_an_arc() {
    String blocks = "G41 D1 G3 X10. Y10. J10. ; G1 Y20. ; G40 X20.";
    String offsets = " ; [offsets] ; D1 = { geometry = 2.0 }";
    Interpretation allowed = run("[control] ; compensation-start-on-arc = true" + offsets, blocks);
    assertThat(allowed.complete()).isTrue();
    assertThat(allowed.tape().to(1).distance(new Point(8, 10, 5))).isLessThan(1e-6);
    Interpretation refused = run("[control] ; compensation-start-on-arc = false" + offsets, blocks);
    assertThat(has(refused, Code.RC02)).isTrue();
  }

  @Test
  void inside_corners_may_be_refused() {
    String blocks = "G41 D1 G1 X10. ; X30. ; Y20. ; G40 X0";
    String offsets = " ; [offsets] ; D1 = { geometry = 2.0 }";
    assertThat(run("[control] ; inside-corner = \"trim\"" + offsets, blocks).complete()).isTrue();
    Interpretation refused = run("[control] ; inside-corner = \"error\"" + offsets, blocks);
    assertThat(has(refused, Code.RC07)).isTrue();
  }

  @Test
  void increments_after_a_lone_g40_count_from_the_programmed_or_the_actual_point() {
    String blocks = "G41 D1 G1 X10. ; X30. ; G40 ; G91 X5. Y-3. ; G90";
    String offsets = " ; [offsets] ; D1 = { geometry = 2.0 }";
    String control = "[control] ; compensation-cancel-reference = ";
    assertThat(last(run(control + "\"programmed\"" + offsets, blocks).tape()))
        .isEqualTo(new Point(35, -3, 5));
    assertThat(last(run(control + "\"actual\"" + offsets, blocks).tape()))
        .isEqualTo(new Point(35, -1, 5));
  }

  @Test
  void pecks_stop_and_back_off_by_their_switches() {
    Tape deep = tape("peck-clearance = 2.0", "G83 X5. Z-9. R2. Q5. ; G80");
    assertThat(deep.toZ(3)).as("drilled").isEqualTo(-3);
    assertThat(deep.toZ(5)).as("rapid to above the last depth").isEqualTo(-1);
    Tape chips = tape("chip-break-retract = 1.5", "G73 X5. Z-9. R2. Q5. ; G80");
    assertThat(chips.toZ(3)).as("drilled").isEqualTo(-3);
    assertThat(chips.toZ(4)).as("backed off").isEqualTo(-1.5);
  }

  @Test
  void reference_points_are_those_of_the_sheet() {
    String points =
        "reference-point = [1.0, 2.0, 90.0] ; reference-point-2 = [3.0, 4.0, 91.0] ; "
            + "reference-point-3 = [5.0, 6.0, 92.0] ; reference-point-4 = [7.0, 8.0, 93.0]";
    String[] functions = {"G28", "G30", "G30 P2", "G30 P3", "G30 P4"};
    double[] heights = {90, 91, 91, 92, 93};
    for (int i = 0; i < functions.length; i++) {
      Tape tape = tape(points.replace(" ; ", "\n"), "G91 " + functions[i] + " Z0 ; G90");
      assertThat(last(tape)).as(functions[i]).isEqualTo(new Point(0, 0, heights[i]));
    }
  }

  @Test
  void machine_zero_is_the_reference_point_unless_the_sheet_says_another() {
    String reference = "reference-point = [1.0, 2.0, 90.0]";
    assertThat(last(tape(reference, "G53 G0 Z-5."))).isEqualTo(new Point(0, 0, 85));
    assertThat(last(tape(reference + "\nmachine-zero = [0.0, 0.0, 10.0]", "G53 G0 Z-5.")))
        .isEqualTo(new Point(0, 0, 5));
  }

  @Test
  void dog_leg_follows_the_rate_of_each_axis() {
    Tape tape =
        tape(
            "rapid-path = \"dog-leg\"\nrapid-rates = [10000.0, 20000.0, 5000.0]",
            "G0 X10. Y10. Z10.");
    int first = tape.size() - 2;
    assertThat(tape.to(first).distance(new Point(5, 10, 7.5))).isLessThan(EXACT);
    assertThat(tape.to(first + 1).distance(new Point(10, 10, 10))).isLessThan(EXACT);
  }

  @Test
  void clearance_plane_lies_so_high_above_the_part() {
    String stock = " ; [stock] ; shape = \"block\" ; size = [9.0, 9.0, 9.0] ; zero = [0, 0, 9.0]";
    String blocks = "G0 Z2. ; T1 M6";
    assertThat(has(run("[control] ; clearance = 3.0" + stock, blocks), Code.TL10)).isTrue();
    assertThat(has(run("[control] ; clearance = 2.0" + stock, blocks), Code.TL10)).isFalse();
  }

  @Test
  void tool_may_change_at_t_and_go_home_first() {
    String control = "reference-point = [0.0, 0.0, 150.0]\ntool-change = ";
    assertThat(tape(control + "\"t-alone\"", "T3 ; G1 X5.").state(1).tool()).isEqualTo(3);
    assertThat(tape(control + "\"t-then-m6\"", "T3 ; G1 X5.").state(1).tool()).isZero();
    Tape home = tape(control + "\"t-then-m6\"\ntool-change-moves = \"z-home\"", "T3 M6");
    assertThat(last(home)).isEqualTo(new Point(0, 0, 150));
    Tape still = tape(control + "\"t-then-m6\"\ntool-change-moves = \"none\"", "T3 M6");
    assertThat(last(still)).isEqualTo(new Point(0, 0, 5));
  }
}
