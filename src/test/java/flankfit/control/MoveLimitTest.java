package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.motion.Tape;
import org.junit.jupiter.api.Test;

/** Loops, repeats and pecks cannot fill the memory: the tape has room for so many moves. */
class MoveLimitTest {
  private static Interpretation run(String text, int limit) {
    return Programs.run(text, "D1 = { geometry = 1.0 }, move-limit = " + limit);
  }

  private static Finding fullAt(Interpretation result, int line) {
    assertThat(result.complete()).isFalse();
    assertThat(result.stoppedAt()).contains(new Stop(line, Code.FL32));
    Finding finding =
        result.findings().stream().filter(f -> f.code() == Code.FL32).findFirst().orElseThrow();
    assertThat(finding.place().line()).isEqualTo(line);
    return finding;
  }

  @Test
  void a_plain_program_of_as_many_moves_as_the_limit_is_complete() {
    assertThat(run("G1 X1.\nX2.\nM30\n", 3).complete()).isTrue();
    assertThat(run("G1 X1.\nX2.\nX3.\nM30\n", 3).complete()).isFalse();
  }

  @Test
  void one_block_of_pecks_and_repeats_stops_within_the_block() {
    Interpretation result = run("G91 G83 X1. Z-99. R-1. Q.1 L9999\nG90 X--1\nM30\n", 5000);
    Finding finding = fullAt(result, 3);
    assertThat(finding.what()).isEqualTo("more than 5000 moves");
    assertThat(result.tape().size()).isEqualTo(5000);
    assertThat(result.findings())
        .as("the rest is read")
        .extracting(Finding::code)
        .contains(Code.RD12);
  }

  @Test
  void a_loop_stops_at_the_block_that_finds_no_room() {
    Interpretation result = run("DO1\nG91 G2 X1. I.5\nG2 X-1. I-.5\nEND1\nG90 X--1\nM30\n", 5000);
    int line = result.stoppedAt().orElseThrow().line();
    assertThat(line).isBetween(4, 5);
    fullAt(result, line);
    Tape tape = result.tape();
    assertThat(tape.size()).isBetween(2490, 2660);
    TapeChecks.assertContinuous(tape);
    assertThat(result.findings()).extracting(Finding::code).contains(Code.RD12);
  }

  @Test
  void moves_that_wait_within_compensation_take_room_too() {
    fullAt(run("G41 D1 G1 X10.\nX20.\nDO1\nZ-1.\nZ-2.\nEND1\nM30\n", 5000), 7);
  }

  @Test
  void ever_new_feeds_take_room_too() {
    Interpretation result =
        run("#1=1\nWHILE[#1LT90000]DO1\n#1=#1+1\nG91 G1 X.001 F#1\nEND1\nM30\n", 9000);
    fullAt(result, 6);
    assertThat(result.tape().states()).hasSizeBetween(1500, 2000);
  }

  @Test
  void an_end_that_writes_what_waits_can_find_the_tape_full() {
    fullAt(run("G41 D1 G1 X10.\nX20.\nY9.\nM30\n", 3), 6);
  }

  @Test
  void a_limit_in_a_subprogram_names_the_line_there() {
    Finding finding = fullAt(run("M98 P7 L9\nM30\nO7\nG91 G1 X1.\nM99\n", 5), 6);
    assertThat(finding.fix()).contains("move-limit");
  }
}
