package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SideNamesTest {
  private static double cost(double[] wanted, double[] at) {
    double sum = 0;
    for (int i = 0; i < at.length; i++) {
      sum += (at[i] - wanted[i]) * (at[i] - wanted[i]);
    }
    return sum;
  }

  @Test
  void names_that_have_room_stay_where_they_belong() {
    double[] wanted = {50, 90, 200};
    assertThat(SideNames.apart(wanted, 36, 0, 400)).containsExactly(wanted);
  }

  @Test
  void two_on_one_row_part_evenly() {
    assertThat(SideNames.apart(new double[] {100, 100}, 36, 0, 400)).containsExactly(82, 118);
  }

  @Test
  void rows_are_apart_within_their_room_and_no_small_move_brings_them_nearer() {
    Random random = new Random(5);
    for (int round = 0; round < 200; round++) {
      double[] wanted = random.doubles(4, 0, 300).sorted().toArray();
      double[] at = SideNames.apart(wanted, 30, 10, 290);
      for (int i = 1; i < at.length; i++) {
        assertThat(at[i] - at[i - 1]).isGreaterThanOrEqualTo(30 - 1e-9);
      }
      assertThat(at[0]).isGreaterThanOrEqualTo(10 - 1e-9);
      assertThat(at[3]).isLessThanOrEqualTo(290 + 1e-9);
      // The cost is convex: where no allowed move of some neighbours together helps, it is least.
      for (int from = 0; from < 4; from++) {
        for (int to = from; to < 4; to++) {
          for (double step : new double[] {-0.01, 0.01}) {
            double[] moved = at.clone();
            for (int i = from; i <= to; i++) {
              moved[i] += step;
            }
            if (isAllowed(moved)) {
              assertThat(cost(wanted, moved))
                  .as(Arrays.toString(wanted))
                  .isGreaterThan(cost(wanted, at) - 1e-9);
            }
          }
        }
      }
    }
    assertThat(cost(new double[] {1}, SideNames.apart(new double[] {1}, 30, 0, 9)))
        .isCloseTo(0, within(1e-12));
  }

  private static boolean isAllowed(double[] at) {
    for (int i = 1; i < at.length; i++) {
      if (at[i] - at[i - 1] < 30) {
        return false;
      }
    }
    return at[0] >= 10 && at[at.length - 1] <= 290;
  }
}
