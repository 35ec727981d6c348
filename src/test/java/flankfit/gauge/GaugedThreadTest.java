package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.gauge.Fit.DecidedBy;
import flankfit.gauge.ThreadAnswer.PassAnswer;
import flankfit.gauge.ThreadAnswer.Role;
import flankfit.motion.ModalState.Spindle;
import flankfit.motion.Point;
import flankfit.setup.SetupSheet.GaugeCondition;
import flankfit.setup.Tool.CutterForm;
import flankfit.unit.Angles;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Whole jobs: what is found, measured and judged. */
class GaugedThreadTest {
  private static final double SIXTH = 0.6e-6;

  private final Milled job = new Milled();

  private List<Code> codes(GaugeAnswer answer) {
    return answer.findings().stream()
        .map(Finding::code)
        .filter(code -> code != Code.TH03 && code != Code.TH12 && code != Code.GA05)
        .collect(Collectors.toList());
  }

  @Test
  void a_mill_laid_exactly_for_the_major_diameter_is_refused_by_the_crest_of_go() {
    ThreadAnswer thread = job.judged();
    Measures measured = thread.finished().orElseThrow();
    assertThat(measured.pitchSimple()).isCloseTo(19.064866, within(SIXTH));
    assertThat(measured.major()).isCloseTo(20, within(1e-9));
    assertThat(measured.minor()).isEqualTo(18.5);
    // A full crest that reaches the bottom gains nothing from the over-cut.
    assertThat(measured.functional()).isCloseTo(19.025721, within(SIXTH));
    assertThat(measured.decidedBy()).isEqualTo(DecidedBy.CREST);
    assertThat(thread.verdict()).isEqualTo(Verdict.GO_REFUSED);
    assertThat(thread.reason()).contains("crest");
    assertThat(measured.pitchOverBall().orElseThrow())
        .isCloseTo(measured.pitchSimple(), within(1e-6));
    assertThat(Angles.toDegrees(measured.flankAngleUp())).isCloseTo(29.977, within(0.001));
    assertThat(measured.flankAngleDown()).isEqualTo(measured.flankAngleUp());
    assertThat(codes(job.judgedAll())).isEmpty();
  }

  @Test
  void a_path_a_little_larger_frees_the_crest_and_gauges_good() {
    job.wear = -0.020;
    ThreadAnswer thread = job.judged();
    assertThat(thread.verdict()).isEqualTo(Verdict.GAUGES_GOOD);
    assertThat(thread.go().orElseThrow().enters()).isTrue();
    assertThat(thread.noGo().orElseThrow().turns()).isLessThan(0.5);
    assertThat(thread.plain().orElseThrow().goEnters()).isTrue();
    assertThat(thread.finished().orElseThrow().pitchSimple())
        .isCloseTo(19.064866 + 0.0396, within(1e-4));
  }

  @Test
  void wear_of_the_wrong_sign_is_refused_by_go_and_too_much_lets_no_go_in() {
    job.wear = 0.030;
    assertThat(job.judged().verdict()).isEqualTo(Verdict.GO_REFUSED);
    job.wear = -0.090;
    ThreadAnswer large = job.judged();
    assertThat(large.verdict()).isEqualTo(Verdict.NO_GO_ENTERS);
    assertThat(large.noGo().orElseThrow().turns()).isGreaterThan(2);
  }

  @Test
  void the_minor_diameter_is_that_of_the_hole() {
    job.wear = -0.020;
    job.hole = 18.3;
    assertThat(job.judged().verdict()).isEqualTo(Verdict.MINOR_SMALL);
    job.hole = 18.7;
    assertThat(job.judged().verdict()).isEqualTo(Verdict.MINOR_LARGE);
  }

  @Test
  void hand_is_that_of_sense_and_rise_and_climb_follows_the_spindle() {
    ThreadAnswer right = job.judged();
    assertThat(right.rightHand()).isTrue();
    // common practice, no source: inside, right hand, climb: counter-clockwise and rising.
    assertThat(right.cutting()).isEqualTo("climb");
    job.anticlockwise = false;
    job.rising = false;
    job.zStart = 1;
    ThreadAnswer down = job.judged();
    assertThat(down.rightHand()).isTrue();
    assertThat(down.cutting()).isEqualTo("conventional");
    job.spindle = Spindle.COUNTER_CLOCKWISE;
    assertThat(job.endless().cutting()).isEqualTo("climb");
    assertThat(codes(job.judgedAll())).contains(Code.TH11);
  }

  @Test
  void a_left_hand_helix_is_no_right_hand_thread() {
    job.anticlockwise = false;
    ThreadAnswer thread = job.judged();
    assertThat(thread.rightHand()).isFalse();
    assertThat(thread.verdict()).isEqualTo(Verdict.NOT_A_THREAD);
    assertThat(thread.go()).isEmpty();
    assertThat(codes(job.judgedAll())).containsExactly(Code.TH02);
  }

  @Test
  void left_hand_mirror_measures_the_same() {
    Measures right = job.endless().finished().orElseThrow();
    job.thread = "M20x1.5-6H-LH";
    job.anticlockwise = false;
    ThreadAnswer left = job.judged();
    assertThat(left.rightHand()).isFalse();
    assertThat(left.finished().orElseThrow()).isEqualTo(right);
    assertThat(codes(job.judgedAll())).isEmpty();
  }

  @Test
  void passes_are_told_apart_and_each_has_its_measures() {
    job.radii = new double[] {2.8, 3.02, 3.02};
    ThreadAnswer thread = job.judged();
    assertThat(thread.passes())
        .extracting(PassAnswer::role)
        .containsExactly(Role.ROUGH, Role.FINISH, Role.SPRING);
    assertThat(thread.passes().get(0).after().orElseThrow().major()).isCloseTo(19.6, within(1e-9));
    assertThat(thread.passes().get(2).after()).isEqualTo(thread.passes().get(1).after());
    job.radii = new double[] {3.02};
    assertThat(job.endless().finished()).isEqualTo(thread.finished());
  }

  @Test
  void split_turns_and_hole_patterns_are_found() {
    ThreadAnswer whole = job.judged();
    job.arcs = 4;
    job.axes = List.of(new Point(0, 0, 0), new Point(40, 0, 0), new Point(-17.3, 22.1, 0));
    List<ThreadAnswer> threads = job.judgedAll().threads();
    assertThat(threads)
        .extracting(ThreadAnswer::hole)
        .containsExactly("port 1", "port 2", "port 3");
    for (ThreadAnswer thread : threads) {
      assertThat(thread.finished().orElseThrow().pitchSimple())
          .isCloseTo(whole.finished().orElseThrow().pitchSimple(), within(1e-6));
    }
  }

  @Test
  void a_single_row_cuts_the_same_thread_turn_by_turn() {
    Measures comb = job.endless().finished().orElseThrow();
    job.rows = 1;
    job.turns = 12;
    ThreadAnswer thread = job.judged();
    assertThat(thread.finished().orElseThrow()).isEqualTo(comb);
    assertThat(codes(job.judgedAll())).isEmpty();
    job.turns = 1;
    assertThat(codes(job.judgedAll())).containsExactly(Code.TH09, Code.TH10);
  }

  @Test
  void a_wrong_lead_costs_a_single_row_over_the_length_and_a_comb_over_one_turn() {
    job.wear = -0.02;
    job.lead = 1.55;
    ThreadAnswer comb = job.judged();
    assertThat(codes(job.judgedAll())).containsExactly(Code.TH01, Code.TH13);
    Measures ofComb = comb.finished().orElseThrow();
    assertThat(ofComb.leadError()).isCloseTo(0.05, within(1e-9));
    assertThat(ofComb.leadLoss()).isCloseTo(0.05 / Math.tan(Math.PI / 6), within(1e-9));
    assertThat(comb.verdict()).isEqualTo(Verdict.GO_REFUSED);
    job.rows = 1;
    job.turns = 11;
    job.lead = 1.51;
    Measures single = job.endless().finished().orElseThrow();
    double engaged = 16;
    assertThat(single.leadLoss())
        .isCloseTo(0.01 * engaged / 1.5 / Math.tan(Math.PI / 6), within(0.003));
    job.lead = 1.0;
    assertThat(job.judged().verdict()).isEqualTo(Verdict.NOT_A_THREAD);
  }

  @Test
  void a_lead_shortened_from_0_0556_to_0_055_inch_costs_the_functional_diameter() {
    // common practice, no source: 5/16-18 with a 0.2325 in mill, radial move 0.040 in, 0.0556 a
    // turn.
    job.thread = "5/16-18 UNC-2B";
    job.mill = 25.4 * 0.2325;
    job.radii = new double[] {25.4 * 0.040};
    job.hole = 25.4 * 0.257;
    job.rowPitch = 25.4 / 18;
    job.crest = 25.4 / 18 / 8;
    job.rows = 1;
    job.turns = 7;
    job.zStart = -9;
    job.threadDepth = 8;
    job.lead = 25.4 / 18;
    assertThat(job.lead / 25.4).isCloseTo(0.0556, within(5e-5));
    Measures right = job.endless().finished().orElseThrow();
    assertThat(right.major() / 25.4).isCloseTo(0.3125, within(1e-9));
    double exact = right.functionalFlank();
    job.lead = 25.4 * 0.055;
    Measures shortened = job.endless().finished().orElseThrow();
    assertThat(shortened.leadError()).isCloseTo(-0.0141, within(1e-4));
    assertThat(exact - shortened.functionalFlank()).isBetween(0.12, 0.17);
    assertThat(codes(job.judgedAll())).contains(Code.TH01);
  }

  @Test
  void two_starts_are_one_lead_of_two_pitches() {
    job.thread = "M20xPh3P1.5-6H";
    job.lead = 3;
    job.mill = 12;
    job.radii = new double[] {4};
    ThreadAnswer thread = job.judged();
    assertThat(thread.starts()).isEqualTo(2);
    assertThat(thread.finished().orElseThrow().pitchSimple()).isCloseTo(19.125755, within(SIXTH));
    assertThat(codes(job.judgedAll())).isEmpty();
  }

  @Test
  void an_external_thread_comes_out_small() {
    job.thread = "M20x1.5-6g";
    job.boss = true;
    job.hole = 20;
    job.mill = 20;
    job.crest = 0.375;
    job.radii = new double[] {(20 - 1.25 * Math.sqrt(3) / 2 * 1.5 + 20) / 2};
    job.inwards = total -> total;
    ThreadAnswer thread = job.only();
    assertThat(thread.internal()).isFalse();
    assertThat(thread.finished().orElseThrow().pitchSimple()).isCloseTo(19.0166475, within(6e-8));
    assertThat(thread.cutting()).isEqualTo("conventional");
    assertThat(thread.offset().orElseThrow().sensitivity()).isCloseTo(2, within(0.01));
  }

  @Test
  void an_assumed_ground_form_says_what_a_straight_one_would_have_changed() {
    job.form = new CutterForm.GroundFor("M20x1.5-6H", true);
    assertThat(job.endless().finished().orElseThrow().pitchSimple())
        .isCloseTo(19.0257214, within(1e-7));
    assertThat(job.judgedAll().assumptions()).anyMatch(s -> s.contains("0.0391 mm larger"));
  }

  @Test
  void a_mill_ground_for_another_thread_says_by_how_much_it_is_off() {
    job.form = new CutterForm.GroundFor("M24x1.5-6H", false);
    Measures measured = job.endless().finished().orElseThrow();
    assertThat(measured.pitchSimple()).isGreaterThan(19.0257 + 0.015);
    assertThat(job.judgedAll().assumptions()).anyMatch(s -> s.contains("ground for M24x1.5-6H"));
  }

  @Test
  void a_pass_beside_the_finishing_one_widens_the_groove() {
    double alone = job.endless().finished().orElseThrow().pitchSimple();
    job.radii = new double[] {3, 3};
    assertThat(codes(job.judgedAll())).isEmpty();
    job.stepZ = 0.04;
    assertThat(codes(job.judgedAll())).containsExactly(Code.TH14);
    double widened = job.endless().finished().orElseThrow().pitchSimple();
    assertThat(widened - alone).isCloseTo(0.04 / Math.tan(Math.PI / 6), within(1e-4));
  }

  @Test
  void a_single_row_on_two_starts_must_cut_both() {
    job.thread = "M20xPh3P1.5-6H";
    job.lead = 3;
    job.mill = 12;
    job.rows = 1;
    job.turns = 7;
    job.radii = new double[] {4};
    job.zStart = -18;
    assertThat(codes(job.judgedAll())).containsExactly(Code.TH10);
    double one = job.endless().finished().orElseThrow().pitchSimple();
    job.radii = new double[] {4, 4};
    job.stepZ = 1.5;
    assertThat(codes(job.judgedAll())).isEmpty();
    assertThat(job.endless().finished().orElseThrow().pitchSimple()).isCloseTo(one, within(1e-9));
  }

  @Test
  void worn_plugs_are_smaller_and_shift_the_verdict() {
    double asNew = job.judged().go().orElseThrow().pitch();
    double noGoAsNew = job.judged().noGo().orElseThrow().pitch();
    job.condition = GaugeCondition.WORN;
    ThreadAnswer worn = job.judged();
    // From memory of ISO 1502: W_GO 17.5 beyond Z_PL 12, W_NG 11.5 micrometres for this tolerance.
    assertThat(asNew - worn.go().orElseThrow().pitch()).isCloseTo(0.0175, within(1e-9));
    assertThat(worn.noGo().orElseThrow().pitch()).isLessThan(noGoAsNew);
    assertThat(worn.verdict()).isEqualTo(Verdict.GO_REFUSED);
    assertThat(job.judgedAll().assumptions()).anyMatch(s -> s.contains("worn to their limit"));
    job.condition = GaugeCondition.MIDDLE;
    assertThat(asNew - job.judged().go().orElseThrow().pitch()).isCloseTo(0.00875, within(1e-9));
  }
}
