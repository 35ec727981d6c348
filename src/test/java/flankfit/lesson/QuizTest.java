package flankfit.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.control.ExampleSheet;
import flankfit.lesson.Question.Kind;
import flankfit.setup.SetupSheet;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Questions and their answers. */
class QuizTest {
  private static final SetupSheet SHEET =
      ExampleSheet.of("D1 = { geometry = 1.5 }, reference-point = [0, 0, 300]");

  private static final String TURN =
      "G21 G90 G17 G54 F200. S1000 M3\nG0 X3. Y0. Z-14.\nG91\nN9 G3 I-3. Z1.5 (TURN)\nG90\nM30\n";

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 40);
  }

  private static Optional<Question> of(List<Question> all, Kind kind, int line) {
    return all.stream().filter(q -> q.kind() == kind && q.line() == line).findFirst();
  }

  @Test
  void full_turn_gives_all_four_kinds_with_the_right_answers() {
    List<Question> all = Quiz.of(Lessons.steps(TURN), 1);
    assertThat(all).hasSize(4);
    assertThat(of(all, Kind.WHERE, 4).orElseThrow().answer()).isEqualTo("X3 Y0 Z-12.5");
    assertThat(of(all, Kind.OTHER_MODE, 4).orElseThrow().answer()).isEqualTo("G90 G3 I-3. Z-12.5");
    assertThat(of(all, Kind.CENTRE, 4).orElseThrow().answer()).isEqualTo("I-3");
    assertThat(of(all, Kind.CENTRE, 4).orElseThrow().question())
        .contains("N9 G3 Z1.5.")
        .doesNotContain("I-3", "TURN");
    assertThat(of(all, Kind.ROUND, 4).orElseThrow().answer())
        .isEqualTo("once round anticlockwise, to Z-12.5");
  }

  @Test
  void first_point_and_transformed_blocks_give_none() {
    assertThat(Quiz.of(Lessons.steps("G21 G90 G17 G54\nG0 X1. Y1. Z1.\nM30\n"), 1)).isEmpty();
    String turned = "G68 X0 Y0 R30.\nX4. Y4.\nG91 X1.\nG90\nG69\nM30\n";
    assertThat(Quiz.of(Lessons.steps("G21 G90 G17 G54\nG0 X1. Y1. Z1.\n" + turned), 1)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void same_seed_same_questions_none_twice_and_every_kind_early(long seed) {
    List<Step> steps = Lessons.steps(Lessons.source(SomeProgram.of(seed)), SHEET);
    List<Question> all = Quiz.of(steps, seed);
    assertThat(Quiz.of(steps, seed)).isEqualTo(all);
    assertThat(new HashSet<>(all)).hasSameSizeAs(all);
    Set<Kind> kinds = all.stream().map(Question::kind).collect(Collectors.toSet());
    Set<Kind> early =
        all.stream()
            .limit(kinds.size())
            .map(Question::kind)
            .collect(Collectors.toCollection(() -> EnumSet.noneOf(Kind.class)));
    assertThat(early).isEqualTo(kinds);
  }

  /** The answers to the questions where the tool is: those of the blocks as executed. */
  @ParameterizedTest
  @MethodSource("seeds")
  void answers_are_what_the_program_does(long seed) {
    List<Step> steps = Lessons.steps(Lessons.source(SomeProgram.of(seed)), SHEET);
    for (Question question : Quiz.of(steps, seed)) {
      Step step = Lessons.at(steps, question.line());
      if (question.kind() == Kind.WHERE) {
        assertThat(question.answer()).isEqualTo(Numeral.plain(step.end(), step.unit()));
      }
      if (question.kind() == Kind.OTHER_MODE) {
        assertThat(question.answer())
            .isIn(step.absolute().orElseThrow(), step.incremental().orElseThrow())
            .doesNotContain(
                step.mode() == flankfit.motion.ModalState.Distance.ABSOLUTE ? "G90" : "G91");
      }
    }
  }
}
