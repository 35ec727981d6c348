package flankfit.control;

import static flankfit.control.Programs.codes;
import static flankfit.control.Programs.run;
import static flankfit.control.Programs.source;
import static flankfit.control.Programs.xs;
import static org.assertj.core.api.Assertions.assertThat;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** M98, M99, G65, G66, G67. */
class SubprogramsTest {
  private static final String STEP = "O51\nG91 G1 X1.\nG90\nM99\n";

  @Test
  void call_repeats_and_comes_after_the_motion_of_its_block() {
    assertThat(xs(run("G1 X10. M98 P51 L3\nG1 X0\nM30\n" + STEP)))
        .containsExactly(10.0, 11.0, 12.0, 13.0, 0.0);
  }

  /** Digits of P, and whether programs 51 and 20051 exist. */
  @ParameterizedTest
  @CsvSource({
    "auto, P51, 1",
    "auto, P0051, 1",
    "auto, P00051, 1",
    "auto, P20051, 2",
    "auto, P00030051, 3",
    "auto, P51 L4, 4",
    "4+4, P00020051, 2",
    "plain, P51, 1"
  })
  void digits_of_p_give_count_and_program(String form, String words, int times) {
    String text = "M98 " + words + "\nM30\n" + STEP;
    assertThat(xs(run(text, "m98-form = \"" + form + "\""))).hasSize(times);
  }

  @Test
  void long_number_is_a_program_where_only_that_exists() {
    String far = "O20052\nG1 X50.\nM99\n";
    assertThat(xs(run("M98 P20052\nM30\n" + far))).containsExactly(50.0);
    String both = far + "O52\nG1 X9.\nM99\n";
    assertThat(codes(run("M98 P20052\nM30\n" + both))).contains("FL22@3");
    assertThat(xs(run("M98 P20052 L1\nM30\n" + both))).containsExactly(50.0);
    assertThat(xs(run("M98 P20052\nM30\n" + both, "m98-form = \"4+4\""))).containsExactly(9.0);
    assertThat(xs(run("M98 P20052\nM30\n" + both, "m98-form = \"plain\""))).containsExactly(50.0);
    assertThat(codes(run("M98 P20052 L2\nM30\n" + both, "m98-form = \"4+4\""))).contains("FL22@3");
    assertThat(codes(run("M98 P20051\nM30\n" + STEP, "m98-form = \"plain\""))).contains("FL20@3");
  }

  @Test
  void return_goes_on_at_a_block_of_the_caller() {
    String text = "M98 P7\nG1 X1.\nN20 G1 X2.\nM30\nO7\nG1 X9.\nM99 P20\n";
    assertThat(xs(run(text))).containsExactly(9.0, 2.0);
    assertThat(codes(run(text.replace("P20", "P21")))).contains("FL12@9");
  }

  @Test
  void local_variables_are_shared_by_m98_and_new_in_g65() {
    String text =
        """
        #1=5. #100=7.
        M98 P7
        G1 X#1
        G65 P8 A3. B4.
        G1 X#1
        G1 X#101
        M30
        O7
        #1=6.
        M99
        O8
        #101=#1*10+#2+#100
        #1=1.
        M99
        """;
    Interpretation result = run(text);
    assertThat(xs(result)).containsExactly(6.0, 41.0);
    assertThat(codes(result)).doesNotContain("FL03@6");
  }

  @Test
  void every_letter_fills_its_variable() {
    String letters = "A1. B2. C3. D4. E5. F6. H7. I8. J9. K10. M11. Q12. R13. S14. T15. U16. V17.";
    int[] numbers = {1, 2, 3, 7, 8, 9, 11, 4, 5, 6, 13, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26};
    StringBuilder macro = new StringBuilder("O8\n");
    for (int number : numbers) {
      macro.append("G1 X#").append(number).append("\n");
    }
    Interpretation result =
        run("G65 P8 " + letters + " W18. X19. Y20. Z21.\nM30\n" + macro + "M99\n");
    assertThat(xs(result)).hasSize(21);
    for (int i = 0; i < 21; i++) {
      assertThat(xs(result).get(i)).isEqualTo(i + 1);
    }
    assertThat(codes(result)).isEmpty();
  }

  @Test
  void arguments_may_be_computed_and_left_out() {
    String macro = "O8\nG1 X#1\nIF [#2 EQ #0] THEN #2=4.\nG1 X#2\nM99\n";
    assertThat(xs(run("#5=2.\nG65 P8 A[#5*3] L2\nM30\n" + macro)))
        .containsExactly(6.0, 4.0, 6.0, 4.0);
    assertThat(codes(run("G65 P8 A1. A2.\nM30\n" + macro))).contains("WD02@3");
    assertThat(codes(run("G65 A1.\nM30\n" + macro))).contains("FL22@3");
  }

  @Test
  void modal_call_follows_every_motion_until_it_is_cancelled() {
    String text =
        "G66 P8 A2.\nG0 X1.\nG4 P100\nG0 X2.\nG67\nG0 X3.\nM30\nO8\nG91 G1 Z-#1\nZ#1\nG90\nM99\n";
    Interpretation result = run(text);
    assertThat(xs(result)).containsExactly(1.0, 1.0, 1.0, 1.0, 2.0, 2.0, 2.0, 3.0);
    assertThat(codes(run("G66 P8 A2.\nG66 P8 A2.\nM30\nO8\nM99\n"))).contains("WD01@4");
  }

  @Test
  void calls_nest_ten_deep() {
    StringBuilder text = new StringBuilder("M98 P1\nM30\n");
    for (int i = 1; i <= 10; i++) {
      text.append("O").append(i).append("\n");
      text.append(i < 10 ? "M98 P" + (i + 1) + "\n" : "G1 X10.\n").append("M99\n");
    }
    assertThat(xs(run(text.toString()))).containsExactly(10.0);
    String deeper = text.toString().replace("G1 X10.", "M98 P11") + "O11\nM99\n";
    Interpretation result = run(deeper);
    assertThat(result.stoppedAt().map(Stop::code)).contains(Code.FL23);
    assertThat(result.findings())
        .anyMatch(f -> f.what().equals("calls nested 11 deep") && f.why().startsWith("O1, O2,"));
  }

  @Test
  void recursion_ends_at_the_deepest_call() {
    assertThat(run("G65 P7\nM30\nO7\nG65 P7\nM99\n").stoppedAt().map(Stop::code))
        .contains(Code.FL23);
    assertThat(run("G66 P7\nG0 X1.\nM30\nO7\nG0 X2.\nM99\n").complete()).isTrue();
  }

  @Test
  void programs_of_other_files_are_found_after_those_of_the_file() {
    var other = source("holes.nc", "O70 (one)\nG1 X70.\nM99\nO71\nG1 X71. R1.\nM98 P8\nM99\n");
    String text = "M98 P71\nM30\nO8\nG1 X8.\nM99\n";
    Interpretation result = run(text, "", other);
    assertThat(xs(result)).containsExactly(71.0, 8.0);
    assertThat(result.tape().line(1)).as("line of the call").isEqualTo(3);
    assertThat(result.tape().line(2)).isEqualTo(6);
    assertThat(result.findings())
        .anyMatch(f -> f.code() == Code.WD09 && f.place().file().equals("holes.nc"));
    assertThat(codes(run("M98 P8\nM30\nO8\nM99\n", "", source("x.nc", "O8\nM99\n"))))
        .contains("FL21@3");
  }

  @Test
  void program_that_is_nowhere_names_the_files() {
    Interpretation result = run("M98 P5\nM30\n", "", source("holes.nc", "O70\nM99\n"));
    assertThat(result.findings())
        .filteredOn(f -> f.code() == Code.FL20)
        .extracting(Finding::why)
        .containsExactly("looked in program.nc, holes.nc");
  }

  @Test
  void text_that_ends_in_a_subprogram_lacks_its_return() {
    assertThat(codes(run("M98 P5\nM30\nO5\nG1 X5.\n"))).contains("FL31@6");
  }

  @Test
  void end_of_the_program_may_stand_in_a_subprogram() {
    Interpretation result = run("M98 P5\nG1 X9.\nM30\nO5\nG1 X5.\nM30\n");
    assertThat(xs(result)).containsExactly(5.0);
    assertThat(result.complete()).isTrue();
  }
}
