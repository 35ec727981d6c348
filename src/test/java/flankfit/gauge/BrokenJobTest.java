package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Severity;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.TapeBuilder;
import flankfit.setup.Hole;
import flankfit.setup.Offsets;
import flankfit.setup.SetupSheet;
import flankfit.setup.Tool.CutterForm;
import flankfit.standard.Designations;
import flankfit.standard.InvalidDesignationException;
import flankfit.standard.ThreadSpec;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Jobs that go wrong get a sensible answer. */
class BrokenJobTest {
  private final Milled job = new Milled();

  private static List<Code> faults(GaugeAnswer answer) {
    return answer.findings().stream()
        .filter(f -> f.severity() != Severity.NOTE)
        .map(Finding::code)
        .toList();
  }

  @Test
  void motion_elsewhere_is_named_with_the_nearest_hole() {
    job.holesAt = List.of(new Point(0, 40, 0));
    GaugeAnswer answer = job.judgedAll();
    assertThat(answer.threads()).isEmpty();
    assertThat(faults(answer)).containsExactly(Code.GA03, Code.GA02);
    assertThat(answer.findings().get(1).why()).contains("port 1").contains("40 mm");
  }

  @Test
  void a_hole_without_thread_is_told_from_no_hole() {
    job.thread = "";
    assertThat(faults(job.judgedAll())).containsExactly(Code.GA02);
  }

  @Test
  void no_thread_at_all_is_one_error() {
    TapeBuilder tape = new TapeBuilder(Point.ZERO, Milled.RATES);
    SetupSheet sheet = job.sheet();
    GaugeAnswer answer =
        ThreadGauging.gauge(
            new GaugeRequest("job.nc", tape.build(), sheet, offsets -> Optional.empty()));
    assertThat(faults(answer)).containsExactly(Code.GA01);
    assertThat(answer.threads()).isEmpty();
  }

  @Test
  void an_entry_arc_alone_is_no_thread() {
    job.turns = 0.5;
    assertThat(faults(job.judgedAll())).containsExactly(Code.GA01);
  }

  /** An entry arc goes round half a turn, rounded words a little further: a hundredth is given. */
  @Test
  void a_little_more_than_an_entry_arc_is_a_thread_far_too_short() {
    job.turns = 0.5099;
    assertThat(faults(job.judgedAll())).containsExactly(Code.GA01);
    job.turns = 0.5101;
    assertThat(faults(job.judgedAll())).doesNotContain(Code.GA01).contains(Code.TH04);
  }

  @Test
  void a_turn_short_of_full_is_found() {
    job.turns = 350.0 / 360;
    assertThat(faults(job.judgedAll())).containsExactly(Code.TH04);
  }

  @Test
  void a_ring_in_the_solid_round_the_hole_is_no_thread() {
    job.mill = 9;
    job.rows = 1;
    job.crest = 0.08;
    job.radii = new double[] {14};
    ThreadAnswer answer = job.judged();
    assertThat(answer.verdict()).isEqualTo(Verdict.NOT_A_THREAD);
    assertThat(answer.reason()).isEqualTo("no groove half the pitch wide is cut into the wall");
    assertThat(answer.finished()).isEmpty();
    assertThat(answer.passes()).allSatisfy(pass -> assertThat(pass.after()).isEmpty());
  }

  @Test
  void a_tool_not_in_the_sheet_is_named() {
    job.toolInSheet = 7;
    GaugeAnswer answer = job.judgedAll();
    assertThat(faults(answer)).containsExactly(Code.GA04);
    assertThat(answer.findings().get(0).what()).contains("tool 4");
  }

  @Test
  void a_measured_profile_that_is_none_is_named() {
    job.form = new CutterForm.Measured(List.of(List.of(0.5, 7.0), List.of(0.9, 6.0)));
    GaugeAnswer answer = job.judgedAll();
    assertThat(faults(answer)).containsExactly(Code.GA04);
    assertThat(answer.findings().get(0).why()).contains("middle of the tooth");
  }

  @Test
  void a_designation_no_standard_knows_is_named() {
    job.thread = "M20x1.4-6H";
    assertThat(faults(job.judgedAll())).containsExactly(Code.GA06);
  }

  @Test
  void a_circle_without_rise_is_no_thread() {
    job.lead = 0;
    assertThat(job.judged().verdict()).isEqualTo(Verdict.NOT_A_THREAD);
    assertThat(faults(job.judgedAll())).containsExactly(Code.TH01);
  }

  @Test
  void a_path_that_does_not_reach_the_wall_cuts_nothing() {
    job.radii = new double[] {2};
    ThreadAnswer thread = job.judged();
    assertThat(thread.verdict()).isEqualTo(Verdict.NOT_A_THREAD);
    assertThat(thread.reason()).contains("no groove is cut");
    assertThat(thread.finished()).isEmpty();
    assertThat(faults(job.judgedAll())).containsExactly(Code.TH06);
  }

  @Test
  void a_scratch_below_the_basic_minor_diameter_is_refused_by_the_crest() {
    job.hole = 18.3;
    job.radii = new double[] {2.18};
    ThreadAnswer thread = job.judged();
    assertThat(thread.verdict()).isEqualTo(Verdict.GO_REFUSED);
    assertThat(thread.finished().orElseThrow().decidedBy()).isEqualTo(Fit.DecidedBy.CREST);
    assertThat(thread.go().orElseThrow().clearance()).isLessThan(-1);
  }

  @Test
  void a_retract_along_z_with_the_teeth_in_the_thread_is_an_error() {
    job.retractInPlace = true;
    GaugeAnswer answer = job.judgedAll();
    assertThat(faults(answer)).containsExactly(Code.HZ07);
    assertThat(answer.findings()).anyMatch(f -> f.what().contains("along Z"));
  }

  @Test
  void an_axis_off_the_hole_is_a_warning_and_still_measured() {
    job.holesAt = List.of(new Point(0.05, 0, 0));
    assertThat(faults(job.judgedAll())).containsExactly(Code.TH07);
    assertThat(job.endless().finished()).isPresent();
  }

  @Test
  void a_thread_too_short_or_begun_too_low_is_found() {
    job.zStart = -12;
    assertThat(faults(job.judgedAll())).containsExactly(Code.TH09);
    assertThat(job.judgedAll().findings()).anyMatch(f -> f.fix().contains("deeper"));
  }

  @Test
  void a_mill_as_large_as_the_hole_does_not_go_in() {
    job.mill = 18.6;
    job.radii = new double[] {0.7};
    assertThat(faults(job.judgedAll())).contains(Code.TH08);
  }

  /**
   * Both sides of the limit: a thousandth smaller than the hole goes in, as wide as it does not.
   */
  @Test
  void a_mill_goes_into_a_hole_that_is_a_thousandth_wider() {
    job.mill = 18.5;
    job.radii = new double[] {0.75};
    assertThat(faults(job.judgedAll())).contains(Code.TH08);
    job.mill = 18.499;
    assertThat(faults(job.judgedAll())).doesNotContain(Code.TH08);
  }

  /** The basic triangle of Whitworth's thread has 55 degrees, that of ISO 68-1 60. */
  @Test
  void a_mill_of_another_flank_angle_is_named_from_half_a_degree_of_a_flank_on() {
    job.flankAngle = 55;
    List<Finding> findings = told(Code.TH18);
    assertThat(findings).hasSize(1);
    assertThat(findings.get(0).what()).contains("27.5°", "30°");
    // It bears at the minor diameter: (19.0 - 18.5) (1 - tan 27.5° / tan 30°), by plane geometry.
    assertThat(findings.get(0).why()).contains("GO loses 0.0465 mm");
    assertThat(job.endless().finished()).isPresent();
    for (double off : new double[] {-1.01, 1.01}) {
      job.flankAngle = 60 + off;
      assertThat(told(Code.TH18)).as("%s", off).hasSize(1);
    }
    for (double off : new double[] {-0.99, 0, 0.99}) {
      job.flankAngle = 60 + off;
      assertThat(told(Code.TH18)).as("%s", off).isEmpty();
    }
  }

  @Test
  void a_mill_ground_for_a_thread_and_a_measured_one_are_not_taken_for_another_angle() {
    job.form = new CutterForm.GroundFor("M20x1.5-6H", false);
    assertThat(told(Code.TH18)).isEmpty();
    // At a large lead the tooth itself stands far off the angle that it leaves.
    Milled steep = new Milled();
    steep.thread = "M20xPh7.5P2.5-6H";
    steep.form = new CutterForm.GroundFor(steep.thread, false);
    steep.lead = 7.5;
    steep.rowPitch = 2.5;
    steep.mill = 12;
    steep.hole = 17.6;
    steep.radii = new double[] {4};
    assertThat(steep.judgedAll().threads()).hasSize(1);
    assertThat(steep.judgedAll().findings()).noneMatch(f -> f.code() == Code.TH18);
    // flanks of 45 degrees, measured
    job.form =
        new CutterForm.Measured(List.of(List.of(0.0, 7.0), List.of(0.09, 7.0), List.of(1.09, 6.0)));
    assertThat(told(Code.TH18)).hasSize(1);
    assertThat(told(Code.TH18).get(0).what()).contains("45°");
  }

  @Test
  void teeth_too_wide_at_the_tip_are_named_from_the_width_on_that_no_entry_helps()
      throws InvalidDesignationException {
    // Plane geometry: a tooth of half angle 30 degrees, P/2 wide where the NO-GO plug's pitch
    // diameter is, is narrower by the way to the GO plug's crest times tan 30 degrees.
    ThreadSpec spec = Designations.parse("M20x1.5-6H");
    double reach =
        spec.gauges().orElseThrow().goMajorMin() - spec.gauges().orElseThrow().noGoPitch();
    double widest = 0.75 - reach * Math.tan(Math.toRadians(30));
    assertThat(widest).isBetween(0.2, 0.375);
    job.crest = widest - 0.001;
    assertThat(told(Code.TH19)).isEmpty();
    job.crest = widest + 0.001;
    assertThat(told(Code.TH19)).hasSize(1);
    assertThat(job.only().offset().orElseThrow().hasWindow()).isFalse();
    job.form = new CutterForm.GroundFor("M20x1.5-6H", false);
    job.crest = 0.1875;
    assertThat(told(Code.TH19)).isEmpty();
  }

  @Test
  void rows_of_another_pitch_are_told_as_rows_and_not_as_lead() {
    job.rowPitch = 1.75;
    ThreadAnswer answer = job.judged();
    assertThat(answer.verdict()).isEqualTo(Verdict.NOT_A_THREAD);
    assertThat(answer.reason()).startsWith("the rows of the mill stand 1.75 mm apart");
    assertThat(told(Code.TH13).get(0).fix())
        .isEqualTo("take a mill with rows 1.5 mm apart, or with one row");
    // a thousandth of the pitch is the limit
    job.rowPitch = 1.5014;
    assertThat(told(Code.TH13)).isEmpty();
    job.rowPitch = 1.5016;
    assertThat(told(Code.TH13)).hasSize(1);
  }

  @Test
  void a_helix_of_another_lead_than_the_rows_is_to_be_mended_itself() {
    job.lead = 1.75;
    assertThat(told(Code.TH13).get(0).fix()).isEqualTo("move Z by 1.5 mm in a turn");
    // 0.25 mm cot 30°
    assertThat(job.judged().reason()).contains("the lead error alone costs 0.433 mm");
  }

  @Test
  void an_entry_of_the_sheet_beyond_the_controls_limit_is_told() {
    job.zStart = -17.5;
    job.wear = -0.045;
    job.wearLimit = Optional.of(0.045);
    assertThat(advised(Code.GA11)).isEmpty();
    job.wearLimit = Optional.of(0.044);
    assertThat(advised(Code.GA11)).hasSize(1);
    assertThat(advised(Code.GA11).get(0).what()).contains("-0.045 mm in the sheet");
    job.wearLimit = Optional.of(0.02);
    assertThat(advised(Code.GA11)).hasSize(1);
    assertThat(advised(Code.GA11).get(0).what()).contains("-0.028 mm, the middle");
    assertThat(advised(Code.GA11).get(0).why()).contains("some entries");
  }

  private List<Finding> advised(Code code) {
    return job.gauge().findings().stream().filter(f -> f.code() == code).toList();
  }

  private List<Finding> told(Code code) {
    return job.judgedAll().findings().stream().filter(f -> f.code() == code).toList();
  }

  @Test
  void a_half_turn_entry_that_rises_too_much_leaves_a_mark() {
    job.entryRiseShare = 0.5;
    GaugeAnswer answer = job.judgedAll();
    assertThat(faults(answer)).containsExactly(Code.TH05);
    Finding mark =
        answer.findings().stream().filter(f -> f.code() == Code.TH05).findFirst().orElseThrow();
    assertThat(mark.what()).contains("0.0285 mm deep");
    assertThat(mark.fix()).contains("0.375 mm");
    job.entryRiseShare = 0.25;
    assertThat(faults(job.judgedAll())).isEmpty();
  }

  @Test
  void more_turns_than_a_comb_needs_pass_through_the_same_metal() {
    job.turns = 3;
    job.zStart = -17.5;
    assertThat(faults(job.judgedAll())).containsExactly(Code.TH10);
  }

  @Test
  void a_replay_that_fails_leaves_the_advice_out() {
    SetupSheet sheet = job.sheet();
    GaugeAnswer answer =
        ThreadGauging.gauge(
            new GaugeRequest(
                "job.nc", job.tape(Offsets.none()), sheet, offsets -> Optional.empty()));
    assertThat(answer.threads().get(0).offset()).isEmpty();
  }

  @Test
  void a_helix_about_another_axis_is_told_not_gauged() {
    TapeBuilder tape = new TapeBuilder(new Point(3, 0, 0), Milled.RATES);
    var state = job.tape(Offsets.none()).state(0);
    var other =
        new flankfit.motion.ModalState(
            state.distance(),
            flankfit.motion.Plane.ZX,
            state.compensation(),
            0,
            4,
            4,
            state.unit(),
            "G54",
            4,
            180,
            state.spindle(),
            3200,
            true);
    tape.arc(3, 1.5, 0, 0, 0, 3, 3, 2 * Math.PI, 4, 4, other);
    tape.straight(MoveKind.RAPID, 0, 0, 50, 5, 5, state);
    GaugeAnswer answer =
        ThreadGauging.gauge(
            new GaugeRequest("job.nc", tape.build(), job.sheet(), offsets -> Optional.empty()));
    assertThat(faults(answer)).containsExactly(Code.GA01, Code.GA06);
  }

  @Test
  void a_ground_mill_too_large_for_its_own_thread_is_named() {
    job.mill = 20.5;
    job.form = new CutterForm.GroundFor("M20x1.5-6H", false);
    GaugeAnswer answer = job.judgedAll();
    assertThat(faults(answer)).containsExactly(Code.GA04);
    assertThat(answer.findings().get(0).why()).contains("outside radius");
  }

  @Test
  void a_hub_threaded_inside_and_outside_has_two_threads_on_one_axis() {
    Milled outside = new Milled();
    outside.thread = "M30x1.5-6g";
    outside.boss = true;
    outside.hole = 30;
    outside.mill = 14;
    outside.radii = new double[] {(30 - 1.25 * Math.sqrt(3) / 2 * 1.5 + 14) / 2};
    outside.inwards = total -> total;
    Hole boss = outside.sheet().holes().get(0);
    SetupSheet inside = job.sheet();
    SetupSheet both =
        new SetupSheet(
            "hub.setup.toml",
            "",
            inside.unit(),
            inside.control(),
            inside.stock(),
            List.of(),
            inside.workOffsets(),
            List.of(inside.holes().get(0), named(boss, "rim")),
            inside.tools(),
            inside.offsets(),
            "",
            inside.gauges(),
            List.of());
    TapeBuilder tape = new TapeBuilder(new Point(0, 0, 50), Milled.RATES);
    job.writeTo(tape, 0);
    outside.writeTo(tape, 0);
    GaugeAnswer answer =
        ThreadGauging.gauge(
            new GaugeRequest("hub.nc", tape.build(), both, offsets -> Optional.empty()));
    assertThat(answer.threads())
        .extracting(ThreadAnswer::designation)
        .containsExactly("M20x1.5-6H", "M30x1.5-6g");
    assertThat(faults(answer)).isEmpty();
  }

  private static Hole named(Hole hole, String name) {
    return new Hole(
        name,
        hole.boss(),
        hole.x(),
        hole.y(),
        hole.top(),
        hole.diameter(),
        hole.depth(),
        hole.bottomAngle(),
        hole.countersink(),
        hole.thread(),
        hole.threadDepth(),
        hole.line());
  }
}
