package flankfit.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class SpreadTest {
  private static final int STEPS = 200_000;

  @Test
  void moments_are_those_of_the_quantiles() {
    for (Spread spread :
        List.of(
            new Spread.Rectangular(0.01),
            new Spread.UpTo(0.006),
            new Spread.Normal(0.003),
            new Spread.Eccentric(0.0025, 1),
            new Spread.Eccentric(0.0025, 4))) {
      double sum = 0;
      double square = 0;
      for (int i = 0; i < STEPS; i++) {
        double value = spread.quantile((i + 0.5) / STEPS);
        sum += value / STEPS;
        square += value * value / STEPS;
      }
      assertThat(sum).as("%s", spread).isCloseTo(spread.mean(), within(1e-7));
      assertThat(Math.sqrt(square - sum * sum))
          .as("%s", spread)
          .isCloseTo(spread.deviation(), within(1e-6));
    }
  }

  @Test
  void quantiles_rise() {
    for (Spread spread :
        List.of(new Spread.Rectangular(1), new Spread.Normal(1), new Spread.Eccentric(1, 3))) {
      assertThat(spread.quantile(0.2)).isLessThan(spread.quantile(0.8));
    }
  }

  @Test
  void normal_quantiles_are_those_printed() {
    // Any table of the normal distribution: 1.959964 at 0.975 (from memory).
    assertThat(new Spread.Normal(2).quantile(0.975)).isCloseTo(2 * 1.959964, within(2e-6));
  }

  @Test
  void of_many_teeth_one_stands_out_by_the_whole_eccentricity() {
    assertThat(new Spread.Eccentric(0.01, 1000).mean()).isCloseTo(0.01, within(1e-7));
    assertThat(new Spread.Eccentric(0.01, 1).mean()).isCloseTo(0, within(1e-12));
  }
}
