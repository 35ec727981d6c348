package flankfit.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.lesson.Rewriter;
import flankfit.lesson.Rewriting;
import flankfit.motion.ModalState.Distance;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
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
}
