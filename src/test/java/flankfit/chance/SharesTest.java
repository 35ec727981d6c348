package flankfit.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Sobol's indices against closed forms. */
class SharesTest {
  private static final int POINTS = 1 << 14;

  @Test
  void of_a_sum_of_normal_inputs_the_shares_are_their_variances() {
    double[] factors = {3, -2, 1, 0};
    Spread[] spreads = {
      new Spread.Normal(1), new Spread.Normal(0.5), new Spread.Normal(2), new Spread.Normal(1)
    };
    List<Shares.Share> shares =
        Shares.of(
            point -> {
              double sum = 5;
              for (int i = 0; i < factors.length; i++) {
                sum += factors[i] * spreads[i].quantile(point[i]);
              }
              return sum;
            },
            factors.length,
            POINTS,
            1);
    // Var = 9 + 1 + 4 + 0, by the rule for sums of independent quantities.
    double[] wanted = {9.0 / 14, 1.0 / 14, 4.0 / 14, 0};
    for (int i = 0; i < wanted.length; i++) {
      assertThat(shares.get(i).first()).as("first %d", i).isCloseTo(wanted[i], within(0.005));
      assertThat(shares.get(i).total()).as("total %d", i).isCloseTo(wanted[i], within(0.005));
    }
  }

  /**
   * Ishigami's function with a = 7, b = 0.1: the usual test of such estimators, its indices in
   * closed form (T. Ishigami, T. Homma 1990; A. Saltelli et al., Global Sensitivity Analysis, 2008;
   * the forms from memory, each computed below from its variances).
   */
  @Test
  void of_the_function_of_ishigami_they_are_those_published() {
    double a = 7;
    double b = 0.1;
    double pi4 = Math.pow(Math.PI, 4);
    double v1 = 0.5 * Math.pow(1 + b * pi4 / 5, 2);
    double v2 = a * a / 8;
    double v13 = b * b * pi4 * pi4 * (1.0 / 18 - 1.0 / 50);
    double all = v1 + v2 + v13;
    assertThat(v1 / all).isCloseTo(0.3139, within(5e-5));
    assertThat(v2 / all).isCloseTo(0.4424, within(5e-5));
    List<Shares.Share> shares =
        Shares.of(
            u -> {
              double x = Math.PI * (2 * u[0] - 1);
              double y = Math.PI * (2 * u[1] - 1);
              double z = Math.PI * (2 * u[2] - 1);
              double sine = Math.sin(y);
              return Math.sin(x) + a * sine * sine + b * z * z * z * z * Math.sin(x);
            },
            3,
            POINTS,
            1);
    double[] first = {v1 / all, v2 / all, 0};
    double[] total = {(v1 + v13) / all, v2 / all, v13 / all};
    for (int i = 0; i < 3; i++) {
      assertThat(shares.get(i).first()).as("first %d", i).isCloseTo(first[i], within(0.01));
      assertThat(shares.get(i).total()).as("total %d", i).isCloseTo(total[i], within(0.01));
    }
  }

  @Test
  void nothing_is_shared_where_nothing_changes() {
    assertThat(Shares.of(point -> 4, 2, 64, 1))
        .containsExactly(new Shares.Share(0, 0), new Shares.Share(0, 0));
  }
}
