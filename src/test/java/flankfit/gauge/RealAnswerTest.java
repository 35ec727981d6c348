package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.motion.ModalState;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.TapeBuilder;
import flankfit.setup.Tool;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Gauges screwed into the path as moved, from the tape on. */
class RealAnswerTest {
  private final Milled job = new Milled();

  private ThreadAnswer answer() {
    GaugeAnswer answer = job.judgedAll();
    assertThat(answer.threads()).hasSize(1);
    return answer.threads().get(0);
  }

  @Test
  void a_true_thread_measures_and_gauges_as_the_endless_helix_does() {
    job.wear = -0.045;
    ThreadAnswer answer = answer();
    RealAnswer real = answer.real().orElseThrow();
    WallMeasures wall = real.measures().orElseThrow();
    Measures endless = answer.finished().orElseThrow();
    assertThat(wall.pitch().mean()).isCloseTo(endless.pitchSimple(), within(1e-4));
    // A straight entry leaves the flanks of the first and last row a little short beside it.
    assertThat(wall.functional().central().diameter())
        .isBetween(endless.functional() - 0.005, endless.functional() + 1e-4);
    assertThat(wall.taper()).isCloseTo(0, within(1e-6));
    assertThat(real.reachesWanted()).isTrue();
    assertThat(real.noGo().turns()).isLessThan(1);
    assertThat(answer.verdict()).isEqualTo(Verdict.GAUGES_GOOD);
    assertThat(answer.noGo().orElseThrow().turns()).isEqualTo(real.noGo().turns());
  }

  @Test
  void rising_half_a_pitch_over_half_a_turn_leaves_the_mark_of_the_table() {
    // Computed by direct maximisation for the M20 x 1.5 with a 14 mm mill: 29 micrometres.
    job.entryRiseShare = 0.5;
    double deep = answer().real().orElseThrow().measures().orElseThrow().deepest().depth();
    assertThat(deep).isCloseTo(0.029, within(0.001));
  }

  @Test
  void a_thread_that_ends_too_early_refuses_the_go_plug_whatever_its_profile() {
    job.wear = -0.045;
    job.rows = 6;
    job.zStart = -8;
    ThreadAnswer answer = answer();
    assertThat(answer.real().orElseThrow().reachesWanted()).isFalse();
    assertThat(answer.real().orElseThrow().go().z()).isBetween(-9.5, -7.0);
    assertThat(answer.go().orElseThrow().enters()).isFalse();
    assertThat(answer.verdict()).isEqualTo(Verdict.GO_REFUSED);
    assertThat(answer.reason()).contains("on the path as moved GO plug stops after");
  }

  @Test
  void a_helix_off_the_axis_of_its_hole_loses_little_until_its_groove_runs_out() {
    // The plug follows the helix; what it loses is where the groove is shallower than its crest.
    job.radii = new double[] {2.7, 3, 3};
    job.wear = -0.04;
    job.threadDepth = 14;
    job.holesAt = List.of(new Point(0, 0, 0));
    double turns = Double.NaN;
    for (double off : new double[] {0, 0.03, 0.05, 0.08, 0.12}) {
      job.axes = List.of(new Point(off, 0, 0));
      RealAnswer real = job.judged().real().orElseThrow();
      assertThat(real.reachesWanted()).as("%s off", off).isTrue();
      turns = Double.isNaN(turns) ? real.go().turns() : turns;
      assertThat(real.go().turns()).as("%s off", off).isCloseTo(turns, within(0.01));
    }
  }

  @Test
  void left_hand_and_mirrored_motion_gauge_alike() {
    job.wear = -0.045;
    RealAnswer right = answer().real().orElseThrow();
    job.thread = "M20x1.5-6H-LH";
    job.anticlockwise = false;
    RealAnswer left = answer().real().orElseThrow();
    assertThat(left.go().turns()).isCloseTo(right.go().turns(), within(0.05));
    assertThat(left.noGo().turns()).isCloseTo(right.noGo().turns(), within(0.05));
    assertThat(left.measures().orElseThrow().pitch().mean())
        .isCloseTo(right.measures().orElseThrow().pitch().mean(), within(1e-5));
  }

  @Test
  void holes_cut_by_the_same_moves_answer_to_the_last_bit_as_each_does_alone() {
    job.wear = -0.045;
    job.entryRiseShare = 0.25;
    List<Point> axes =
        List.of(
            new Point(0, 0, 0),
            new Point(-31.1, 17.3, 0),
            new Point(123.4567, -0.1, 0),
            new Point(1.0 / 3, 250.7, 0));
    job.axes = axes;
    List<ThreadAnswer> together = job.judgedAll().threads();
    assertThat(together).hasSize(4);
    for (int i = 0; i < 4; i++) {
      job.axes = axes.subList(i, i + 1);
      RealAnswer alone = job.judged().real().orElseThrow();
      RealAnswer real = together.get(i).real().orElseThrow();
      assertThat(real.go()).isEqualTo(alone.go());
      assertThat(real.noGo()).isEqualTo(alone.noGo());
      assertThat(real.measures()).isEqualTo(alone.measures());
      assertThat(real.plain()).isEqualTo(alone.plain());
      assertThat(real.depth()).isEqualTo(alone.depth());
      assertThat(real.words()).isEqualTo(alone.words());
      // They share what was read once.
      assertThat(real.wall()).isSameAs(together.get(0).real().orElseThrow().wall());
    }
  }

  @Test
  void a_hole_cut_a_little_otherwise_is_read_for_itself() {
    job.wear = -0.045;
    job.axes = List.of(new Point(0, 0, 0), new Point(40, 0, 0));
    job.holesAt = List.of(new Point(0, 0, 0), new Point(40.000001, 0, 0));
    List<ThreadAnswer> answers = job.judgedAll().threads();
    assertThat(answers.get(1).real().orElseThrow().wall())
        .isNotSameAs(answers.get(0).real().orElseThrow().wall());
    assertThat(answers.get(1).real().orElseThrow().go().turns())
        .isCloseTo(answers.get(0).real().orElseThrow().go().turns(), within(0.01));
  }

  private List<Finding> told(Code code) {
    return job.judgedAll().findings().stream().filter(f -> f.code() == code).toList();
  }

  @Test
  void a_neck_driven_into_the_wall_is_told_from_a_fiftieth_on() {
    // Path radius 3.045: a neck of radius 9.25 - 3.045 + d goes d into the hole of 18.5 mm.
    job.wear = -0.045;
    job.fluteLength = 8;
    job.rows = 5;
    job.neck = Optional.of(new Tool.Section(2 * (9.25 - 3.045 + 0.021), 40));
    List<Finding> findings = told(Code.TH17);
    assertThat(findings).hasSize(1);
    assertThat(findings.get(0).what()).contains("neck", "0.021 mm");
    assertThat(findings.get(0).place().line()).isPositive();
    job.neck = Optional.of(new Tool.Section(2 * (9.25 - 3.045 + 0.019), 40));
    assertThat(told(Code.TH17)).isEmpty();
  }

  @Test
  void a_wall_that_is_too_long_to_read_is_told_and_the_endless_helix_rules() {
    job.wear = -0.045;
    job.zStart = -16.5;
    job.threadDepth = 16;
    job.depth = Optional.of(751.0);
    assertThat(told(Code.GA12)).hasSize(1);
    assertThat(told(Code.GA12).get(0).what()).contains("501 turns");
    assertThat(job.judged().real()).isEmpty();
    assertThat(job.judged().verdict()).isEqualTo(job.endless().verdict());
    job.depth = Optional.of(22.0);
    assertThat(told(Code.GA12)).isEmpty();
  }

  @Test
  void the_depth_plug_reads_the_thread_and_plain_plugs_read_the_hole() {
    job.wear = -0.045;
    job.depth = Optional.of(22.0);
    RealAnswer real = job.judged().real().orElseThrow();
    // The lowest row's middle stands at the tip of the start plus the tooth's height, Z-16.
    assertThat(real.depth().orElseThrow().reads()).isCloseTo(16, within(0.15));
    assertThat(real.plain().orElseThrow().go().clearance())
        .isCloseTo(18.5 - job.endless().spec().gauges().orElseThrow().plainGo(), within(1e-6));
    assertThat(real.plain().orElseThrow().noGoStops()).isTrue();
  }

  @Test
  void what_the_mill_did_far_from_the_hole_before_changes_nothing() {
    job.wear = -0.045;
    RealAnswer alone = job.judged().real().orElseThrow();
    GaugeRequest request = job.request();
    TapeBuilder longer = new TapeBuilder(new Point(0, 0, 50), Milled.RATES);
    ModalState state = request.tape().state(0);
    for (int i = 0; i < 5000; i++) {
      longer.straight(MoveKind.LINE, 100 + i % 2, 0.01 * i, -3, 1, 1, state);
    }
    longer.straight(MoveKind.LINE, 0, 0, 5, 2, 2, state);
    job.writeTo(longer, 0.045);
    GaugeRequest after =
        new GaugeRequest("job.nc", longer.build(), request.setup(), offsets -> Optional.empty());
    RealAnswer real = ThreadGauging.gauge(after).threads().get(0).real().orElseThrow();
    assertThat(real.go().turns()).isCloseTo(alone.go().turns(), within(0.01));
    assertThat(real.measures().orElseThrow().pitch().mean())
        .isCloseTo(alone.measures().orElseThrow().pitch().mean(), within(1e-6));
  }

  @Test
  void it_is_left_out_where_many_are_compared() {
    GaugeAnswer answer = ThreadGauging.gauge(job.request().withoutRealPath());
    assertThat(answer.threads().get(0).real()).isEmpty();
    assertThat(answer.assumptions()).anyMatch(s -> s.contains("incomplete end threads"));
  }
}
