package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.gauge.PassCut.Push;
import flankfit.gauge.ThreadAnswer.PassAnswer;
import flankfit.setup.Tool;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What bending makes of whole jobs. */
class BendingTest {
  private static final double INCH = 25.4;

  private final Milled job = new Milled();

  @BeforeEach
  void mill_with_neck_and_shank() {
    job.neck = Optional.of(new Tool.Section(11, 25));
    job.shank = Optional.of(new Tool.Section(14, 15));
    job.wear = -0.03;
  }

  private static Push push(PassAnswer pass) {
    return pass.cut().orElseThrow().push().orElseThrow();
  }

  private static double pitch(PassAnswer pass) {
    return pass.after().orElseThrow().pitch();
  }

  @Test
  void without_a_material_the_mill_is_stiff_and_that_is_said() {
    ThreadAnswer thread = job.judged();
    assertThat(thread.bending()).isEmpty();
    assertThat(thread.passes().get(0).cut().orElseThrow().push()).isEmpty();
    assertThat(job.judgedAll().assumptions())
        .anyMatch(s -> s.contains("stiff") && s.contains("no material"));
  }

  @Test
  void without_neck_and_shank_no_overhang_is_known() {
    job.metal = "steel C45";
    job.neck = Optional.empty();
    job.shank = Optional.empty();
    assertThat(job.endless().bending()).isEmpty();
    assertThat(job.judgedAll().assumptions()).anyMatch(s -> s.contains("neither neck nor shank"));
  }

  @Test
  void an_unknown_material_names_the_nearest_and_leaves_the_mill_stiff() {
    double stiff = job.endless().finished().orElseThrow().pitchSimple();
    job.metal = "steel C54";
    GaugeAnswer answer = job.judgedAll();
    Finding unknown =
        answer.findings().stream().filter(f -> f.code() == Code.GA09).findFirst().orElseThrow();
    assertThat(unknown.what()).contains("steel C54");
    assertThat(unknown.fix()).contains("\"steel C45\"");
    assertThat(answer.threads().get(0).finished().orElseThrow().pitchSimple()).isEqualTo(stiff);
  }

  @Test
  void feeds_of_centre_and_edge_chip_and_time_are_told_without_a_material() {
    PassCut cut = job.endless().passes().get(0).cut().orElseThrow();
    double path = 3.03;
    assertThat(cut.feedCentre()).isEqualTo(180);
    assertThat(cut.feedEdge()).isCloseTo(180 * (path + 7) / path, within(1e-9));
    assertThat(cut.toothLoad().orElseThrow()).isCloseTo(180.0 / 3200 / 4, within(1e-12));
    double length = Math.hypot(2 * Math.PI * path, 1.5);
    assertThat(cut.seconds()).isCloseTo(length / 180 * 60, within(1e-6));
    assertThat(cut.engagement()).isCloseTo(0.86, within(0.05));
  }

  @Test
  void climb_comes_out_small_by_what_a_spring_pass_brings_back() {
    job.metal = "steel C45";
    ThreadAnswer once = job.judged();
    BendingAnswer bending = once.bending().orElseThrow();
    double left = bending.rigidPitch() - once.finished().orElseThrow().pitchSimple();
    assertThat(left).isBetween(0.004, 0.15);
    assertThat(bending.springGain()).isBetween(0.75 * left, left);
    assertThat(push(once.passes().get(0)).away()).isPositive();
    assertThat(bending.rigidVerdict()).isEqualTo(once.verdict());
    assertThat(once.reason()).doesNotContain("bending");
    job.radii = new double[] {3, 3};
    ThreadAnswer twice = job.judged();
    assertThat(pitch(twice.passes().get(0))).isCloseTo(pitch(once.passes().get(0)), within(1e-9));
    assertThat(pitch(twice.passes().get(1)) - pitch(twice.passes().get(0)))
        .isCloseTo(bending.springGain(), within(1e-4));
  }

  @Test
  void where_bending_turns_the_verdict_the_reason_says_so() {
    job.metal = "steel C45";
    job.wear = -0.008;
    job.shank = Optional.of(new Tool.Section(14, 45));
    ThreadAnswer thread = job.judged();
    assertThat(thread.verdict()).isEqualTo(Verdict.GO_REFUSED);
    assertThat(thread.bending().orElseThrow().rigidVerdict()).isEqualTo(Verdict.GAUGES_GOOD);
    assertThat(thread.reason()).contains("of a stiff mill it would be: gauges good");
  }

  @Test
  void conventional_can_come_out_large_and_no_spring_pass_brings_it_back() {
    job.metal = "steel C45";
    job.anticlockwise = false;
    job.rising = false;
    job.zStart = -15;
    ThreadAnswer thread = job.judged();
    BendingAnswer bending = thread.bending().orElseThrow();
    assertThat(thread.cutting()).isEqualTo("conventional");
    assertThat(push(thread.passes().get(0)).away()).isNegative();
    assertThat(thread.finished().orElseThrow().pitchSimple()).isGreaterThan(bending.rigidPitch());
    assertThat(bending.springGain()).isCloseTo(0, within(1e-6));
  }

  @Test
  void a_comb_is_tight_at_the_bottom_and_go_feels_the_tightest_row() {
    job.metal = "steel C45";
    ThreadAnswer thread = job.judged();
    BendingAnswer bending = thread.bending().orElseThrow();
    assertThat(push(thread.passes().get(0)).taper()).isPositive();
    assertThat(bending.pitchTight()).isLessThan(thread.finished().orElseThrow().pitchSimple());
    assertThat(bending.pitchLoose()).isGreaterThan(thread.finished().orElseThrow().pitchSimple());
    assertThat(thread.finished().orElseThrow().functionalFlank())
        .isLessThanOrEqualTo(bending.pitchTight());
    job.rows = 1;
    job.turns = 12;
    BendingAnswer single = job.endless().bending().orElseThrow();
    assertThat(single.pitchTight()).isEqualTo(single.pitchLoose());
  }

  @Test
  void a_stiffer_holder_bends_less_and_a_weaker_tool_more() {
    job.metal = "steel C45";
    double usual = push(job.endless().passes().get(0)).deflection();
    job.holderCompliance = Optional.of(0.0);
    double stiff = push(job.endless().passes().get(0)).deflection();
    assertThat(stiff).isBetween(0.3 * usual, 0.7 * usual);
    job.shank = Optional.of(new Tool.Section(14, 45));
    assertThat(push(job.endless().passes().get(0)).deflection()).isGreaterThan(1.5 * stiff);
  }

  @Test
  void advice_with_bending_gives_the_middle_when_keyed_in() {
    job.metal = "steel C45";
    OffsetAdvice advice = job.only().offset().orElseThrow();
    job.wear = advice.toMiddle();
    ThreadAnswer mended = job.only();
    assertThat(mended.verdict()).isEqualTo(Verdict.GAUGES_GOOD);
    double middle = (mended.limits().pitchMin() + mended.limits().pitchMax()) / 2;
    assertThat(mended.finished().orElseThrow().pitchSimple()).isCloseTo(middle, within(0.006));
  }

  @Test
  void a_spring_pass_on_a_small_inch_thread_moves_tenths_of_a_thousandth() {
    // common practice, no source: 5/16-18 in aluminium, rough 0.004 in under size on the radius,
    // then finish and spring at size.
    job.thread = "5/16-18 UNC-2B";
    job.metal = "aluminium, wrought";
    job.mill = INCH * 0.2325;
    job.radii = new double[] {INCH * 0.036, INCH * 0.040, INCH * 0.040};
    job.hole = INCH * 0.257;
    job.rowPitch = INCH / 18;
    job.crest = INCH / 18 / 8;
    job.rows = 1;
    job.turns = 7;
    job.zStart = -9;
    job.threadDepth = 8;
    job.lead = INCH / 18;
    job.fluteLength = 3;
    job.neck = Optional.of(new Tool.Section(4, 16));
    job.shank = Optional.of(new Tool.Section(6.35, 8));
    job.feed = 120;
    job.rpm = 4000;
    job.wear = 0;
    ThreadAnswer thread = job.judged();
    List<PassAnswer> passes = thread.passes();
    double gain = (pitch(passes.get(2)) - pitch(passes.get(1))) / INCH;
    assertThat(gain).isBetween(0.00001, 0.0009);
    assertThat(Math.abs(thread.bending().orElseThrow().springGainPractice()) / INCH)
        .isLessThan(0.0005);
    assertThat(pitch(passes.get(1)) - pitch(passes.get(0))).isGreaterThan(0.15);
  }

  @Test
  void a_mill_as_thin_as_a_wire_gets_an_answer_too() {
    job.metal = "steel, hardened";
    job.radii = new double[] {2.8, 3, 3};
    for (double neck : new double[] {0.3, 1, 3}) {
      job.neck = Optional.of(new Tool.Section(neck, 60));
      for (boolean anticlockwise : new boolean[] {true, false}) {
        job.anticlockwise = anticlockwise;
        job.rising = anticlockwise;
        job.zStart = anticlockwise ? -16.5 : -15;
        // As moved, once for each sense: a wall takes longer than all the rest.
        GaugeAnswer answer =
            neck == 1 ? job.judgedAll() : ThreadGauging.gauge(job.request().withoutRealPath());
        ThreadAnswer thread = answer.threads().get(0);
        assertThat(thread.bending().isPresent())
            .isNotEqualTo(answer.assumptions().stream().anyMatch(s -> s.contains("no balance")));
        boolean told =
            thread.real().isPresent()
                || answer.findings().stream().anyMatch(f -> f.code() == Code.GA12)
                || thread.verdict() == Verdict.NOT_A_THREAD;
        assertThat(told).isEqualTo(neck == 1);
      }
    }
  }

  @Test
  void a_feed_meant_for_the_edge_is_told_and_a_usual_one_is_not() {
    job.feed = 1100;
    assertThat(job.judgedAll().findings()).extracting(Finding::code).contains(Code.TH16);
    job.feed = 340;
    assertThat(job.judgedAll().findings()).extracting(Finding::code).doesNotContain(Code.TH16);
  }

  @Test
  void a_boss_is_bent_away_and_comes_out_large() {
    job.thread = "M20x1.5-6g";
    job.boss = true;
    job.hole = 20;
    job.mill = 20;
    job.crest = 0.375;
    job.radii = new double[] {(20 - 1.25 * Math.sqrt(3) / 2 * 1.5 + 20) / 2};
    job.inwards = total -> total;
    job.wear = 0;
    job.anticlockwise = false;
    job.rising = false;
    job.zStart = -15;
    job.metal = "steel C45";
    job.neck = Optional.of(new Tool.Section(16, 25));
    job.shank = Optional.of(new Tool.Section(20, 15));
    ThreadAnswer thread = job.judged();
    assertThat(thread.cutting()).isEqualTo("climb");
    assertThat(thread.finished().orElseThrow().pitchSimple())
        .isGreaterThan(thread.bending().orElseThrow().rigidPitch());
  }
}
