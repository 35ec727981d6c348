package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.gauge.Fit.DecidedBy;
import flankfit.motion.ModalState.Spindle;
import flankfit.standard.ThreadSpec;
import flankfit.unit.Angles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What straight-V mills are known to do on whole jobs. Derived twice, from the involute helicoid
 * and by direct maximisation over the path; not published.
 */
class KnownBehaviourTest {
  private static final double COT = 1 / Math.tan(Math.PI / 6);

  private static Milled job(String thread, double mill, double beyond) {
    ThreadSpec spec = TurnedWall.spec(thread);
    Milled job = new Milled();
    job.thread = thread;
    job.hole = spec.basicMinor() + 0.02;
    job.mill = mill;
    job.crest = spec.pitch() / 8;
    job.rowPitch = spec.pitch();
    job.rows = 10;
    job.lead = spec.lead();
    job.radii = new double[] {(spec.nominal() - mill) / 2 + beyond};
    job.zStart = -9 * spec.pitch() - 0.5;
    job.threadDepth = 7 * spec.pitch();
    return job;
  }

  private static Measures measured(String thread, double mill, double beyond) {
    return job(thread, mill, beyond).endless().finished().orElseThrow();
  }

  /** "a GO plug whose full crest reaches the bottom gains nothing from the over-cut". */
  @ParameterizedTest(name = "{0}, mill {1}")
  @CsvSource({"M6x1-6H, 4", "M10x1.5-6H, 7.5", "M16x2-6H, 12", "M20x2.5-6H, 16", "M30x3.5-6H, 25"})
  void a_crest_that_reaches_the_bottom_gains_nothing_and_play_gives_it_back(
      String thread, double mill) {
    ThreadSpec spec = TurnedWall.spec(thread);
    // The plug's crest stands a little beyond the basic major diameter: lay the bottom there.
    double crest = Mate.of(spec).crestRadius() - spec.nominal() / 2;
    Measures at = measured(thread, mill, crest);
    double over = at.functionalFlank() - spec.basicPitch() - 2 * crest;
    assertThat(at.functional()).isCloseTo(spec.basicPitch() + 2 * crest, within(1e-6));
    assertThat(at.decidedBy()).isEqualTo(DecidedBy.CREST);
    assertThat(over).isGreaterThan(0.04);
    double back = 0;
    for (double play : new double[] {0.0005, 0.002, 0.01, 0.05}) {
      Measures loose = measured(thread, mill, crest + play);
      // What the path itself adds on the flanks is no gift of the crest.
      double all = loose.functionalFlank() - (spec.basicPitch() + 2 * crest + 2 * play);
      double given = (loose.functional() - spec.basicPitch() - 2 * crest - 2 * play) / all;
      assertThat(given).isGreaterThan(back);
      back = given;
    }
    assertThat(back).isGreaterThan(0.8);
  }

  @Test
  void two_micrometres_give_back_about_a_quarter_and_fifty_nearly_all_on_m20_by_2_5() {
    ThreadSpec spec = TurnedWall.spec("M20x2.5-6H");
    double crest = Mate.of(spec).crestRadius() - 10;
    double none = measured("M20x2.5-6H", 16, crest).functional();
    double all = measured("M20x2.5-6H", 16, crest).functionalFlank() - none;
    // The path gives twice its own change to both; take that off.
    double two = measured("M20x2.5-6H", 16, crest + 0.002).functional() - none - 2 * 0.002;
    double fifty = measured("M20x2.5-6H", 16, crest + 0.050).functional() - none - 2 * 0.050;
    assertThat(two / all).isBetween(0.18, 0.32);
    assertThat(fifty / all).isBetween(0.9, 1.0);
  }

  /** tan α_loc = tan α sqrt(1 - (r_b/ρ)²), whatever the mill. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "M6x1-6H, 4, 3",
    "M8x1.25-6H, 6, 4",
    "M16x2-6H, 12, 8",
    "M20x1.5-6H, 14, 9",
    "M20x2.5-6H, 16, 10",
    "M36x4-6H, 25, 18",
    "1/2-13 UNC-2B, 9.525, 6"
  })
  void flank_angle_is_a_little_below_the_mills_whatever_its_diameter(
      String thread, double large, double small) {
    ThreadSpec spec = TurnedWall.spec(thread);
    double base = spec.lead() / (2 * Math.PI) * COT;
    double ratio = base / (spec.basicPitch() / 2);
    double local = Math.atan(Math.sqrt(1 - ratio * ratio) / COT);
    double one = measured(thread, large, 0).flankAngleUp();
    double other = measured(thread, small, 0).flankAngleUp();
    assertThat(one).isLessThan(Angles.toRadians(30)).isGreaterThan(Angles.toRadians(29.8));
    // Least squares over the middle of the flank, the formula at the pitch line.
    assertThat(Angles.toDegrees(one)).isCloseTo(Angles.toDegrees(local), within(0.006));
    assertThat(Angles.toDegrees(other)).isCloseTo(Angles.toDegrees(one), within(0.006));
  }

  @ParameterizedTest(name = "{0}, mill {1}")
  @CsvSource({
    "M6x1-6H, 4", "M8x1.25-6H, 6", "M10x1.5-6H, 7.5", "M12x1.75-6H, 9", "M16x2-6H, 12",
    "M20x2.5-6H, 14", "M20x2.5-6H, 16", "M30x3.5-6H, 25", "M36x4-6H, 25", "1/2-13 UNC-2B, 9.525"
  })
  void flanks_alone_stand_one_to_six_micrometres_under_the_simple_pitch_diameter(
      String thread, double mill) {
    Measures measured = measured(thread, mill, 0.02);
    assertThat(measured.pitchSimple() - measured.functionalFlank()).isBetween(0.001, 0.006);
  }

  /** sqrt(1 - (r_b/e)²) / sqrt(1 - (r_b/ρ)²), twice: the advice tells it from the motion itself. */
  @ParameterizedTest(name = "{0}, mill {1}")
  @CsvSource({
    "M6x1-6H, 4, 1.93262", "M8x1.25-6H, 6, 1.88600", "M10x1.5-6H, 7.5, 1.89520",
    "M12x1.75-6H, 9, 1.90110", "M16x2-6H, 12, 1.92786", "M20x1.5-6H, 14, 1.98278",
    "M20x2.5-6H, 16, 1.88270", "M24x1.5-6H, 16, 1.99056", "M30x3.5-6H, 25, 1.84944"
  })
  void pitch_diameter_follows_the_radius_by_less_than_two(
      String thread, double mill, double expected) {
    double told = job(thread, mill, 0).endless().offset().orElseThrow().sensitivity();
    double step = 1e-4;
    double measured =
        (measured(thread, mill, step).pitchSimple() - measured(thread, mill, -step).pitchSimple())
            / (2 * step);
    assertThat(measured).isCloseTo(expected, within(2e-5)).isBetween(1.78, 1.995);
    // The register of this job moves the path inwards.
    assertThat(Math.abs(told)).isCloseTo(expected, within(2e-3));
  }

  @Test
  void hand_climb_rows_and_roughing_leave_an_error_free_rigid_thread_as_it_is() {
    Measures usual = measured("M20x2.5-6H", 16, 0.03);
    Milled left = job("M20x2.5-6H-LH", 16, 0.03);
    left.anticlockwise = false;
    Milled conventional = job("M20x2.5-6H", 16, 0.03);
    conventional.anticlockwise = false;
    conventional.rising = false;
    conventional.zStart += 2.5;
    Milled otherWay = job("M20x2.5-6H", 16, 0.03);
    otherWay.spindle = Spindle.COUNTER_CLOCKWISE;
    Milled oneRow = job("M20x2.5-6H", 16, 0.03);
    oneRow.rows = 1;
    oneRow.turns = 10;
    Milled roughed = job("M20x2.5-6H", 16, 0.03);
    double finish = roughed.radii[0];
    roughed.radii = new double[] {finish - 0.6, finish - 0.2, finish, finish};
    assertThat(job("M20x2.5-6H", 16, 0.03).endless().cutting()).isEqualTo("climb");
    assertThat(conventional.endless().cutting()).isEqualTo("conventional");
    for (Milled job : new Milled[] {left, conventional, otherWay, oneRow, roughed}) {
      Measures other = job.endless().finished().orElseThrow();
      assertThat(other.pitchSimple()).isCloseTo(usual.pitchSimple(), within(1e-9));
      assertThat(other.functional()).isCloseTo(usual.functional(), within(1e-9));
      assertThat(other.functionalFlank()).isCloseTo(usual.functionalFlank(), within(1e-9));
      assertThat(other.flankAngleUp()).isCloseTo(usual.flankAngleUp(), within(1e-9));
      assertThat(other.major()).isCloseTo(usual.major(), within(1e-9));
    }
  }

  /** Cutter diameter to nothing: the groove tends to the cutter's own V, in proportion. */
  @Test
  void a_mill_of_hardly_any_diameter_leaves_its_own_v() {
    double before = Double.POSITIVE_INFINITY;
    for (double mill : new double[] {10, 5, 2.5}) {
      Measures measured = measured("M64x1.5-6H", mill, 0);
      double over = measured.pitchSimple() - (64 - 0.75 * Math.sqrt(3) / 2 * 1.5);
      assertThat(over).isPositive().isLessThan(0.5 * before);
      assertThat(30 - Angles.toDegrees(measured.flankAngleUp())).isBetween(0.0, 0.01);
      before = over;
    }
    // 0.0760 P² r_p / (e ρ_p), second order, e 30.75 and r_p 1.25 - 3/16 P cot 30°.
    double second = 0.0760 * 2.25 * (1.25 - 3 * 1.5 / 16 * COT) / (30.75 * 31.5);
    assertThat(before).isCloseTo(second, within(0.01 * second));
  }

  private static double central(Milled job) {
    return job.judged().real().orElseThrow().measures().orElseThrow().flanks().central().diameter();
  }

  private static Milled m20(int rows, double turns, double lead, double length) {
    Milled job = new Milled();
    job.wear = -0.05;
    job.rows = rows;
    job.turns = turns;
    job.lead = lead;
    job.threadDepth = length;
    job.zStart = -length - 1.5;
    return job;
  }

  /** "pitch: ΔD2 = cot α |δP_E|": derived from the virtual diameter; 60°: 1.732. */
  @Test
  void a_wrong_lead_costs_a_comb_one_turn_of_it_at_any_length_and_a_single_row_the_whole() {
    double error = 0.006;
    double perTurn = error * COT;
    double shortComb = central(m20(8, 1, 1.5, 9)) - central(m20(8, 1, 1.5 + error, 9));
    double longComb = central(m20(18, 1, 1.5, 24)) - central(m20(18, 1, 1.5 + error, 24));
    assertThat(shortComb).isCloseTo(perTurn, within(0.15 * perTurn));
    assertThat(longComb).isCloseTo(shortComb, within(0.05 * perTurn));
    double few = central(m20(1, 8, 1.5, 9)) - central(m20(1, 8, 1.5 + error, 9));
    double many = central(m20(1, 18, 1.5, 24)) - central(m20(1, 18, 1.5 + error, 24));
    assertThat(many - few).isCloseTo(10 * perTurn, within(0.4 * perTurn));
    assertThat(few).isBetween(5 * perTurn, 8 * perTurn);
  }
}
