package flankfit.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.control.ExampleSheet;
import flankfit.nc.SourceText;
import flankfit.setup.ControlSwitches;
import flankfit.setup.SetupSheet;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Programs with a word forgotten; the figures are worked out by hand. */
class PartingTest {
  private static final String HEAD = "G21 G90 G17 G54 F200. S1000 M3\nG0 X10. Y0. Z5.\n";

  private static final ControlSwitches.Reading READING = SetupSheet.empty().control().reading();

  private static LeftOut leftOut(String text, int line, String word) {
    Optional<String> wanted = word.isEmpty() ? Optional.empty() : Optional.of(word);
    return LeftOut.of(Lessons.source(text), READING, line, wanted).orElseThrow();
  }

  private static Parting parting(String text, LeftOut left, String sheet) {
    return Parting.of(Lessons.source(text), left, ExampleSheet.of(sheet), List.of());
  }

  private static String text(LeftOut left) {
    return new String(left.text().toBytes(), StandardCharsets.UTF_8);
  }

  /** G90 forgotten: X20 becomes a distance from X11, so the tool stands at X31, 11 mm off. */
  @Test
  void absolute_forgotten() {
    String program = HEAD + "G91 X1.\nG90\nX20.\nY4.\nG28 X0 Y0\nM30\n";
    LeftOut left = leftOut(program, 4, "");
    assertThat(text(left)).isEqualTo(HEAD + "G91 X1.\n\nX20.\nY4.\nG28 X0 Y0\nM30\n");
    assertThat(left.alone()).isTrue();
    Parting parting = parting(program, left, "reference-point = [0, 0, 300]");
    assertThat(parting.first().orElseThrow().line()).isEqualTo(5);
    assertThat(parting.greatest()).isCloseTo(11, within(1e-9));
    assertThat(parting.at().line()).isEqualTo(5);
    assertThat(parting.last()).isCloseTo(0, within(1e-9));
    assertThat(parting.lastAt().line()).isEqualTo(8);
  }

  /** G91 forgotten: X1 is a coordinate, 10 mm from X11. */
  @Test
  void incremental_forgotten_in_a_block_with_other_words() {
    String program = HEAD + "G91 X1.\nM30\n";
    LeftOut left = leftOut(program, 3, "");
    assertThat(text(left)).isEqualTo(HEAD + "X1.\nM30\n");
    assertThat(left.alone()).isFalse();
    Parting parting = parting(program, left, "");
    assertThat(parting.last()).isCloseTo(10, within(1e-9));
  }

  /** The tool keeps its 2 mm to the left, upwards of the way along X, at the end of the wall. */
  @Test
  void cancel_forgotten() {
    String program = HEAD + "G41 D1 G1 X20. Y10.\nX40.\nG40 X60.\nM30\n";
    LeftOut left = leftOut(program, 5, "g40");
    Parting parting = parting(program, left, "D1 = { geometry = 2 }");
    assertThat(parting.first().orElseThrow().line()).isEqualTo(5);
    assertThat(parting.last()).isCloseTo(2, within(1e-9));
  }

  /** G20 forgotten: 1 instead of 25.4. */
  @Test
  void inch_forgotten() {
    String program = "G20\nG90 G17 G54 F9. S1000 M3\nG0 X0 Y0 Z1.\nG1 X1.\nM30\n";
    Parting parting = parting(program, leftOut(program, 1, ""), "");
    assertThat(parting.greatest()).isCloseTo(24.4 * Math.sqrt(2), within(1e-9));
  }

  @Test
  void word_that_changes_nothing_leaves_the_paths_together() {
    String program = HEAD + "G90 X20.\nM30\n";
    assertThat(parting(program, leftOut(program, 3, ""), "").first()).isEmpty();
  }

  @Test
  void line_with_several_words_asks_which() {
    SourceText text = Lessons.source("G17 G40 G80\nG0 X0\n");
    assertThat(LeftOut.of(text, READING, 1, Optional.empty())).isEmpty();
    assertThat(LeftOut.words(text, READING, 1)).containsExactly("G17", "G40", "G80");
    assertThat(LeftOut.of(text, READING, 2, Optional.empty()).orElseThrow().word()).isEqualTo("G0");
    assertThat(LeftOut.of(text, READING, 3, Optional.empty())).isEmpty();
    assertThat(LeftOut.of(text, READING, 1, Optional.of("G91"))).isEmpty();
  }
}
