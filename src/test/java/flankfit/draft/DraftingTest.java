package flankfit.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.motion.ModalState.Distance;
import flankfit.setup.Offsets;
import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import flankfit.setup.Stock;
import flankfit.setup.Tool;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a draft says, and what is refused with which advice. */
class DraftingTest {
  /**
   * Sense of the turn, travel along the axis and side of the compensation, from the trade's rule: a
   * cutter turning clockwise climbs counter-clockwise inside and clockwise outside, on the left of
   * the wall; a right-hand helix rises counter-clockwise. Common practice, no source.
   */
  @ParameterizedTest(name = "{0} climb {1} left-hand mill {2}")
  @CsvSource({
    "M20x1.5-6H,     true,  false, G3, bottom up, G41, M3",
    "M20x1.5-6H,     false, false, G2, top down,  G42, M3",
    "M20x1.5-6H-LH,  true,  false, G3, top down,  G41, M3",
    "M20x1.5-6H-LH,  false, false, G2, bottom up, G42, M3",
    "M20x1.5-6H,     true,  true,  G2, top down,  G42, M4",
    "M20x1.5-6g,     true,  false, G2, top down,  G41, M3",
    "M20x1.5-6g,     false, false, G3, bottom up, G42, M3",
    "M20x1.5-6g-LH,  true,  false, G2, bottom up, G41, M3",
    "M20x1.5-6g,     true,  true,  G3, bottom up, G42, M4"
  })
  void sense_travel_and_side_follow_from_hand_and_cut(
      String thread,
      boolean climb,
      boolean leftHandMill,
      String arc,
      String way,
      String side,
      String spindle)
      throws NotDraftedException {
    Drafts job = new Drafts();
    job.thread = thread;
    job.blank = job.spec().internal() ? 18.5 : 19.9;
    job.climb = climb;
    job.leftHandMill = leftHandMill;
    String program = job.program();
    String turn =
        program.lines().filter(l -> l.matches("N\\d+ G[23] Z\\S+ I-\\S+.*")).findFirst().orElse("");
    assertThat(turn).contains(" " + arc + " ");
    assertThat(program).contains(way.toUpperCase(Locale.ROOT), " " + side + " D4");
    assertThat(program.lines().filter(l -> l.endsWith(spindle))).hasSize(1);
  }

  @Test
  void contour_in_inch_is_the_program_worked_out_by_hand_for_the_valve_block()
      throws NotDraftedException {
    // The words of sample-programs/valve-block-half-13.nc, which was written by hand.
    Drafts job = new Drafts();
    job.thread = "1/2-13 UNC-2B";
    job.unit = LengthUnit.INCH;
    job.blank = 25.4 * 0.4219;
    job.mill = 25.4 * 0.35;
    job.rowPitch = 25.4 / 13;
    job.path = DraftChoices.Path.CONTOUR;
    assertThat(job.program())
        .contains("G41 D4 X-0.175 Y0.", "G3 X0.25 Y0. Z-", "I0.2125", "I-0.25", "I-0.2125");
  }

  @Test
  void incremental_words_come_back_to_the_axis_exactly() throws NotDraftedException {
    Drafts job = new Drafts();
    job.mode = Distance.INCREMENTAL;
    job.passes = 3;
    job.rows = 1;
    List<String> inside =
        job.program()
            .lines()
            .dropWhile(l -> !l.endsWith("G91"))
            .takeWhile(l -> !l.endsWith("G90"))
            .toList();
    for (char axis : new char[] {'X', 'Y', 'Z'}) {
      long sum =
          inside.stream()
              .flatMap(l -> List.of(l.split(" ", -1)).stream())
              .filter(w -> w.charAt(0) == axis)
              .mapToLong(w -> Math.round(1000 * Double.parseDouble(w.substring(1))))
              .sum();
      assertThat(sum).as("%s", axis).isZero();
    }
  }

  @Test
  void straight_entry_is_told_as_what_it_is() throws NotDraftedException {
    Drafts job = new Drafts();
    job.entry = DraftChoices.Entry.STRAIGHT;
    Draft draft = job.draft();
    assertThat(draft.proof().findings())
        .filteredOn(f -> f.severity() != Severity.NOTE)
        .extracting(Finding::code)
        .containsOnly(Code.HZ06);
  }

  @Test
  void two_starts_with_one_turn_of_a_longer_comb_and_with_a_single_row()
      throws NotDraftedException {
    Drafts job = new Drafts();
    job.thread = "M12xPh3P1.5-6H";
    job.blank = 10.5;
    job.mill = 8;
    job.depth = 12;
    job.rows = 9;
    assertThat(job.draft().proof().findings())
        .allSatisfy(f -> assertThat(f.severity()).isEqualTo(Severity.NOTE));
    job.rows = 1;
    assertThat(job.program()).contains("START 1 OF 2", "START 2 OF 2");
  }

  @Test
  void refusals_name_the_nearest_that_works() {
    Drafts job = new Drafts();
    job.mill = 18.4;
    refused(job, "a mill of 18.4 mm is too large", "largest mill that fits has 18.3 mm");
    job = new Drafts();
    job.blankDepth = Optional.of(17.0);
    refused(
        job,
        "17 mm deep is too shallow",
        "least depth is 17.75 mm",
        "deepest thread in this one is 15.25 mm");
    job = new Drafts();
    job.depth = 1.4;
    refused(job, "1.4 mm deep is less than one pitch", "least depth is 1.5 mm");
    job = new Drafts();
    job.rowPitch = 2;
    job.straight = Optional.empty();
    refused(job, "stand 2 mm apart", "rows 1.5 mm apart, or with one row");
    job = new Drafts();
    job.blank = 18.9;
    refused(job, "hole of 18.9 mm is too large", "drill 18.5 mm");
    job = new Drafts();
    job.mill = 15;
    job.entry = DraftChoices.Entry.QUARTER;
    refused(job, "a quarter arc would begin", "half turn", "mill of 14.7 mm or less");
    job = new Drafts();
    job.neck = Optional.of(new Tool.Section(13, 40));
    job.fluteLength = Optional.of(17.0);
    refused(job, "a neck of 13 mm rubs", "neck that clears has 12.3 mm");
    job.neck = Optional.of(new Tool.Section(11, 17.1));
    refused(job, "the neck reaches 17.1 mm", "a mill that reaches 17.25 mm");
    job = new Drafts();
    job.thread = "M64x4-6H";
    job.blank = 60;
    job.mill = 24;
    job.rowPitch = 4;
    job.straight = Optional.of(true);
    job.crest = Optional.of(0.05);
    refused(job, "deeper than the basic profile", "a crest flat of 0.5 mm");
    // A wear that is much for so small a mill would be taken for a wrong sign (RC15).
    job = new Drafts();
    job.thread = "#10-32 UNF-2A";
    job.blank = 4.727;
    job.depth = 9.5;
    job.mill = 1.9;
    job.rows = 1;
    job.rowPitch = 25.4 / 32;
    job.straight = Optional.of(true);
    job.crest = Optional.of(25.4 / 32 / 16);
    job.blankDepth = Optional.empty();
    refused(job, "deeper than the basic profile", "a crest flat of 0.1984 mm");
    job = new Drafts();
    job.subprogram = true;
    job.places = List.of(List.of(0.0, 0.0), List.of(50.0, 0.0));
    refused(job, "one subprogram in absolute words", "incremental words");
    job = new Drafts();
    job.thread = "#8-32 UNC-2B";
    job.blank = 3.45;
    job.mill = 2.5;
    job.rowPitch = 25.4 / 32;
    job.depth = 6;
    job.unit = LengthUnit.INCH;
    refused(job, "one turn can rise", "write the program in mm");
  }

  @Test
  void a_straight_mill_that_is_too_large_for_both_gauges_is_refused_with_the_largest_that_is_not()
      throws NotDraftedException {
    Drafts job = new Drafts();
    job.thread = "M20-6H";
    job.blank = 17.5;
    job.mill = 17;
    job.rowPitch = 2.5;
    job.rows = 8;
    job.straight = Optional.of(true);
    NotDraftedException no = job.refused();
    assertThat(no.what()).contains("no wear makes both gauges good with a mill of 17 mm");
    String most = no.fix().replaceAll("^.*does has ([0-9.]+) mm.*$", "$1");
    job.mill = Double.parseDouble(most);
    assertThat(job.draft().program()).isNotEmpty();
  }

  /** A port under a clamp, cut by a mill held short: 30 mm of it stand out. */
  private static SetupSheet underClamp(double clampTop, String stock) {
    Drafts job = new Drafts();
    job.fluteLength = Optional.of(18.0);
    job.neck = Optional.of(new Tool.Section(11, 22));
    String text = SheetText.of(job.wanted(), new Offsets.Register(0, 0));
    String held =
        text.replace(
            "neck = ",
            "shank = { diameter = 14.0, length = 4.0 }\n"
                + "holder = { diameter = 40.0, length = 50.0 }\nneck = ");
    String clamp =
        "\n[[keep-out]]\nname = \"clamp\"\nmin = [15.0, -10.0, 0.0]\nmax = [40.0, 10.0, "
            + clampTop
            + "]\n";
    String whole = held.replaceFirst("(?s)\\[stock\\].*?\n\n", stock.isEmpty() ? "" : "$0") + clamp;
    return SetupReader.read("job.setup.toml", whole).sheet().orElseThrow();
  }

  @Test
  void holder_that_would_touch_a_clamp_is_refused_with_the_depth_that_clears_it() throws Exception {
    Drafts job = new Drafts();
    // The tip goes to Z-17.23, so the holder's face at 26 mm comes down to Z8.77.
    NotDraftedException no = refusal(job, underClamp(10, "block"));
    assertThat(no.what()).contains("the program would touch", "holder of tool 4", "into clamp");
    assertThat(no.why()).contains("HZ17");
    assertThat(no.fix()).contains("the deepest thread that clears is ", "stand out farther");
    String depth = no.fix().replaceAll("^.*clears is ([0-9.]+) mm.*$", "$1");
    // Half pitches less deep: 16 - 0.75 k with 8.77 + 0.75 k above the clamp's top of 10.
    assertThat(Double.parseDouble(depth)).isEqualTo(14.5);
    Draft clear =
        Drafting.draft("job.nc", underClamp(8.6, "block"), job.choices(), Optional.empty());
    assertThat(clear.proof().metal()).isPresent();
    assertThat(clear.proof().findings()).allMatch(f -> f.severity() == Severity.NOTE);
  }

  @Test
  void sheet_without_stock_gives_a_draft_that_says_what_is_not_known() throws Exception {
    Draft draft =
        Drafting.draft("job.nc", underClamp(8, ""), new Drafts().choices(), Optional.empty());
    assertThat(draft.proof().metal()).isEmpty();
    assertThat(draft.proof().assumptions()).anyMatch(a -> a.contains("the sheet states no stock"));
  }

  @Test
  void boss_stands_free_in_the_sheet_that_a_draft_writes() throws Exception {
    Drafts job = new Drafts();
    job.thread = "M20x1.5-6g";
    job.blank = 19.85;
    Draft draft = job.draft();
    assertThat(draft.sheet().stock().orElseThrow().shape()).isEqualTo(Stock.Shape.CYLINDER);
    assertThat(draft.proof().metal()).isPresent();
    assertThat(draft.proof().findings()).allMatch(f -> f.severity() == Severity.NOTE);
    job.places = List.of(List.of(0.0, 0.0), List.of(60.0, 0.0));
    assertThat(job.sheet().stock()).isEmpty();
    assertThat(Drafts.row(job.rows(), "time").inserted()).isEqualTo("2 bosses");
  }

  @Test
  void entries_of_the_gauges_stand_on_both_sides_of_the_register() throws Exception {
    Draft draft = new Drafts().draft();
    double wear = draft.register().wear();
    assertThat(draft.offset().keyToNoGoLimit()).isLessThan(wear - 0.01);
    assertThat(draft.offset().keyToGoLimit()).isGreaterThan(wear + 0.01);
  }

  /** A straight mill leaves so little at the crest that GO would be refused at the middle. */
  @Test
  void wear_between_the_gauges_is_told_as_what_it_is() throws Exception {
    Drafts job = new Drafts();
    job.thread = "1/2-13 UNC-2B";
    job.unit = LengthUnit.INCH;
    job.blank = 25.4 * 27 / 64;
    job.mill = 25.4 * 0.37;
    job.rows = 1;
    job.straight = Optional.of(true);
    job.flutes = 3;
    Draft draft = job.draft();
    double wear = draft.register().wear();
    assertThat(draft.offset().asMoved().orElseThrow().middleBetweenGauges()).isTrue();
    assertThat(draft.offset().keyToMiddle()).isEqualTo(wear, within(1e-9));
    assertThat(draft.offset().keyToNoGoLimit()).isLessThanOrEqualTo(wear);
    assertThat(draft.offset().keyToGoLimit()).isGreaterThanOrEqualTo(wear);
    WorksheetRow row = Drafts.row(draft.worksheet(), "wear");
    assertThat(row.formula()).contains("the middle between the last entries");
    assertThat(row.value()).isEqualTo(wear, within(1e-9));
    assertThat(Drafts.row(new Drafts().draft().worksheet(), "wear").formula())
        .contains("in the middle of its limits");
  }

  private static NotDraftedException refusal(Drafts job, SetupSheet sheet) {
    try {
      Draft draft = Drafting.draft("job.nc", sheet, job.choices(), Optional.empty());
      throw new AssertionError("a refusal was expected: " + draft.program());
    } catch (NotDraftedException e) {
      return e;
    }
  }

  private static void refused(Drafts job, String what, String... fixes) {
    NotDraftedException no = job.refused();
    assertThat(no.what()).contains(what);
    assertThat(no.fix()).contains(fixes);
  }
}
