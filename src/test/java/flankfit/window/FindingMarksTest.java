package flankfit.window;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.picture.Theme;
import org.junit.jupiter.api.Test;

class FindingMarksTest {
  private final FindingMarks marks =
      new FindingMarks(WindowSamples.thread().findings(), WindowSamples.FILE);

  @Test
  void a_mark_is_a_shape_and_a_word() {
    assertThat(marks.gravest(2).map(FindingMarks::sign)).contains("● note");
    assertThat(marks.gravest(5).map(FindingMarks::sign)).contains("▲ warning");
    assertThat(marks.gravest(14).map(FindingMarks::sign)).contains("■ error");
    assertThat(marks.gravest(3)).isEmpty();
  }

  @Test
  void the_gravest_come_first_and_only_errors_are_alarming() {
    assertThat(marks.byWeight())
        .extracting(Finding::severity)
        .containsExactly(Severity.ERROR, Severity.WARNING, Severity.NOTE);
    Theme.Palette palette = Theme.LIGHT.palette();
    assertThat(FindingMarks.ink(Severity.ERROR, palette)).isEqualTo(palette.alarm());
    assertThat(FindingMarks.ink(Severity.NOTE, palette)).isEqualTo(palette.softInk());
  }

  @Test
  void the_summary_counts_each_severity() {
    assertThat(marks.summary()).isEqualTo("1 error, 1 warning, 1 note");
    assertThat(new FindingMarks(java.util.List.of(), "").summary()).isEqualTo("no findings");
  }
}
