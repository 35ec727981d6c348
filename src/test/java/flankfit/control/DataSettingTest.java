package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Offsets and registers set by the program, and what is refused. */
class DataSettingTest {
  private static final String HEAD = "G21 G90 G17 G54 S900 M3 F100.\n";
  private static final String ZERO = "machine-zero = [-300.0, -200.0, 250.0]";

  private static Interpretation run(String blocks, String sheet) {
    byte[] bytes = (HEAD + blocks + "\nM30\n").getBytes(StandardCharsets.UTF_8);
    return Interpreter.interpret(SourceText.of("data.nc", bytes), ExampleSheet.of(sheet));
  }

  private static Point end(String blocks, String sheet) {
    Interpretation result = run(blocks, sheet);
    assertThat(result.complete()).as("%s", result.findings()).isTrue();
    Tape tape = result.tape();
    return tape.to(tape.size() - 1);
  }

  private static List<Code> codes(String blocks, String sheet) {
    return run(blocks, sheet).findings().stream().map(Finding::code).toList();
  }

  @Test
  void work_offset_in_use_changes_at_once_and_moves_nothing() {
    assertThat(end("G0 X0 Y0 Z5.\nG10 L2 P1 X310. Y200. Z-250.\nX1.", ZERO))
        .isEqualTo(new Point(11, 0, 5));
  }

  @Test
  void axes_not_named_keep_their_value() {
    assertThat(end("G10 L2 P2 X310.\nG55 G0 X0 Y0 Z0", ZERO + ", G55 = [1, 2, 3]"))
        .isEqualTo(new Point(10, 2, 3));
  }

  @Test
  void extended_and_common_offsets_are_set() {
    assertThat(end("G10 L20 P7 X301. Y202. Z-247.\nG54.1 P7 G0 X0 Y0 Z0", ZERO))
        .isEqualTo(new Point(1, 2, 3));
    assertThat(end("G10 L2 P0 X1. Y2. Z3.\nG0 X0 Y0 Z0", ZERO)).isEqualTo(new Point(1, 2, 3));
  }

  @Test
  void incremental_mode_adds() {
    String sheet = ZERO + ", G55 = [1, 2, 3]";
    assertThat(end("G91 G10 L2 P2 X10.\nG90 G55 G0 X0 Y0 Z0", sheet))
        .isEqualTo(new Point(11, 2, 3));
    assertThat(end("G91 G10 L13 P1 R.5\nG10 L13 P1 R.25\nG90\n" + OUTSIDE, D1).x()).isEqualTo(4.75);
  }

  private static final String D1 = "D1 = { geometry = 4.0 }";
  private static final String OUTSIDE = "G0 X0 Y0 Z5.\nG41 D1 G1 X0 Y20.\nY40.\nG40\nZ6.\nX4.75";

  @Test
  void radius_register_set_by_the_program_is_the_one_in_use() {
    Tape tape = run("G10 L12 P1 R2.5\n" + OUTSIDE, D1).tape();
    assertThat(tape.toX(2)).isEqualTo(-2.5);
    Tape during = run("G0 X0 Y0 Z5.\nG41 D1 G1 X0 Y20.\nG10 L12 P1 R2.5\nY40.\nG40 X5.", D1).tape();
    assertThat(during.toX(2)).as("takes effect at the next G41").isEqualTo(-4);
  }

  @Test
  void length_register_moves_the_tip_by_what_the_program_made_of_it() {
    String sheet = "H3 = { geometry = 100.0 }";
    String blocks = "T3 M6\nG10 L10 P3 R101.\nG10 L11 P3 R.25\nG43 H3 G0 Z5.\nX1.";
    assertThat(end(blocks, sheet).z()).isEqualTo(6.25);
    String active = "T3 M6\nG43 H3 G0 Z5.\nG10 L11 P3 R-.5\nZ5.\nX1.";
    assertThat(end(active, sheet).z()).isEqualTo(4.5);
  }

  @Test
  void change_is_told_with_old_and_new_value() {
    Finding change =
        run("G10 L12 P1 R2.5", D1).findings().stream()
            .filter(f -> f.code() == Code.OF07)
            .findFirst()
            .orElseThrow();
    assertThat(change.what()).isEqualTo("D1 geometry 4 mm → 2.5 mm");
    assertThat(codes("G10 L12 P1 R4.", D1)).doesNotContain(Code.OF07);
  }

  @Test
  void what_is_incomplete_or_unknown_is_refused() {
    for (String block :
        List.of(
            "G10 P1 R1.",
            "G10 L12 R1.",
            "G10 L12 P1",
            "G10 L12 P0 R1.",
            "G10 L3 P1 R1.",
            "G10 L2 P7 X0",
            "G10 L20 P0 X0",
            "G10 L2 P1")) {
      assertThat(run(block, ZERO).stoppedAt()).as(block).contains(new Stop(2, Code.OF06));
    }
    assertThat(run("G10 L2 P1 X0", "").stoppedAt()).contains(new Stop(2, Code.OF05));
    assertThat(run("G10 L12 P1.5 R1.", "").stoppedAt()).contains(new Stop(2, Code.WD10));
    assertThat(run("G1 G10 L12 P1 R1.", "").stoppedAt()).contains(new Stop(2, Code.WD04));
    assertThat(codes("G10 L12 P1 R1. X5.", "")).contains(Code.WD09);
    assertThat(codes("G10 L2 P1 X0 R1.", ZERO)).contains(Code.WD09);
  }

  @Test
  void offset_in_use_may_not_change_under_compensation() {
    String start = "G0 X0 Y0 Z5.\nG41 D1 G1 X0 Y20.\nY30.\n";
    assertThat(run(start + "G10 L2 P1 X0", D1 + ", " + ZERO).stoppedAt())
        .contains(new Stop(5, Code.RC24));
    assertThat(codes(start + "G10 L2 P2 X0\nG40 X9.", D1 + ", " + ZERO)).doesNotContain(Code.RC24);
  }
}
