package flankfit.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.standard.ThreadSpec;
import flankfit.sweep.HelicalGroove;
import flankfit.sweep.PolylineTooth;
import flankfit.sweep.RegularThread;
import flankfit.unit.Angles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Whole jobs against tables of worked figures: computed apart from closed forms, not published,
 * unless a title stands beside them.
 */
class GaugingFiguresCheckTest {
  private static final double SIXTY = Math.PI / 6;

  private static Measures milled(String thread, double mill) {
    ThreadSpec spec = TurnedWall.spec(thread);
    Milled job = new Milled();
    job.thread = thread;
    job.hole = spec.basicMinor();
    job.mill = mill;
    job.crest = spec.pitch() / 8;
    job.rowPitch = spec.pitch();
    job.rows = 8;
    job.lead = spec.lead();
    job.radii = new double[] {(spec.nominal() - mill) / 2};
    job.zStart = -7 * spec.pitch() - 0.5;
    job.threadDepth = 5 * spec.pitch();
    return job.endless().finished().orElseThrow();
  }

  private static double over(String thread, double mill) {
    return 1000 * (milled(thread, mill).pitchSimple() - TurnedWall.spec(thread).basicPitch());
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "overcut-tolerance.csv", numLinesToSkip = 4)
  void overcut_stands_to_the_tolerance_as_computed(ArgumentsAccessor row) {
    String thread = row.getString(0);
    ThreadSpec spec = TurnedWall.spec(thread);
    double tolerance = 1000 * (spec.limits().pitchMax() - spec.limits().pitchMin());
    assertThat(tolerance).isCloseTo(row.getDouble(1), within(1e-6));
    double[] shares = {0.5, 0.6, 0.7, 0.75, 0.8, 0.85};
    for (int i = 0; i < shares.length; i++) {
      double told = over(thread, shares[i] * spec.nominal());
      assertThat(told).as("mill %s", shares[i]).isCloseTo(row.getDouble(2 + i), within(0.51));
    }
    double[] parts = {0.25, 0.5, 1};
    for (int i = 0; i < parts.length; i++) {
      double mill = row.getDouble(8 + i);
      // Two decimals of the mill: its over-cut may be off by as much as that moves it.
      double slack = over(thread, mill + 0.0051) - over(thread, mill - 0.0051);
      assertThat(over(thread, mill)).isCloseTo(parts[i] * tolerance, within(slack / 2 + 1e-3));
    }
  }

  /** Functional less simple: 2 (δ(D1/2) - δ(D2/2)). */
  @ParameterizedTest(name = "{0}, mill {1}")
  @CsvSource({"M20x2.5-6H, 16, -3.8", "M20x1.5-6H, 14, -0.7"})
  void functional_stands_under_simple_as_computed(String thread, double mill, double difference) {
    Measures measured = milled(thread, mill);
    double told = 1000 * (measured.functionalFlank() - measured.pitchSimple());
    assertThat(told).isCloseTo(difference, within(0.051));
  }

  /** "On a thread-milled flank the ball reading over-states D2 as the true over-cut does". */
  @ParameterizedTest(name = "{0}, mill {1}")
  @CsvSource({"M20x1.5-6H, 14, 39", "M20x2.5-6H, 16, 189"})
  void two_balls_overstate_by_the_over_cut(String thread, double mill, double over) {
    double read = milled(thread, mill).pitchOverBall().orElseThrow();
    assertThat(1000 * (read - TurnedWall.spec(thread).basicPitch())).isCloseTo(over, within(0.51));
  }

  @ParameterizedTest(name = "D2 {0}, P {1}")
  @CsvSource({
    "19.025721, 1.5, 0.866025, 18.592709, 19.458734",
    "18.376202, 2.5, 1.443376, 17.654515, 19.097890",
    "14.700962, 2.0, 1.154701, 14.123612, 15.278312"
  })
  void two_balls_stand_where_computed(
      double diameter, double pitch, double ball, double centres, double over) {
    double best = BallReading.bestSize(pitch, SIXTY);
    assertThat(best).isCloseTo(ball, within(1e-6));
    double told = BallReading.betweenCentres(diameter, best, pitch, SIXTY);
    assertThat(told).isCloseTo(centres, within(1.5e-6));
    assertThat(told + best).isCloseTo(over, within(1.5e-6));
  }

  @Test
  void a_reading_of_1_670_in_means_0_0026_in_too_large() {
    // F. D. Jones, Turning and Boring: 1 1/2 in, 6 threads, wires 0.140 in read 1.6674 in.
    double pitchDiameter = 1.5 - 0.649519 / 6;
    double right = BallReading.overWires(pitchDiameter, 0.140, 1.0 / 6, SIXTY);
    double large = BallReading.overWires(pitchDiameter + 0.0026, 0.140, 1.0 / 6, SIXTY);
    assertThat(large).isCloseTo(1.670, within(0.5e-4));
    assertThat(large - right).isCloseTo(0.0026, within(1e-12));
  }

  /**
   * "Almost twice" the pitch error for the Whitworth form: a university's course in metrology,
   * 1.92; cot 27.5°. For 60° 1.732, for 30° trapezoidal 3.732.
   */
  @ParameterizedTest(name = "half angle {0}")
  @CsvSource({"27.5, 1.92098", "30, 1.73205", "15, 3.73205"})
  void a_pitch_error_costs_the_cotangent(double degrees, double factor) {
    double angle = Angles.toRadians(degrees);
    Mate plug = new Mate(true, 2, angle, 20, 20.6, 19.2, 20.5);
    HelicalGroove groove = new HelicalGroove(PolylineTooth.straight(6, 0.3, angle), true, 4.6, 2);
    RegularThread thread = new RegularThread(groove, 2, 9.4);
    double lost = Fit.of(thread, plug, 0).flanks() - Fit.of(thread, plug, 0.010).flanks();
    assertThat(lost).isCloseTo(0.010 * factor, within(1e-7));
  }
}
