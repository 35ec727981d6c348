package flankfit.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import flankfit.control.Interpreter;
import flankfit.motion.ModalState.Distance;
import flankfit.nc.SourceText;
import flankfit.setup.SetupSheet;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/**
 * Steps near a position, word by word. What G90 and G91 mean, from memory of ISO 6983-1:
 * coordinates count from the zero, distances from the point before; the figures follow by hand.
 */
class NearStepsTest {
  private static final String HELIX =
      """
      G21 G17 G90 G94 G54
      G0 X10. Y0. Z5.
      G1 Z-10. F100.
      G91
      G3 I-10. Z1.5
      G1 X-10.
      G90
      G0 Z5.
      """;

  private static NearSteps near(String text, int from, int to) {
    SourceText source = Lessons.source(text);
    SetupSheet sheet = SetupSheet.empty();
    return NearSteps.of(
        observer -> Interpreter.observe(source, sheet, List.of(), observer),
        sheet,
        from,
        to,
        number -> true);
  }

  private static List<String> texts(Wording wording) {
    return wording.words().stream().map(Wording.Word::text).toList();
  }

  @Test
  void a_helix_is_told_in_both_modes_and_what_differs_is_marked() {
    Told helix = near(HELIX, 1, 9).at(5).orElseThrow();
    assertThat(texts(helix.absolute())).containsExactly("G90", "G3", "I-10.", "Z-8.5");
    assertThat(texts(helix.incremental())).containsExactly("G91", "G3", "I-10.", "Z1.5");
    assertThat(helix.absolute().words().stream().map(Wording.Word::differs))
        .containsExactly(true, false, false, true);
    assertThat(helix.in(Distance.INCREMENTAL).words().stream().map(Wording.Word::inForce))
        .containsExactly(true, false, false, false);
    assertThat(helix.in(Distance.ABSOLUTE).words()).noneMatch(Wording.Word::inForce);
    assertThat(helix.modeSince().orElseThrow().line()).isEqualTo(4);
    assertThat(helix.step().plain())
        .isEqualTo(
            "from where it stands, 1.5 up while going once round anticlockwise, centre 10 left");
  }

  @Test
  void a_block_that_cannot_be_said_says_why() {
    Told first = near("G91 G1 X3. F100.\nG90 X1.\n", 1, 2).at(1).orElseThrow();
    assertThat(first.incremental().isSaid()).isTrue();
    assertThat(first.absolute().isSaid()).isFalse();
    assertThat(first.absolute().words()).isEmpty();
    assertThat(first.absolute().whyNot()).contains("where the tool stands in X");
    assertThat(first.modeSince().orElseThrow().line()).isEqualTo(1);
  }

  @Test
  void each_time_that_a_block_is_executed_is_a_step_of_its_own() {
    String text =
        """
        G21 G90 G54 G0 X0. Y0. Z0. F100.
        #1 = 0
        WHILE [#1 LT 3] DO1
        G91 G1 X2.
        #1 = #1 + 1
        END1
        M30
        """;
    NearSteps steps = near(text, 1, 99);
    List<Double> ends =
        java.util.stream.IntStream.rangeClosed(1, 30)
            .mapToObj(steps::at)
            .flatMap(java.util.Optional::stream)
            .filter(told -> told.step().place().line() == 4)
            .map(told -> told.step().end().x())
            .toList();
    assertThat(ends).containsExactly(2.0, 4.0, 6.0);
  }

  @Test
  void only_the_blocks_asked_for_are_told_with_what_came_before_them() {
    NearSteps steps = near(HELIX, 5, 6);
    assertThat(steps.at(4)).isEmpty();
    assertThat(steps.at(7)).isEmpty();
    assertThat(texts(steps.at(6).orElseThrow().absolute())).containsExactly("G90", "G1", "X0.");
  }

  @Test
  void nobody_waits_for_the_rest() {
    SourceText source = Lessons.source(HELIX);
    AtomicInteger last = new AtomicInteger();
    assertThatExceptionOfType(CancellationException.class)
        .isThrownBy(
            () ->
                NearSteps.of(
                    o -> Interpreter.observe(source, SetupSheet.empty(), List.of(), o),
                    SetupSheet.empty(),
                    1,
                    9,
                    number -> {
                      last.set(number);
                      return number < 3;
                    }));
    assertThat(last).hasValue(3);
  }
}
