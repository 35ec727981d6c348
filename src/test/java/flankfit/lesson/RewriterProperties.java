package flankfit.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.control.ExampleSheet;
import flankfit.control.Interpretation;
import flankfit.control.Interpreter;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Rewritten programs make the moves of the first one, in both directions and back again. */
class RewriterProperties {
  private static final SetupSheet SHEET =
      ExampleSheet.of("D1 = { geometry = 1.5 }, reference-point = [0, 0, 300]");

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 100);
  }

  private static SourceText source(String text) {
    return SourceText.of("some.nc", text.getBytes(StandardCharsets.UTF_8));
  }

  private static String text(SourceText source) {
    return new String(source.toBytes(), StandardCharsets.UTF_8);
  }

  private static Tape tape(SourceText text) {
    Interpretation done = Interpreter.replay(text, SHEET, List.of());
    assertThat(done.complete()).as("%s in\n%s", done.stoppedAt(), text(text)).isTrue();
    return done.tape();
  }

  private static Rewriting.Done rewrite(SourceText text, Distance mode) {
    Rewriting answer = Rewriter.rewrite(text, SHEET, List.of(), mode);
    assertThat(answer).as("%s\n%s", answer, text(text)).isInstanceOf(Rewriting.Done.class);
    return (Rewriting.Done) answer;
  }

  private static void same(Tape a, Tape b) {
    assertThat(b.size()).isEqualTo(a.size());
    for (int i = 0; i < a.size(); i++) {
      assertThat(b.kind(i)).isEqualTo(a.kind(i));
      assertThat(b.toX(i)).isCloseTo(a.toX(i), within(1e-9));
      assertThat(b.toY(i)).isCloseTo(a.toY(i), within(1e-9));
      assertThat(b.toZ(i)).isCloseTo(a.toZ(i), within(1e-9));
      if (a.kind(i) == MoveKind.ARC) {
        assertThat(b.sweep(i) * b.radius(i)).isCloseTo(a.sweep(i) * a.radius(i), within(1e-6));
      }
    }
  }

  private static String withoutModes(String text) {
    // Where no other fraction is left to show the manner, 0 is written before the point.
    return text.replaceAll("G9[01] ?", "").replaceAll("([A-Z]-?)0\\.(?=\\d)", "$1.");
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void both_directions_make_the_same_moves(long seed) {
    SourceText program = source(SomeProgram.of(seed));
    Tape tape = tape(program);
    for (Distance mode : Distance.values()) {
      Rewriting.Done done = rewrite(program, mode);
      same(tape, tape(done.text()));
      assertThat(done.rounding()).isZero();
      assertThat(text(done.text()).lines().count()).isEqualTo(text(program).lines().count());
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void there_and_back_gives_the_same_words(long seed) {
    SourceText absolute = rewrite(source(SomeProgram.of(seed)), Distance.ABSOLUTE).text();
    SourceText incremental = rewrite(absolute, Distance.INCREMENTAL).text();
    SourceText back = rewrite(incremental, Distance.ABSOLUTE).text();
    assertThat(withoutModes(text(back))).isEqualTo(withoutModes(text(absolute)));
    assertThat(withoutModes(text(rewrite(back, Distance.INCREMENTAL).text())))
        .isEqualTo(withoutModes(text(incremental)));
  }

  /** All words but those that have to stay: no block moves in the other mode without a reason. */
  @ParameterizedTest
  @MethodSource("seeds")
  void every_move_is_in_the_mode_asked_for_or_said_to_be_kept(long seed) {
    for (Distance mode : Distance.values()) {
      Rewriting.Done done = rewrite(source(SomeProgram.of(seed)), mode);
      List<Integer> kept = done.kept().stream().map(Rewriting.Kept::line).toList();
      for (Step step : Lessons.steps(done.text(), SHEET)) {
        if (step.moves() && step.mode() != mode) {
          boolean free = step.absolute().equals(step.incremental()) && step.unsayable().isEmpty();
          assertThat(free || kept.contains(step.place().line()))
              .as("%s\n%s", step, text(done.text()))
              .isTrue();
        }
      }
    }
  }

  /** The words that the steps tell, written one below the other, are such a program, too. */
  @ParameterizedTest
  @MethodSource("seeds")
  void told_words_lead_to_the_same_ends(long seed) {
    SourceText program = source(SomeProgram.of(seed).replaceAll("M98 P20\\n", ""));
    Tape tape = tape(program);
    for (Distance mode : Distance.values()) {
      StringBuilder told = new StringBuilder();
      for (Step step : Lessons.steps(program, SHEET)) {
        boolean first = mode == Distance.ABSOLUTE;
        String wanted = (first ? step.absolute() : step.incremental()).orElse("");
        String other = (first ? step.incremental() : step.absolute()).orElse("");
        told.append(wanted.isEmpty() ? other : wanted).append('\n');
        if (step.plain().contains("the program ends")) {
          break;
        }
      }
      same(tape, tape(source(told.toString())));
    }
  }
}
