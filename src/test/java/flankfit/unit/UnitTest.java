package flankfit.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Angles, units, tolerances and checks of arguments. */
class UnitTest {
  @Test
  void degrees_and_radians_are_each_others_inverse() {
    assertThat(Angles.toRadians(180)).isEqualTo(Math.PI);
    assertThat(Angles.toDegrees(Math.PI / 2)).isEqualTo(90);
    Random random = new Random(3);
    for (int i = 0; i < 1000; i++) {
      double degrees = 2000 * random.nextDouble() - 1000;
      assertThat(Angles.toDegrees(Angles.toRadians(degrees))).isCloseTo(degrees, within(1e-12));
    }
  }

  @Test
  void a_normalised_angle_is_the_same_direction_within_one_turn() {
    Random random = new Random(4);
    for (int i = 0; i < 1000; i++) {
      double angle = 100 * random.nextDouble() - 50;
      double normal = Angles.normalised(angle);
      assertThat(normal).isGreaterThanOrEqualTo(0).isLessThan(Angles.TURN);
      assertThat(Math.cos(normal)).isCloseTo(Math.cos(angle), within(1e-13));
      assertThat(Math.sin(normal)).isCloseTo(Math.sin(angle), within(1e-13));
    }
    assertThat(Angles.normalised(-1e-20)).isZero();
    assertThat(Angles.normalised(Angles.TURN)).isZero();
  }

  @Test
  void an_inch_is_25_4_millimetres() {
    assertThat(LengthUnit.INCH.toMillimetres(1)).isEqualTo(25.4);
    assertThat(LengthUnit.INCH.fromMillimetres(25.4)).isEqualTo(1);
    assertThat(LengthUnit.MILLIMETRE.toMillimetres(1.1)).isEqualTo(1.1);
    assertThat(LengthUnit.INCH.symbol()).isEqualTo("in");
  }

  @Test
  void a_tolerance_includes_its_bound() {
    Tolerance half = new Tolerance(0.5, "mm", "test");
    assertThat(half.near(1, 1.5)).isTrue();
    assertThat(half.near(1.5, 1)).isTrue();
    assertThat(half.near(1, 1.5000001)).isFalse();
    assertThat(half.zero(-0.5)).isTrue();
    assertThat(half.near(Double.NaN, 0)).isFalse();
    assertThatIllegalArgumentException().isThrownBy(() -> new Tolerance(0, "mm", "test"));
    assertThatNullPointerException().isThrownBy(() -> new Tolerance(1, "mm", null));
  }

  @Test
  void checks_return_what_passes_and_name_what_does_not() {
    assertThat(Require.finite("a", -3)).isEqualTo(-3);
    assertThat(Require.positive("a", 3)).isEqualTo(3);
    assertThat(Require.notNegative("a", 0)).isZero();
    assertThat(Require.within("a", 2, 1, 2)).isEqualTo(2);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Require.positive("lead", 0))
        .withMessage("lead must be above 0: 0.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Require.notNegative("lead", -1))
        .withMessage("lead must not be below 0: -1.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Require.within("lead", 3, 1, 2))
        .withMessage("lead must lie between 1.0 and 2.0: 3.0");
  }

  @Test
  void no_check_lets_nan_or_infinity_pass() {
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatIllegalArgumentException().isThrownBy(() -> Require.finite("a", bad));
      assertThatIllegalArgumentException().isThrownBy(() -> Require.positive("a", bad));
      assertThatIllegalArgumentException().isThrownBy(() -> Require.notNegative("a", bad));
      assertThatIllegalArgumentException().isThrownBy(() -> Require.within("a", bad, 0, 1));
    }
  }
}
