package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Mirror, scale and rotation: their words, their centres, what they forbid. */
class TransformsTest {
  private static final String HEAD = "G21 G90 G17 G54 S900 M3 F100.\nG0 X10. Y10. Z20.\n";
  private static final double EXACT = 1e-9;

  private static Interpretation run(String blocks, String sheet) {
    byte[] bytes = (HEAD + blocks + "\nM30\n").getBytes(StandardCharsets.UTF_8);
    return Interpreter.interpret(SourceText.of("frame.nc", bytes), ExampleSheet.of(sheet));
  }

  private static void ends(String blocks, double x, double y, double z) {
    ends(blocks, "", x, y, z);
  }

  private static void ends(String blocks, String sheet, double x, double y, double z) {
    Interpretation result = run(blocks, sheet);
    assertThat(result.complete()).as("%s", result.findings()).isTrue();
    Tape tape = result.tape();
    assertThat(tape.to(tape.size() - 1).distance(new Point(x, y, z))).isLessThan(EXACT);
  }

  private static List<Code> codes(String blocks, String sheet) {
    return run(blocks, sheet).findings().stream().map(Finding::code).toList();
  }

  @Test
  void centre_left_out_is_where_the_tool_stands() {
    ends("G68 R90.\nX20. Y10.", 10, 20, 20);
    ends("G68 X0 R90.\nX5. Y10.", 0, 15, 20);
    ends("G51 P2.\nX20. Y20.", 30, 30, 20);
    ends("G52 X3.\nG68 R90.\nX7. Y11.", 9, 10, 20);
  }

  @Test
  void switching_on_or_off_moves_nothing_and_axes_not_named_stay() {
    ends("G68 X0 Y0 R90.\nZ5.", 10, 10, 5);
    ends("G68 X0 Y0 R90.\nX0 Y5.\nG69\nX1.", 1, 0, 20);
    ends("G51.1 X0\nY4.", 10, 4, 20);
  }

  @Test
  void incremental_angle_adds_to_the_one_in_force() {
    ends("G68 X0 Y0 R30.\nG91 G68 X0 Y0 R60.\nG90 X5. Y0", 0, 5, 20);
    ends("G68 X0 Y0 R30.\nG68 X0 Y0 R90.\nX5. Y0", 0, 5, 20);
  }

  @Test
  void distances_are_turned_and_scaled_too() {
    ends("G68 X0 Y0 R90.\nG91 X5.\nG90", 10, 15, 20);
    ends("G51 X0 Y0 Z0 P.5\nG91 X5. Z-4.\nG90", 12.5, 10, 18);
    ends("G51.1 X0\nG91 X5.\nG90", 5, 10, 20);
  }

  @Test
  void factor_for_each_axis_and_in_thousandths() {
    ends("G51 X0 Y0 Z0 I2. K.5\nX1. Y1. Z1.", 2, 1, 0.5);
    ends("G51 X0 Y0 Z0 P500\nX1. Y1. Z1.", "scale-reading = \"thousandths\"", 0.5, 0.5, 0.5);
    assertThat(codes("G51 P500\nG50", "scale-reading = \"thousandths\"")).doesNotContain(Code.OF23);
    assertThat(codes("G51 P.01\nG50", "")).contains(Code.OF23);
  }

  @Test
  void radius_of_an_arc_is_scaled() {
    Tape tape = run("G51 X0 Y0 P2.\nX0 Y0\nG3 X4. Y0 R2.5", "").tape();
    assertThat(tape.radius(tape.size() - 1)).isCloseTo(5, within(EXACT));
    assertThat(codes("G51 X0 Y0 I2. J2. K3.\nX0 Y0\nG3 X4. Y0 R2.5\nG50", ""))
        .doesNotContain(Code.OF21);
  }

  @Test
  void absolute_centre_is_a_point_of_the_frame() {
    Tape tape = run("G90.1 G68 X0 Y0 R90.\nX5. Y0\nG3 X15. Y0 I10. J0", "").tape();
    assertThat(tape.centreU(tape.size() - 1)).isCloseTo(0, within(EXACT));
    assertThat(tape.centreV(tape.size() - 1)).isCloseTo(10, within(EXACT));
  }

  @Test
  void mirror_of_single_axes_ends_axis_by_axis() {
    ends("G51.1 X0 Y0\nG50.1 X0\nX1. Y1.", 1, -1, 20);
    ends("G51.1 X0 Y0\nG50.1\nX1. Y1.", 1, 1, 20);
    assertThat(codes("G51.1 Z0\nG50.1", "")).doesNotContain(Code.OF24);
  }

  @Test
  void present_point_is_set_in_a_turned_frame() {
    ends("G68 X0 Y0 R90.\nG92 X0 Y0\nX5. Y0\nG92.1", 10, 15, 20);
    ends("G68 X0 Y0 R90.\nG92 X1.\nX6.\nG92.1", 10, 15, 20);
  }

  @Test
  void words_that_say_no_transform_are_refused() {
    for (String block : List.of("G68 X0 Y0", "G51 X0", "G51 P0", "G51 P-1.", "G51 I-2.", "G51.1")) {
      assertThat(run(block, "").stoppedAt()).as(block).contains(new Stop(3, Code.WD11));
    }
    for (String block :
        List.of("G51 P2. I2.", "G0 G68 R30.", "G51.1 X0 G68 R30.", "G68 R30. G28 X0")) {
      assertThat(run(block, "").stoppedAt()).as(block).contains(new Stop(3, Code.WD04));
    }
  }

  @Test
  void unit_and_plane_are_held_and_may_change_where_the_mode_ends() {
    assertThat(codes("G51 P2.\nG20", "")).contains(Code.MD05);
    assertThat(codes("G81 Z-3. R2.\nG18", "")).contains(Code.MD05);
    assertThat(codes("G68 R30.\nG17 G21\nG69 G18\nG17", "")).doesNotContain(Code.MD05);
    assertThat(codes("G81 Z-3. R2.\nG80 G18\nG17", "")).doesNotContain(Code.MD05);
  }

  @Test
  void frame_is_held_under_compensation() {
    String start = "G41 D1 G1 X10. Y20.\nY30.\n";
    String sheet = "D1 = { geometry = 1.0 }";
    for (String block : List.of("G68 R30.", "G51 P2.", "G51.1 X0")) {
      assertThat(run(start + block, sheet).stoppedAt()).contains(new Stop(5, Code.RC24));
    }
    assertThat(codes(start + "G50 G69 G50.1\nG40 X20.", sheet)).doesNotContain(Code.RC24);
  }

  @Test
  void each_transform_left_on_is_told_at_change_and_end() {
    List<Code> codes = codes("G51.1 X0\nG51 P2.\nG68 R30.\nG0 Z90.\nT1 M6", "");
    assertThat(codes.stream().filter(c -> c == Code.OF22)).hasSize(6);
  }

  @Test
  void mirror_ended_on_one_axis_only_is_told() {
    assertThat(codes("G51.1 X0 Y0\nG50.1 X0 M30", "")).contains(Code.OF22);
    assertThat(codes("G51.1 X0 Y0\nG50.1 X0 Y0 M30", "")).doesNotContain(Code.OF22);
    assertThat(codes("G51.1 X0 Y0\nG50.1 M30", "")).doesNotContain(Code.OF22);
    assertThat(codes("G51.1 X0\nG0 Z90.\nT1\nG50.1 X0 M6", "")).doesNotContain(Code.OF22);
    assertThat(codes("G51.1 X0 Y0\nG0 Z90.\nT1\nG50.1 X0 M6\nG50.1", "")).contains(Code.OF22);
  }

  @Test
  void angle_and_factors_need_no_point() {
    assertThat(codes("G68 R30\nG69\nG51 I2 J2\nG50", "")).doesNotContain(Code.RD15);
  }
}
