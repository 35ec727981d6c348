package flankfit.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The numbers of the worksheet against worked examples; the source stands beside each. */
class WorksheetPublishedTest {
  /** From memory of Machinery's Handbook, 27th edition, "Cutting Speed Formulas", the example. */
  @Test
  void a_bar_of_4_inch_at_575_feet_a_minute_turns_at_549() throws NotDraftedException {
    Drafts job = new Drafts();
    job.thread = "M160x6-6H";
    job.blank = 153.5;
    job.mill = 101.6;
    job.rows = 1;
    job.straight = Optional.empty();
    job.blankDepth = Optional.of(60.0);
    job.speed = Optional.of(175.3);
    List<WorksheetRow> rows = job.rows();
    assertThat(row(rows, "spindle").inserted()).endsWith("= 549");
    job.unit = LengthUnit.INCH;
    assertThat(row(job.rows(), "spindle").inserted())
        .startsWith("12 · 575 / (π · 4)")
        .endsWith("549");
  }

  private static WorksheetRow row(List<WorksheetRow> rows, String key) {
    return rows.stream().filter(r -> r.key().equals(key)).findFirst().orElseThrow();
  }

  /**
   * Percentages of full thread that tap-drill tables print beside these drills: from memory of such
   * tables in Machinery's Handbook and on shop charts (hole = D - 0.01299 · percent / threads).
   */
  @ParameterizedTest
  @CsvSource({
    "1/4-20 UNC-2B, 0.201, 75, 0.05",
    "1/4-28 UNF-2B, 0.213, 80, 0.0357",
    "3/8-16 UNC-2B, 0.3125, 77, 0.0625",
    "1/2-13 UNC-2B, 0.421875, 78, 0.0769"
  })
  void height_of_thread_is_that_printed_beside_the_drill(
      String thread, double drill, int percent, double pitch) throws NotDraftedException {
    Drafts job = new Drafts();
    job.thread = thread;
    job.blank = 25.4 * drill;
    job.mill = 0.5 * job.blank;
    job.rows = 1;
    job.straight = Optional.empty();
    assertThat(job.value("engagement")).isCloseTo(percent, within(0.6));
    assertThat(job.value("risePerTurn")).isCloseTo(25.4 * pitch, within(25.4 * 0.00005));
  }

  /**
   * Computed from the definition: edge and centre turn about one axis at one rate. Edge 200 mm/min
   * in M16 with a 12 mm mill is 50 at the centre, in M20 with 14 mm 60.
   */
  @ParameterizedTest
  @CsvSource({"M16-6H, 14, 12, 2, 50", "M20x1.5-6H, 18.5, 14, 1.5, 60"})
  void feed_of_the_centre_follows_from_that_of_the_edge(
      String thread, double hole, double mill, double pitch, double centre)
      throws NotDraftedException {
    Drafts job = new Drafts();
    job.thread = thread;
    job.blank = hole;
    job.mill = mill;
    job.rowPitch = pitch;
    job.flutes = 4;
    // S is 1000, so that four teeth at 0.05 mm make 200 mm/min.
    job.mostRpm = 1000;
    job.toothFeed = Optional.of(0.05);
    job.speed = Optional.of(500.0);
    assertThat(job.value("spindle")).isEqualTo(1000);
    assertThat(job.value("edgeFeed")).isCloseTo(200, within(1e-9));
    assertThat(job.value("centreFeed")).isEqualTo(centre);
  }

  /** The same outside: root 17 mm, mill 20 mm: 200 (17 + 20) / 17 = 435.3, computed. */
  @Test
  void outside_the_centre_is_faster_than_the_edge() {
    Feeds feeds = new Feeds(Optional.empty(), CuttingData.of("P"), true, 50, 1000, 1000, 0.05, 200);
    assertThat(feeds.centre(false, 18.5, 10)).isCloseTo(435.3, within(0.05));
  }

  /**
   * An arc that rises lead · sweep/360 · a/e leaves no mark: from the second-order expansion of the
   * envelope, a half turn on half the radius rises a quarter of the pitch, a quarter turn an
   * eighth.
   */
  @ParameterizedTest
  @CsvSource({"HALF, 0.375", "QUARTER, 0.1875", "STRAIGHT, 0"})
  void entry_rises_so_that_no_mark_is_left(DraftChoices.Entry entry, double rise)
      throws NotDraftedException {
    Drafts job = new Drafts();
    job.entry = entry;
    assertThat(job.value("entryRise")).isCloseTo(rise, within(1e-9));
  }

  /**
   * Areas of a V under the crest go with the square of the depth: three passes at 58, 82, 100 %.
   */
  @Test
  void passes_take_equal_areas_of_the_v() throws NotDraftedException {
    Drafts job = new Drafts();
    job.passes = 3;
    double depth = 0.75;
    double before = 0;
    for (int pass = 1; pass <= 3; pass++) {
      double to = job.value("pass" + pass);
      assertThat(to * to - before * before).isCloseTo(depth * depth / 3, within(1e-9));
      before = to;
    }
    assertThat(before).isEqualTo(depth);
  }

  /**
   * Straight V teeth: the groove's pitch diameter on a path of radius e is given in closed form by
   * w(D2/2) = w(e) + r_p, w(x) = √(x² - r²) - r·arccos(r/x), r = lead/2π·cot α (involute helicoid,
   * derived). The path found by gauging must put the middle of the limits there.
   */
  @ParameterizedTest
  @CsvSource({"M20x1.5-6H, 18.5, 14, 1.5", "M12x1.25-6H, 10.8, 8, 1.25"})
  void wear_found_by_gauging_is_that_of_the_closed_form(
      String thread, double hole, double mill, double pitch) throws NotDraftedException {
    Drafts job = new Drafts();
    job.thread = thread;
    job.blank = hole;
    job.mill = mill;
    job.rowPitch = pitch;
    job.straight = Optional.of(true);
    job.crest = Optional.of(pitch / 16);
    double base = pitch / (2 * Math.PI) * Math.sqrt(3);
    double pitchLine = mill / 2 - (pitch / 4 - pitch / 32) * Math.sqrt(3);
    var limits = job.spec().limits();
    double middle = (limits.pitchMin() + limits.pitchMax()) / 4;
    double low = base;
    double high = middle;
    for (int i = 0; i < 60; i++) {
      double half = (low + high) / 2;
      if (involute(half, base) + pitchLine < involute(middle, base)) {
        low = half;
      } else {
        high = half;
      }
    }
    double found = Drafts.value(job.draft().worksheet(), "radiusCut");
    assertThat(found).isCloseTo(low, within(0.0006));
  }

  private static double involute(double x, double base) {
    return Math.sqrt(x * x - base * base) - base * Math.acos(base / x);
  }

  /**
   * Common practice, no source: a comb longer than the thread turns once, a single row by depth.
   */
  @ParameterizedTest
  @CsvSource({"12, 16, 1", "1, 16, 12", "6, 16, 7", "12, 30, 10"})
  void turns_follow_from_depth_and_rows(int rows, double depth, int turns)
      throws NotDraftedException {
    Drafts job = new Drafts();
    job.rows = rows;
    job.depth = depth;
    job.blankDepth = Optional.of(40.0);
    assertThat(job.value("turns")).isEqualTo(turns);
    double start = job.value("startHeight");
    double lowest = -depth - 0.375 - 0.5;
    assertThat(start).isCloseTo(lowest, within(0.0006));
    assertThat(job.value("endHeight")).isCloseTo(lowest + turns * 1.5, within(0.0006));
  }
}
