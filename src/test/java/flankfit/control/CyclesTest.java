package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Moves of every cycle, word by word. */
class CyclesTest {
  private static final String HEAD = "G21 G90 G17 G54 S900 M3 F100.\nG0 X10. Y10. Z20.\n";

  private static Interpretation run(String blocks, String sheet) {
    byte[] bytes = (HEAD + blocks + "\nM30\n").getBytes(StandardCharsets.UTF_8);
    return Interpreter.interpret(SourceText.of("cycle.nc", bytes), ExampleSheet.of(sheet));
  }

  /** The moves after the head as letters: kind, place, spindle when it does not turn clockwise. */
  private static String moves(String blocks, String sheet) {
    Interpretation result = run(blocks, sheet);
    assertThat(result.complete()).as("%s", result.findings()).isTrue();
    Tape tape = result.tape();
    List<String> rows = IntStream.range(1, tape.size()).mapToObj(i -> row(tape, i)).toList();
    return String.join("\n", rows);
  }

  private static String row(Tape tape, int i) {
    String spindle =
        switch (tape.state(i).spindle()) {
          case CLOCKWISE -> "";
          case COUNTER_CLOCKWISE -> " ccw";
          case OFF -> " off";
        };
    if (tape.kind(i) == MoveKind.DWELL) {
      return "dwell " + number(tape.seconds(i)) + spindle;
    }
    return tape.kind(i).word()
        + " "
        + number(tape.toX(i))
        + " "
        + number(tape.toY(i))
        + " "
        + number(tape.toZ(i))
        + spindle;
  }

  private static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(Math.round(value * 1e6), 6);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private static List<Code> codes(String blocks, String sheet) {
    return run(blocks, sheet).findings().stream().map(Finding::code).toList();
  }

  @Test
  void chip_breaking_backs_off_by_the_retract() {
    assertThat(moves("G99 G73 Z-5. R2. Q3.\nG80", ""))
        .isEqualTo(
            """
            rapid 10 10 2
            line 10 10 -1
            rapid 10 10 -0.5
            line 10 10 -4
            rapid 10 10 -3.5
            line 10 10 -5
            rapid 10 10 2""");
  }

  @Test
  void left_hand_tapping_turns_the_other_way_round() {
    assertThat(moves("M5\nM4\nG98 G74 Z-5. R2. P250\nG80", ""))
        .isEqualTo(
            """
            rapid 10 10 2 ccw
            line 10 10 -5 ccw
            dwell 0.25 ccw
            line 10 10 2
            rapid 10 10 20 ccw""");
  }

  @Test
  void reaming_feeds_out_and_boring_stops_the_spindle() {
    assertThat(moves("G99 G85 Z-5. R2.\nG80", ""))
        .isEqualTo("rapid 10 10 2\nline 10 10 -5\nline 10 10 2");
    assertThat(moves("G99 G89 Z-5. R2. P1000\nG80", ""))
        .isEqualTo("rapid 10 10 2\nline 10 10 -5\ndwell 1\nline 10 10 2");
    assertThat(moves("G98 G86 Z-5. R2. P.5\nG80 X0", ""))
        .isEqualTo("rapid 10 10 2\nline 10 10 -5\ndwell 0.5\nrapid 10 10 20 off\nrapid 0 10 20");
    assertThat(moves("G98 G88 Z-5. R2.\nG80 X0", ""))
        .isEqualTo(
            "rapid 10 10 2\nline 10 10 -5\nrapid 10 10 2 off\nrapid 10 10 20 off\n"
                + "rapid 0 10 20");
  }

  @Test
  void back_boring_comes_from_below_and_always_returns_to_the_initial_level() {
    assertThat(moves("G87 X0 Z-6. R-12. Q1.5 P200\nG80", "bore-shift = \"+Y\""))
        .isEqualTo(
            """
            rapid 0 10 20
            rapid 0 11.5 20 off
            rapid 0 11.5 -12 off
            rapid 0 10 -12 off
            line 0 10 -6
            dwell 0.2
            rapid 0 11.5 -6 off
            rapid 0 11.5 20 off
            rapid 0 10 20 off""");
  }

  @Test
  void back_boring_from_the_depth_feeds_up_to_k_and_back() {
    assertThat(moves("G99 G87 X0 Z-12. R2. K-6. I-1. J.5\nG80", "back-bore = \"Z-bottom\""))
        .isEqualTo(
            """
            rapid 0 10 20
            rapid 0 10 2
            rapid -1 10.5 2 off
            rapid -1 10.5 -12 off
            rapid 0 10 -12 off
            line 0 10 -6
            line 0 10 -12
            rapid -1 10.5 -12 off
            rapid -1 10.5 2 off
            rapid 0 10 2 off""");
    assertThat(codes("G87 Z-12. R2. Q1.", "back-bore = \"Z-bottom\"")).contains(Code.CY01);
    assertThat(codes("G87 Z-12. R2. Q1. K-13.", "back-bore = \"Z-bottom\"")).contains(Code.CY02);
    assertThat(codes("G87 Z-12. R-6. Q1.", "")).contains(Code.CY02);
  }

  @Test
  void data_stay_in_force_and_another_cycle_of_the_run_takes_them_over() {
    assertThat(moves("G99 G82 Z-3. R2. P100\nG81 X0\nG98 Y0 Z-4.\nG80", ""))
        .isEqualTo(
            """
            rapid 10 10 2
            line 10 10 -3
            dwell 0.1
            rapid 10 10 2
            rapid 0 10 2
            line 0 10 -3
            rapid 0 10 2
            rapid 0 0 2
            line 0 0 -4
            rapid 0 0 20""");
  }

  @Test
  void cycle_drills_along_the_normal_of_its_plane() {
    assertThat(moves("G18\nG99 G81 X3. Z4. Y-5. R2.\nG80 G17", ""))
        .isEqualTo("rapid 3 10 4\nrapid 3 2 4\nline 3 -5 4\nrapid 3 2 4");
    assertThat(moves("G19\nG98 G81 Y3. Z4. X-5. R2.\nG80 G17", ""))
        .isEqualTo("rapid 10 3 4\nrapid 2 3 4\nline -5 3 4\nrapid 10 3 4");
  }

  @Test
  void shift_that_does_not_lie_in_the_plane_is_none() {
    assertThat(codes("G19\nG76 X-5. R2. Q.3\nG17", "")).contains(Code.CY06);
    assertThat(codes("G18\nG76 Y-5. R2. Q.3\nG80 G17", "")).doesNotContain(Code.CY06);
  }

  @Test
  void repeats_of_zero_keep_the_data_and_make_no_hole() {
    assertThat(moves("G99 G81 X0 Z-3. R2. L0\nX5.\nG80", ""))
        .isEqualTo("rapid 5 10 20\nrapid 5 10 2\nline 5 10 -3\nrapid 5 10 2");
  }

  @Test
  void word_of_the_repeats_is_the_one_switched_on() {
    String blocks = "G91 G81 X1. Z-3. R-10. %s2\nG80 G90";
    assertThat(run(blocks.replace("%s", "K"), "cycle-repeat = \"K\"").tape().size()).isEqualTo(9);
    assertThat(codes(blocks.replace("%s", "L"), "cycle-repeat = \"K\"")).contains(Code.WD09);
    assertThat(codes(blocks.replace("%s", "K"), "cycle-repeat = \"L\"")).contains(Code.WD09);
    assertThat(codes(blocks.replace("%s2", "L10000"), "")).contains(Code.WD11);
    assertThat(codes(blocks.replace("%s2", "K1.5"), "")).contains(Code.WD10);
  }

  @Test
  void axis_words_after_the_end_can_be_an_error() {
    Interpretation result = run("G81 Z-3. R2.\nG80\nX5.", "after-g80 = \"error\"");
    assertThat(result.stoppedAt()).contains(new Stop(5, Code.CY10));
    assertThat(codes("G80\nX5.", "after-g80 = \"error\"")).doesNotContain(Code.CY10);
  }

  @Test
  void motion_before_the_cycle_comes_back_into_force() {
    Tape tape = run("G1 X5.\nG81 Z-3. R2.\nG80\nX7.", "").tape();
    assertThat(tape.kind(tape.size() - 1)).isEqualTo(MoveKind.LINE);
  }

  @Test
  void words_of_other_functions_are_not_taken_for_the_cycle() {
    assertThat(codes("G81 Z-3. R2.\nG53 Z0\nG80", "machine-zero = [0, 0, 0]")).contains(Code.OF10);
    assertThat(codes("G81 Z-3. R2. G28\nG80", "")).contains(Code.WD04);
    assertThat(codes("G82 Z-3. R2. G4 P500\nG80", "")).contains(Code.WD04);
    assertThat(codes("G81 G80 Z-3. R2.", "")).contains(Code.WD03);
    Tape tape = run("G99 G82 Z-3. R2. P100\nG4 P500\nG28 Z30.\nX5.\nG80", "").tape();
    assertThat(IntStream.range(0, tape.size()).filter(i -> tape.line(i) == 4).toArray()).hasSize(1);
    assertThat(tape.toZ(tape.size() - 1)).isEqualTo(2);
    assertThat(IntStream.range(0, tape.size()).filter(i -> tape.line(i) == 6).count()).isEqualTo(5);
  }

  @Test
  void word_that_no_cycle_reads_is_told() {
    assertThat(codes("G81 Z-3. R2. Q1.\nG80", "")).contains(Code.WD09);
    assertThat(codes("G83 Z-3. R2. Q2. P100\nG80", "")).contains(Code.WD09);
    assertThat(codes("G76 Z-3. R2. I1. J0\nG80", "")).doesNotContain(Code.WD09);
  }

  @Test
  void too_many_pecks_stop() {
    Interpretation result = run("G83 Z-10.1 R0 Q.01\nG80", "");
    assertThat(result.stoppedAt()).contains(new Stop(3, Code.CY04));
    assertThat(run("G83 Z-10. R0 Q.01\nG80", "").complete()).isTrue();
  }

  /** 35 in/min for 20 threads per inch at 700 1/min: CNC Manufacturing Technology, 2021, 201. */
  @Test
  void published_feed_of_a_tap_is_accepted_and_another_is_not() {
    String sheet = "tool 2: tap, pitch 1.27";
    String tap = "T2 M6\nS700 M3\nG84 Z-10. R5. F%s\nG80";
    assertThat(codes("G20\n" + tap.replace("%s", "35."), sheet)).doesNotContain(Code.CY09);
    assertThat(codes("G20\n" + tap.replace("%s", "35.1"), sheet)).contains(Code.CY09);
    assertThat(codes("G20 G95\n" + tap.replace("%s", ".05"), sheet)).doesNotContain(Code.CY09);
  }

  /** P500 is half a second: CNC Manufacturing Technology, 2021, 200. */
  @Test
  void published_dwell_without_a_point_is_in_milliseconds() {
    Tape tape = run("G82 Z-3. R2. P500\nG80", "").tape();
    assertThat(tape.seconds(3)).isCloseTo(0.5, within(1e-12));
  }

  @Test
  void levels_follow_a_change_of_the_work_offset_within_the_run() {
    assertThat(moves("G99 G81 Z-3. R2.\nG55 X0 Y0\nG80", "G55 = [50, 0, -4]"))
        .isEqualTo(
            """
            rapid 10 10 2
            line 10 10 -3
            rapid 10 10 2
            rapid 50 0 2
            rapid 50 0 -2
            line 50 0 -7
            rapid 50 0 -2""");
  }

  @Test
  void clearance_from_an_assumed_height_is_told() {
    byte[] text =
        "G21 G91 G17 G54 S900 M3 F100.\nG81 Z-3. R-50.\nG80 G90\nM30\n"
            .getBytes(StandardCharsets.UTF_8);
    Interpretation result =
        Interpreter.interpret(SourceText.of("cycle.nc", text), ExampleSheet.of(""));
    assertThat(result.findings()).extracting(Finding::code).contains(Code.OF13);
    assertThat(codes("G91 G81 Z-3. R-10.\nG80 G90", "")).doesNotContain(Code.OF13);
  }

  @Test
  void length_forgotten_is_told_in_a_cycle_too() {
    assertThat(codes("T2 M6\nS900 M3\nG81 Z-3. R2.\nG80", "H2 = { geometry = 90.0 }"))
        .contains(Code.TL04);
  }
}
