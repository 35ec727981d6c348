package flankfit.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The quick arc sine against that of the Java library, which is fdlibm's by its documentation. */
class ArcSineProperties {
  /** Units in the last place. */
  private static final double LAST_PLACES = 4;

  private static void agrees(double sine) {
    double expected = StrictMath.asin(sine);
    assertThat(ArcSine.of(sine)).isCloseTo(expected, within(LAST_PLACES * Math.ulp(expected)));
  }

  @Test
  void agrees_with_the_library_to_a_few_last_places() {
    Random random = new Random(20);
    for (int i = 0; i < 100_000; i++) {
      agrees(random.nextDouble());
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-300, 1e-9, 0.4999999999999999, 0.5, 0.5000000000000001, 1})
  void both_ends_and_the_seam_are_right(double sine) {
    agrees(sine);
    agrees(Math.nextDown(1.0));
  }
}
