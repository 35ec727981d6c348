package flankfit.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** The grid against the closed form for normal sizes, drifts and readings: Kalman's filter. */
class DriftGridTest {
  private static final double LOW = -3;
  private static final double STEP = 0.01;
  private static final double READING = 0.15;
  private static final double[] READINGS = {0.42, 0.31, 0.33, 0.05, 0.02, -0.2, -0.18, -0.4};

  private static DriftGrid grid() {
    double[] prior = new double[601];
    for (int i = 0; i < prior.length; i++) {
      prior[i] = normal(LOW + i * STEP, 0.5);
    }
    double[] rates = new double[101];
    double[] weights = new double[101];
    for (int i = 0; i < rates.length; i++) {
      rates[i] = -0.5 + 0.01 * i;
      weights[i] = normal(rates[i], 0.1);
    }
    return new DriftGrid(LOW, STEP, prior, rates, weights);
  }

  private static double normal(double x, double deviation) {
    return Math.exp(-0.5 * (x / deviation) * (x / deviation)) / deviation;
  }

  private static DoubleUnaryOperator reading(double y) {
    return size -> normal(size - y, READING);
  }

  /** Kalman's filter for size and drift; wandering before each part but the first. */
  private static double[] kalman(double wander) {
    double s = 0;
    double v = 0;
    double pss = 0.25;
    double psv = 0;
    double pvv = 0.01;
    for (int n = 0; n < READINGS.length; n++) {
      if (n > 0) {
        s += v;
        pss += 2 * psv + pvv + wander * wander;
        psv += pvv;
      }
      double all = pss + READING * READING;
      double off = READINGS[n] - s;
      double gainS = pss / all;
      double gainV = psv / all;
      s += gainS * off;
      v += gainV * off;
      pvv -= gainV * psv;
      psv -= gainS * psv;
      pss -= gainS * pss;
    }
    return new double[] {s, Math.sqrt(pss), v, Math.sqrt(pvv)};
  }

  @Test
  void it_agrees_with_the_closed_form() {
    for (double wander : new double[] {0, 0.05}) {
      DriftGrid grid = grid();
      for (int n = 0; n < READINGS.length; n++) {
        if (n > 0) {
          grid.wander(wander);
        }
        assertThat(grid.learn(reading(READINGS[n]), n)).isPositive();
      }
      double[] wanted = kalman(wander);
      double[] sizes = grid.sizes(READINGS.length - 1);
      double mean = 0;
      double square = 0;
      for (int i = 0; i < sizes.length; i++) {
        mean += sizes[i] * (LOW + i * STEP);
      }
      for (int i = 0; i < sizes.length; i++) {
        double off = LOW + i * STEP - mean;
        square += sizes[i] * off * off;
      }
      assertThat(mean).isCloseTo(wanted[0], within(5e-4));
      assertThat(Math.sqrt(square)).isCloseTo(wanted[1], within(5e-4));
      assertThat(grid.meanDrift()).isCloseTo(wanted[2], within(3e-4));
      assertThat(grid.driftDeviation()).isCloseTo(wanted[3], within(3e-4));
    }
  }

  @Test
  void what_cannot_be_changes_nothing() {
    DriftGrid grid = grid();
    double[] before = grid.sizes(0);
    assertThat(grid.learn(size -> 0, 0)).isZero();
    assertThat(grid.sizes(0)).isEqualTo(before);
  }

  @Test
  void steps_of_chance_keep_the_sum_and_add_their_variance() {
    double[] row = new double[201];
    row[100] = 1;
    double[] blurred = DriftGrid.blurred(row, 3);
    double sum = 0;
    double square = 0;
    for (int i = 0; i < row.length; i++) {
      sum += blurred[i];
      square += blurred[i] * (i - 100) * (i - 100);
    }
    assertThat(sum).isCloseTo(1, within(1e-12));
    assertThat(square).isCloseTo(9, within(0.02));
    assertThat(DriftGrid.smoothed(row, 3)).containsExactly(blurred, within(1e-15));
    double[] ones = new double[50];
    java.util.Arrays.fill(ones, 1);
    for (double value : DriftGrid.smoothed(ones, 4)) {
      assertThat(value).isCloseTo(1, within(1e-12));
    }
  }
}
