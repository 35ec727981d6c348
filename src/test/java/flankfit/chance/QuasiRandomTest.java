package flankfit.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class QuasiRandomTest {
  @Test
  void a_seed_gives_the_same_points_and_another_gives_others() {
    assertThat(QuasiRandom.points(100, 5, 7)).isDeepEqualTo(QuasiRandom.points(100, 5, 7));
    assertThat(QuasiRandom.points(100, 5, 7)[3]).isNotEqualTo(QuasiRandom.points(100, 5, 8)[3]);
  }

  @Test
  void points_lie_inside_and_fill_more_evenly_than_chance() {
    int n = 4096;
    double[][] points = QuasiRandom.points(n, 8, 1);
    for (int k = 0; k < 8; k++) {
      double sum = 0;
      for (double[] point : points) {
        assertThat(point[k]).isStrictlyBetween(0.0, 1.0);
        sum += point[k];
      }
      // Chance would miss by 0.0045 (one standard deviation, 1/sqrt(12 n)).
      assertThat(sum / n).isCloseTo(0.5, within(3e-4));
    }
    double product = 0;
    for (double[] point : points) {
      product += point[0] * point[5] / n;
    }
    assertThat(product).isCloseTo(0.25, within(1e-3));
  }
}
