package flankfit.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.lesson.LeftOut;
import flankfit.lesson.Parting;
import flankfit.lesson.Question;
import flankfit.lesson.Quiz;
import flankfit.lesson.Rewriter;
import flankfit.lesson.Rewriting;
import flankfit.lesson.Steps;
import flankfit.motion.ModalState.Distance;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whole programs of the fuzz targets in the other mode: refused with a line, or the same moves. */
class RewritingProperties {
  @Test
  void whatever_is_rewritten_makes_the_same_moves() {
    int rewritten = 0;
    for (int seed = 1; seed <= 400; seed++) {
      byte[] bytes = new byte[30 + seed];
      new Random(seed).nextBytes(bytes);
      FuzzCase drawn = seed % 2 == 0 ? ProgramText.of(bytes) : WordsText.of(bytes);
      Optional<SetupSheet> sheet = SetupReader.read("sheet", drawn.sheet()).sheet();
      if (sheet.isPresent()) {
        for (Distance mode : Distance.values()) {
          rewritten += check(drawn, sheet.get(), mode) ? 1 : 0;
        }
      }
    }
    // Most of these programs stop by an error; the law must not be held by refusing all of them.
    assertThat(rewritten).isGreaterThan(20);
  }

  private static boolean check(FuzzCase drawn, SetupSheet sheet, Distance mode) {
    Rewriting answer = Rewriter.rewrite(drawn.source(), sheet, drawn.subprograms(), mode);
    if (answer instanceof Rewriting.Refused no) {
      assertThat(no.place().line()).as("%s", no).isPositive();
      return false;
    }
    Rewriting.Done done = (Rewriting.Done) answer;
    Interpretation before = Interpreter.replay(drawn.source(), sheet, drawn.subprograms());
    Interpretation after = Interpreter.replay(done.text(), sheet, drawn.subprograms());
    double near = 1e-9 + 4 * done.rounding();
    assertThat(after.tape().size()).isEqualTo(before.tape().size());
    for (int i = 0; i < before.tape().size(); i++) {
      assertThat(after.tape().to(i).distance(before.tape().to(i))).isCloseTo(0, within(2 * near));
    }
    return before.tape().size() > 2;
  }

  /** Whatever the text, steps are told to the end, and questions have answers. */
  @Test
  void lessons_of_any_text_are_told_without_failing() {
    int told = 0;
    int asked = 0;
    for (int seed = 1; seed <= 150; seed++) {
      byte[] bytes = new byte[30 + 3 * seed];
      new Random(1000 + seed).nextBytes(bytes);
      FuzzCase drawn = seed % 2 == 0 ? ProgramText.of(bytes) : WordsText.of(bytes);
      Optional<SetupSheet> sheet = SetupReader.read("sheet", drawn.sheet()).sheet();
      if (sheet.isPresent()) {
        Steps steps = new Steps(sheet.get(), block -> true);
        Interpreter.observe(drawn.source(), sheet.get(), drawn.subprograms(), steps);
        told += steps.all().size();
        assertThat(steps.all()).allSatisfy(step -> assertThat(step.plain()).isNotBlank());
        List<Question> questions = Quiz.of(steps.all(), seed);
        asked += questions.size();
        assertThat(questions).allSatisfy(q -> assertThat(q.answer()).isNotBlank());
        forget(drawn, sheet.get());
      }
    }
    assertThat(told).isGreaterThan(1000);
    assertThat(asked).isGreaterThan(50);
  }

  private static void forget(FuzzCase drawn, SetupSheet sheet) {
    for (int line = 1; line <= 6; line++) {
      LeftOut.of(drawn.source(), sheet.control().reading(), line, Optional.empty())
          .ifPresent(
              left ->
                  assertThat(
                          Parting.of(drawn.source(), left, sheet, drawn.subprograms()).greatest())
                      .isGreaterThanOrEqualTo(0));
    }
  }
}
