package flankfit.nc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import flankfit.finding.Place;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lines of a program as a listing shows them. */
class SourceTextTest {
  private static SourceText of(String text) {
    return SourceText.of("a.nc", text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void lines_end_at_any_line_end() {
    assertThat(of("G0\nG1\rG2\r\nG3").lines()).containsExactly("G0", "G1", "G2", "G3");
    assertThat(of("G0\n\nG1\n").lines()).containsExactly("G0", "", "G1");
    assertThat(of("").lines()).isEmpty();
    assertThat(of("\n").lines()).containsExactly("");
  }

  @Test
  void line_is_shown_as_utf8_or_else_as_iso_8859_1() {
    assertThat(of("(Öl an)").line(1)).isEqualTo("(Öl an)");
    byte[] old = "(Öl an)\nG0".getBytes(StandardCharsets.ISO_8859_1);
    assertThat(SourceText.of("b.nc", old).lines()).containsExactly("(Öl an)", "G0");
  }

  @Test
  void there_is_no_line_zero_and_none_beyond_the_last() {
    SourceText text = of("G0\nG1");
    assertThatIllegalArgumentException().isThrownBy(() -> text.line(0));
    assertThatIllegalArgumentException().isThrownBy(() -> text.line(3));
    assertThat(text.line(2)).isEqualTo("G1");
  }

  @Test
  void its_beginning_ends_with_a_whole_line() {
    SourceText text = of("G90\nG1 X1.\nX2.\n");
    assertThat(text.beginning(10).lines()).containsExactly("G90");
    assertThat(text.beginning(12).lines()).containsExactly("G90", "G1 X1.");
    assertThat(text.beginning(2).lines()).containsExactly("G9");
    assertThat(text.beginning(100)).isSameAs(text);
  }

  @Test
  void its_lines_cannot_be_changed_and_know_their_bounds() {
    List<String> lines = of("G90\nX1.").lines();
    assertThat(lines).containsExactly("G90", "X1.").hasSize(2);
    assertThatExceptionOfType(IndexOutOfBoundsException.class).isThrownBy(() -> lines.get(2));
    assertThatExceptionOfType(UnsupportedOperationException.class)
        .isThrownBy(() -> lines.set(0, "G91"));
  }

  @Test
  void edits_replace_words_and_leave_every_other_byte() {
    byte[] bytes = "(\u00e9\u20ac) G1 X1.\r\n\tY2. (\u00ff)\rZ3.".getBytes(StandardCharsets.UTF_8);
    SourceText text = SourceText.of("p.nc", bytes);
    SourceText edited =
        text.edited(
            List.of(
                new Edit(new Place("p.nc", 3, 1, 3), "Z-30."),
                new Edit(new Place("p.nc", 1, 6, 0), "G91 "),
                new Edit(new Place("p.nc", 1, 9, 3), "X.5"),
                new Edit(new Place("p.nc", 2, 2, 4), "")));
    assertThat(new String(edited.toBytes(), StandardCharsets.UTF_8))
        .isEqualTo("(\u00e9\u20ac) G91 G1 X.5\r\n\t(\u00ff)\rZ-30.");
    assertThat(text.toBytes()).isEqualTo(bytes);
  }

  @Test
  void edits_of_one_place_or_of_none_are_refused() {
    SourceText text = SourceText.of("p.nc", "X1. Y2.\n".getBytes(StandardCharsets.UTF_8));
    Edit whole = new Edit(new Place("p.nc", 1, 1, 7), "");
    assertThatThrownBy(() -> text.edited(List.of(whole, new Edit(new Place("p.nc", 1, 5, 1), ""))))
        .hasMessageContaining("overlap");
    assertThatThrownBy(() -> text.edited(List.of(whole, whole))).hasMessageContaining("two edits");
    assertThatThrownBy(() -> text.edited(List.of(new Edit(new Place("p.nc", 9, 1, 0), ""))))
        .hasMessageContaining("no place");
  }
}
