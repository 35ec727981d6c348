package flankfit.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.cutting.Cantilever.Section;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stepped beams and the copying of errors against figures computed apart by beam theory. */
class CantileverPublishedTest {
  private static Cantilever stepped(double l1, double d1, double l2, double d2) {
    return new Cantilever(List.of(new Section(d1, l1), new Section(d2, l2)), 600_000, 0);
  }

  @ParameterizedTest(name = "neck {1}, shank {3}")
  @CsvSource({
    "30, 9.5, 42, 12, 15818.41, 6.322",
    "20, 6, 35, 8, 6015.92, 16.623",
    "25, 11, 40, 14, 37979.46, 2.633"
  })
  void stiffness_at_the_tip(double l1, double d1, double l2, double d2, double k, double per100) {
    Cantilever mill = stepped(l1, d1, l2, d2);
    assertThat(mill.tipStiffness()).isCloseTo(k, within(0.0051));
    assertThat(100 * mill.compliance(0, 0) * 1000).isCloseTo(per100, within(5.1e-4));
  }

  @ParameterizedTest(name = "at {0}")
  @CsvSource({"0, 4.787", "6, 3.713", "12, 2.654"})
  void a_load_six_millimetres_up_bends_the_mill_in_a_taper(double at, double micrometres) {
    Cantilever mill = stepped(30, 9.5, 42, 12);
    assertThat(100 * mill.compliance(6, at) * 1000).isCloseTo(micrometres, within(5.1e-4));
    assertThat(mill.compliance(at, 6)).isCloseTo(mill.compliance(6, at), within(1e-15));
  }

  @Test
  void a_holder_that_yields_shifts_every_place_alike() {
    Cantilever mill = stepped(30, 9.5, 42, 12);
    Cantilever held = mill.inHolder(1e-4);
    assertThat(held.compliance(3, 9) - mill.compliance(3, 9)).isCloseTo(1e-4, within(1e-15));
  }

  @ParameterizedTest(name = "edge force {3}")
  @CsvSource({
    "2000, 15818, 0.100, 0, 0.1122, 11.225, 1.260, 0.141, 0.016, 0",
    "2000, 15818, 0.100, 10, 0.1122, 11.786, 1.884, 0.773, 0.648, 0.632"
  })
  void copying_of_errors(
      double c,
      double k,
      double a,
      double f0,
      double factor,
      double e1,
      double e2,
      double e3,
      double e4,
      double floor) {
    CopyingLaw law = new CopyingLaw(c, k, f0);
    assertThat(law.factor()).isCloseTo(factor, within(6e-5));
    double[] printed = {e1, e2, e3, e4};
    for (int n = 1; n <= printed.length; n++) {
      assertThat(1000 * law.left(a, n)).isCloseTo(printed[n - 1], within(6e-4));
    }
    assertThat(1000 * law.floor()).isCloseTo(floor, within(5.1e-4));
  }
}
