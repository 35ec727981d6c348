package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FindingMarksTest {
  private final FindingMarks marks = new FindingMarks(WindowSamples.thread().findings());

  @Test
  void a_mark_is_a_shape_and_a_word() {
    assertThat(marks.mark(2)).isEqualTo("● note");
    assertThat(marks.mark(5)).isEqualTo("▲ warning");
    assertThat(marks.mark(14)).isEqualTo("■ error");
    assertThat(marks.mark(3)).isEmpty();
  }

  @Test
  void the_summary_counts_each_severity() {
    assertThat(marks.summary()).isEqualTo("1 error, 1 warning, 1 note");
    assertThat(new FindingMarks(java.util.List.of()).summary()).isEqualTo("no findings");
  }
}
