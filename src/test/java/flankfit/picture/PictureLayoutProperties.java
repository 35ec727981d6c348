package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.gauge.DrawnThreads;
import flankfit.gauge.RealAnswer;
import flankfit.gauge.ThreadAnswer;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Pictures of many answers on many sheets: no text covers another, nothing leaves the sheet, all
 * text has a contrast of 4.5 : 1 and all lines one of 3 : 1 (WCAG 2.2, 1.4.3 and 1.4.11).
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PictureLayoutProperties {
  /** Rounds of each seed: eight seeds make 240 answers, each drawn as ladder, section and chart. */
  private static final int ROUNDS = 30;

  /** The tip of a hollow mark may reach into the room that figures have for descenders (px). */
  private static final double TIP = 2;

  private List<ThreadAnswer> bases;
  private ThreadAnswer marked;

  @BeforeAll
  void gauge() {
    marked = DrawnThreads.marked();
    bases = List.of(DrawnThreads.good(), DrawnThreads.refused(), marked, DrawnThreads.boss());
  }

  private record Sheet(int width, int height, Theme theme, LengthUnit unit) {
    static Sheet any(Random random) {
      return new Sheet(
          600 + random.nextInt(random.nextBoolean() ? 400 : 2000),
          400 + random.nextInt(random.nextBoolean() ? 300 : 1400),
          random.nextBoolean() ? Theme.LIGHT : Theme.DARK,
          random.nextBoolean() ? LengthUnit.MILLIMETRE : LengthUnit.INCH);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void text_is_never_covered_and_nothing_leaves_the_sheet(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < ROUNDS; i++) {
      ThreadAnswer thread = DrawnThreads.varied(bases.get(random.nextInt(bases.size())), random);
      Sheet sheet = Sheet.any(random);
      String where = sheet + " seed " + seed + " round " + i;
      Diagram ladder =
          LadderPicture.of(
              thread,
              scatter(thread, random),
              sheet.unit(),
              sheet.width(),
              sheet.height(),
              sheet.theme());
      readable(ladder, "ladder on " + where);
      unmarked(ladder, "ladder on " + where);
      // Detail gives way on a small sheet, but never what the picture is about.
      ThreadAnswer.PassMeasures last =
          thread.passes().get(thread.passes().size() - 1).after().orElseThrow();
      assertThat(Page.of(ladder).text())
          .as(where)
          .contains("NO-GO", "greatest", "least", thread.verdict().words())
          .containsPattern("(?m)^" + Figures.length(last.pitch(), sheet.unit()) + "$");
      readable(
          SectionPicture.of(
              thread,
              thread.surface().orElseThrow(),
              sheet.unit(),
              sheet.width(),
              sheet.height(),
              sheet.theme()),
          "section on " + where);
      int steps = 2 + random.nextInt(40);
      double by = 0.001 * (1 + random.nextInt(30));
      readable(
          SweepPicture.of(
              DrawnThreads.sweep(thread, steps, by),
              thread,
              sheet.unit(),
              sheet.width(),
              sheet.height(),
              sheet.theme()),
          "chart on " + where);
    }
  }

  /** As the window shows it, in rooms as small as a window of 640 x 480 leaves. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2})
  void no_word_of_a_ladder_in_a_window_lies_over_a_word_or_a_mark(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < ROUNDS; i++) {
      ThreadAnswer base = bases.get(random.nextInt(bases.size()));
      ThreadAnswer thread = DrawnThreads.varied(base, random);
      Sheet sheet = Sheet.any(random);
      Diagram ladder =
          LadderPicture.bare(
              thread,
              scatter(thread, random),
              LadderPicture.Range.of(base),
              sheet.unit(),
              sheet.width() / 2,
              sheet.height() / 2,
              sheet.theme());
      String where = "bare ladder on " + sheet + " seed " + seed + " round " + i;
      readable(ladder, where);
      unmarked(ladder, where);
    }
  }

  /** No text over a rung, its marks or a batch's bar; limits and gauges go on below a text. */
  private static void unmarked(Diagram ladder, String where) {
    Page page = Page.of(ladder);
    double ground = page.marks.stream().mapToDouble(m -> m.right() - m.left()).max().orElse(0);
    for (TextBox mark : page.marks) {
      if (mark.right() - mark.left() < 0.9 * ground) {
        for (Page.Words words : page.words) {
          TextBox box = words.box();
          boolean apart =
              box.left() >= mark.right() - TIP
                  || mark.left() >= box.right() - TIP
                  || box.top() >= mark.bottom() - TIP
                  || mark.top() >= box.bottom() - TIP;
          assertThat(apart).as("%s and the mark %s, %s", words, mark, where).isTrue();
        }
      }
    }
  }

  private static Optional<LadderPicture.Scatter> scatter(ThreadAnswer thread, Random random) {
    if (random.nextBoolean()) {
      return Optional.empty();
    }
    double middle = thread.finished().orElseThrow().pitchSimple();
    return Optional.of(
        new LadderPicture.Scatter(
            middle - 0.1 * random.nextDouble(), middle + 0.1 * random.nextDouble()));
  }

  @Test
  void a_mark_on_the_wall_is_named_wherever_it_lies_and_no_text_is_covered() {
    Random random = new Random(9);
    for (int i = 0; i < 12; i++) {
      Sheet sheet = Sheet.any(random);
      double theta = 2 * Math.PI * random.nextDouble() - Math.PI;
      RealAnswer real = DrawnThreads.markedBy(marked.real().orElseThrow(), 0.029, theta);
      Diagram wall =
          WallPicture.of(
              marked,
              real,
              marked.surface().orElseThrow(),
              sheet.unit(),
              Math.min(900, sheet.width()),
              Math.min(700, sheet.height()),
              sheet.theme());
      readable(wall, "wall on " + sheet);
      assertThat(Page.of(wall).text()).contains("entry mark, 29 µm deeper");
    }
  }

  private static void readable(Diagram diagram, String where) {
    Page page = Page.of(diagram);
    List<Page.Words> words = page.words;
    for (int i = 0; i < words.size(); i++) {
      for (int k = 0; k < i; k++) {
        TextBox a = words.get(i).box();
        TextBox b = words.get(k).box();
        boolean apart =
            a.left() >= b.right()
                || b.left() >= a.right()
                || a.top() >= b.bottom()
                || b.top() >= a.bottom();
        assertThat(apart).as("%s and %s, %s", words.get(i), words.get(k), where).isTrue();
      }
    }
    assertThat(page.left).as(where).isGreaterThanOrEqualTo(0);
    assertThat(page.top).as(where).isGreaterThanOrEqualTo(0);
    assertThat(page.right).as(where).isLessThanOrEqualTo(diagram.width());
    assertThat(page.bottom).as(where).isLessThanOrEqualTo(diagram.height());
    int paper = diagram.palette().ground();
    int band = Colours.mix(paper, diagram.palette().absolute(), GaugeMarks.BAND);
    for (Page.Words each : words) {
      assertThat(Colours.contrast(each.colour(), paper)).as(each + where).isGreaterThan(4.5);
      assertThat(Colours.contrast(each.colour(), band)).as(each + where).isGreaterThan(4.5);
    }
    for (int colour : page.lineColours) {
      assertThat(Colours.contrast(colour, paper)).as(where).isGreaterThan(3);
    }
  }
}
