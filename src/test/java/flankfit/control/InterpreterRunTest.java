package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import flankfit.finding.Code;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Interpreting some blocks at a time. */
class InterpreterRunTest {
  private static final String HEAD = "G21 G90 G17 G54 S900 M3\nG0 X0. Y0. Z5.\nG1 Z-1. F300.\n";

  private static SourceText text(String program) {
    return SourceText.of("run.nc", program.getBytes(StandardCharsets.US_ASCII));
  }

  private static InterpreterRun start(String program) {
    return Interpreter.start(text(program), SetupSheet.empty(), List.of());
  }

  private static String lines(int count) {
    StringBuilder lines = new StringBuilder();
    for (int i = 0; i < count; i++) {
      lines.append('X').append(i % 100).append(".5Y").append(i / 100).append(".\n");
    }
    return lines.toString();
  }

  @Test
  void first_moves_are_there_before_the_file_is_read_through() {
    InterpreterRun run = start("%\n" + HEAD + lines(50_000) + "M30\n%\n");
    assertThat(run.advance(1000)).isTrue();
    assertThat(run.blocks()).isBetween(990, 1000);
    assertThat(run.tape().size()).isBetween(980, 1000);
    assertThat(run.progress()).isBetween(0.01, 0.05);
    assertThat(run.result()).isEmpty();
  }

  @Test
  void tape_so_far_stays_and_begins_the_whole_one() {
    InterpreterRun run = start(HEAD + lines(5000) + "M30\n");
    run.advance(100);
    Tape early = run.tape();
    int size = early.size();
    while (run.advance(777)) {
      assertThat(early.size()).isEqualTo(size);
    }
    Tape whole = run.result().orElseThrow().tape();
    assertThat(run.tape()).isSameAs(whole);
    assertThat(whole.size()).isEqualTo(5002);
    for (int i = 0; i < size; i++) {
      assertThat(early.to(i)).isEqualTo(whole.to(i));
      assertThat(early.state(i)).isEqualTo(whole.state(i));
    }
    assertThat(run.progress()).isEqualTo(1);
    assertThat(run.advance(1)).isFalse();
  }

  @Test
  void second_percent_mark_after_text_begins_again_there() {
    String program = HEAD + lines(9000) + "%\n" + HEAD + "X1.\nM30\n%\n";
    InterpreterRun run = start(program);
    run.advance(2000);
    assertThat(run.tape().size()).isGreaterThan(1000);
    assertThat(run.beginnings()).isEqualTo(1);
    while (run.advance(2000)) {
      assertThat(run.result()).isEmpty();
    }
    assertThat(run.beginnings()).isEqualTo(2);
    Interpretation result = run.result().orElseThrow();
    assertThat(result.tape().size()).isEqualTo(3);
    assertThat(result.tape().line(2)).isEqualTo(9000 + 3 + 4 + 1);
    assertThat(result.findings()).anyMatch(f -> f.code() == Code.RD02);
  }

  @Test
  void too_many_control_characters_refuse_the_file_however_late() {
    InterpreterRun run = start(HEAD + lines(3000) + "\u0001".repeat(2000) + "\nM30\n");
    while (run.advance(500)) {
      assertThat(run.result()).isEmpty();
    }
    Interpretation result = run.result().orElseThrow();
    assertThat(result.tape().size()).isZero();
    assertThat(result.findings()).extracting("code").contains(Code.RD01);
    assertThat(result.complete()).isFalse();
  }

  @Test
  void cancelled_run_does_nothing_more_and_has_no_result() {
    InterpreterRun run = start(HEAD + lines(9000) + "M30\n");
    run.advance(100);
    int blocks = run.blocks();
    run.cancel();
    assertThat(run.advance(100)).isFalse();
    assertThat(run.isCancelled()).isTrue();
    assertThat(run.blocks()).isEqualTo(blocks);
    assertThat(run.result()).isEmpty();
  }

  @Test
  void loops_go_on_by_some_blocks_too() {
    String loop = "#1=0\nWHILE [#1 LT 500] DO1\nX#1\n#1=#1+1\nEND1\nM30\n";
    InterpreterRun run = start(HEAD + loop);
    int rounds = 0;
    while (run.advance(50)) {
      rounds++;
    }
    assertThat(rounds).isBetween(30, 60);
    Interpretation whole = Interpreter.interpret(text(HEAD + loop), SetupSheet.empty());
    assertThat(run.result().orElseThrow().findings()).isEqualTo(whole.findings());
    assertThat(run.result().orElseThrow().blocks()).isEqualTo(whole.blocks());
  }

  @Test
  void number_of_blocks_must_be_above_zero() {
    InterpreterRun run = start(HEAD);
    assertThatThrownBy(() -> run.advance(0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("blocks must be above 0: 0");
  }

  /** Everything that a tape tells of each move. */
  private static List<String> rows(Tape tape) {
    List<String> rows = new ArrayList<>();
    for (int i = 0; i < tape.size(); i++) {
      String arc =
          tape.kind(i) == MoveKind.ARC ? tape.centreU(i) + " " + tape.sweep(i) : "straight";
      rows.add(
          tape.kind(i)
              + " "
              + tape.line(i)
              + " "
              + tape.to(i)
              + " "
              + tape.programmedTo(i)
              + " "
              + tape.inserted(i)
              + " "
              + tape.state(i)
              + " "
              + tape.seconds(i)
              + " "
              + arc);
    }
    return rows;
  }

  @Test
  void moves_so_far_stay_as_they_are_while_the_run_goes_on() {
    String square = "G1 X20.\nG3 X30. Y10. I0. J10.\nG1 Y30.\nX0.\nG4 P1.\nY0.\n".repeat(300);
    String compensated = "G42 D1 G1 X0. Y0. F100.\n" + square + "G40 X-5. Y-5.\n";
    String program = HEAD + compensated + lines(3000) + "M30\n";
    SetupSheet sheet =
        SetupReader.read("s", "[offsets]\nD1 = { geometry = 2.0 }\n").sheet().orElseThrow();
    InterpreterRun run = Interpreter.start(text(program), sheet, List.of());
    List<Tape> early = new ArrayList<>();
    List<List<String>> rows = new ArrayList<>();
    while (run.advance(97)) {
      Tape tape = run.tape();
      early.add(tape);
      rows.add(rows(tape));
    }
    Tape whole = run.result().orElseThrow().tape();
    List<String> all = rows(whole);
    for (int i = 0; i < early.size(); i++) {
      assertThat(rows(early.get(i))).isEqualTo(rows.get(i));
      assertThat(all.subList(0, early.get(i).size())).isEqualTo(rows.get(i));
    }
    assertThat(early).hasSizeGreaterThan(20);
    assertThat(run.result().orElseThrow().complete()).isTrue();
    assertThat(all).anyMatch(row -> row.startsWith("ARC"));
    assertThat(whole.programmedTo(20)).isNotEqualTo(whole.to(20));
  }
}
