package flankfit.control;

import static flankfit.control.Programs.codes;
import static flankfit.control.Programs.run;
import static flankfit.control.Programs.xs;
import static org.assertj.core.api.Assertions.assertThat;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import org.junit.jupiter.api.Test;

/** Loops, jumps and assignments, and that none of them goes on for ever. */
class ControlFlowTest {
  private static Finding only(Interpretation result, Code code) {
    return result.findings().stream().filter(f -> f.code() == code).findFirst().orElseThrow();
  }

  @Test
  void loop_runs_as_often_as_its_condition_says() {
    String text = "#1=0\nWHILE [#1 LT 3] DO1\n#1=#1+1\nG1 X#1\nEND1\nG1 X0\nM30\n";
    assertThat(xs(run(text))).containsExactly(1.0, 2.0, 3.0, 0.0);
  }

  @Test
  void loops_nest_three_deep_and_begin_anew() {
    String text =
        """
        #1=0
        #4=0
        WHILE [#1 LT 2] DO1
        #2=0
        WHILE [#2 LT 3] DO2
        #3=0
        WHILE [#3 LT 4] DO3
        #4=#4+1
        G1 X#4
        #3=#3+1
        END3
        #2=#2+1
        END2
        #1=#1+1
        END1
        M30
        """;
    assertThat(xs(run(text))).hasSize(24).last().isEqualTo(24.0);
  }

  @Test
  void condition_that_is_false_at_once_skips_the_loop() {
    assertThat(xs(run("#1=9\nWHILE [#1 LT 3] DO2\nG1 X5.\nEND2\nG1 X7.\nM30\n")))
        .containsExactly(7.0);
  }

  @Test
  void loop_without_condition_is_left_by_a_jump() {
    String text = "#1=0\nDO1\n#1=#1+1\nG1 X#1\nIF [#1 GE 4] GOTO 9\nEND1\nN9 G1 Y1.\nM30\n";
    assertThat(xs(run(text))).containsExactly(1.0, 2.0, 3.0, 4.0, 4.0);
  }

  @Test
  void jump_back_repeats_and_if_then_assigns() {
    String text = "#1=0\nN5 #1=#1+1\nG1 X#1\nIF [#1 EQ 2] THEN #1=10\nIF[#1LT11]GOTO5\nM30\n";
    assertThat(xs(run(text))).containsExactly(1.0, 2.0, 11.0);
  }

  @Test
  void jump_goes_to_a_computed_number() {
    assertThat(xs(run("#1=10\nGOTO [#1+20]\nN10 G1 X10.\nN30 G1 X30.\nM30\n")))
        .containsExactly(30.0);
  }

  @Test
  void values_of_a_block_are_those_before_it() {
    assertThat(xs(run("#1=5 #2=#1+1\nG1 X-#2 Y#1\nG1 X##3\nM30\n"))).first().isEqualTo(-6.0);
    assertThat(xs(run("#3=4 #4=8.\nG1 X##3\nG1 X#[#3-0]\nM30\n"))).containsExactly(8.0);
  }

  @Test
  void vacant_variable_equals_only_vacant() {
    String text =
        """
        IF [#5 EQ #0] GOTO 1
        G1 X1.
        N1 IF [#5 EQ 0] GOTO 2
        G1 X2.
        N2 #5=#0
        IF [#5 NE #0] GOTO 3
        G1 X3.
        N3 #5=0
        IF [#5 EQ 0] GOTO 4
        G1 X4.
        N4 M30
        """;
    Interpretation result = run(text);
    assertThat(xs(result)).containsExactly(2.0, 3.0);
    assertThat(codes(result)).containsExactly("FL03@5");
  }

  @Test
  void position_can_be_read_in_the_program_frame() {
    String text = "G55 G1 X4. Y7.\n#1=#5001 #2=#5042\nG91 G1 X#1 Y[#2*2]\nG90\nM30\n";
    Interpretation result = run(text, "G55 = [100, 0, 0]");
    assertThat(result.tape().to(2).x()).isEqualTo(108);
    assertThat(result.tape().to(2).y()).isEqualTo(21);
  }

  @Test
  void endless_loop_names_what_never_changes() {
    Interpretation result = run("#1=0 #2=9\nWHILE [#1 LT #2] DO1\n#2=#2+1\nEND1\nM30\n");
    Finding finding = only(result, Code.FL24);
    assertThat(finding.place().line()).isEqualTo(4);
    assertThat(finding.what()).isEqualTo("loop runs more than 100000 times");
    assertThat(finding.why()).isEqualTo("#1 never changes");
    assertThat(result.stoppedAt()).contains(new Stop(4, Code.FL24));
  }

  @Test
  void loop_that_just_fits_the_limit_runs() {
    String text = "#1=0\nWHILE [#1 LT 5] DO1\n#1=#1+1\nG1 X#1\nEND1\nM30\n";
    assertThat(run(text, "loop-limit = 5").complete()).isTrue();
    assertThat(run(text, "loop-limit = 4").stoppedAt()).contains(new Stop(4, Code.FL24));
  }

  @Test
  void jump_back_is_counted_but_not_over_outer_rounds() {
    String text =
        "#1=0\nN1 #1=#1+1\n#2=0\nN2 #2=#2+1\nIF [#2 LT 4] GOTO 2\nIF [#1 LT 4] GOTO 1\nM30\n";
    assertThat(run(text, "loop-limit = 3").complete()).isTrue();
    Interpretation result = run(text, "loop-limit = 2");
    assertThat(result.stoppedAt()).contains(new Stop(7, Code.FL24));
    assertThat(run("N1 GOTO 1\n").stoppedAt()).contains(new Stop(3, Code.FL24));
  }

  @Test
  void endless_jumps_in_turn_stop_too() {
    String text = "GOTO 2\nN1 GOTO 3\nN2 GOTO 1\nN3 GOTO 1\n";
    assertThat(run(text).stoppedAt().map(Stop::code)).contains(Code.FL24);
  }

  @Test
  void loops_that_cross_have_no_partner() {
    String text = "#1=0\nWHILE [#1 LT 2] DO1\nWHILE [#1 LT 3] DO2\n#1=#1+1\nEND1\nEND2\nM30\n";
    Interpretation result = run(text);
    assertThat(result.stoppedAt()).contains(new Stop(4, Code.FL08));
    assertThat(only(result, Code.FL08).what()).isEqualTo("WHILE 1 has no partner");
  }

  @Test
  void finding_of_a_repeated_block_is_told_once() {
    String text = "#1=0\nWHILE [#1 LT 50] DO1\n#1=#1+1\nG1 X#1 R2.\nEND1\nM30\n";
    assertThat(codes(run(text))).containsExactly("WD09@6");
  }

  @Test
  void syntax_is_told_for_the_whole_file() {
    Interpretation result = run("#1=\nG1 X[2\n#2=3 4]\nIF #1 GOTO 5\nWHILE [1] DO4\nM30\n");
    assertThat(codes(result))
        .contains("FL01@3", "FL02@4", "FL02@5", "FL01@6", "FL01@7")
        .doesNotContain("FL26@8");
    assertThat(result.stoppedAt()).contains(new Stop(3, Code.FL01));
  }

  @Test
  void reading_findings_hold_inside_expressions() {
    assertThat(codes(run("#1=[1,5]\n"))).contains("RD07@3");
    assertThat(codes(run("#1=1.2.3\n"))).contains("RD12@3");
    assertThat(codes(run("#1=1O\n"))).contains("RD14@3");
    assertThat(codes(run("#1=[2 < 3]\n"))).contains("RD05@3");
    assertThat(codes(run("G1 X[1 5.]\nM30\n"))).contains("RD10@3");
    assertThat(codes(run("#1=[2+(two)3]\nG1 X#1\nM30\n"))).isEmpty();
    assertThat(codes(run("#1=[2+(two 3]\n"))).contains("RD08@3");
  }

  @Test
  void words_around_a_statement_are_refused() {
    assertThat(codes(run("G1 X5. #1=2\n"))).contains("FL07@3");
    assertThat(codes(run("G1 GOTO 5\n"))).contains("FL07@3");
    assertThat(codes(run("#1=2 GOTO 5\n"))).contains("FL07@3");
    assertThat(codes(run("N10 #1=2 (why)\nM30\n"))).isEmpty();
    assertThat(xs(run("M98 P7\nM30\nO7 #1=2.\nG1 X#1\nM99\n"))).containsExactly(2.0);
  }

  @Test
  void thirty_two_brackets_are_the_most() {
    assertThat(run("#1=" + "[".repeat(32) + "1" + "]".repeat(32) + "\nM30\n").complete()).isTrue();
    String deep = "#1=" + "[".repeat(33) + "1" + "]".repeat(33) + "\nM30\n";
    assertThat(run(deep).stoppedAt().map(Stop::code)).contains(Code.FL02);
    String marks = "G1 X" + "#".repeat(60_000) + "1\nM30\n";
    assertThat(run(marks).complete()).isTrue();
  }

  @Test
  void alarm_shows_its_comment() {
    Finding alarm = only(run("#3000=7 (TOOL BROKEN)\nM30\n"), Code.FL28);
    assertThat(alarm.what()).isEqualTo("alarm 7: TOOL BROKEN");
  }

  @Test
  void words_after_an_end_that_is_jumped_over_are_executed() {
    Interpretation result = run("IF [1 EQ 1] GOTO 5\nM30\nN5 G1 X5.\nM30\nG1 X9.\n");
    assertThat(xs(result)).containsExactly(5.0);
    assertThat(codes(result)).containsExactly("RD23@7");
  }
}
