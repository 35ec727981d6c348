package flankfit.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.unit.Angles;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Entry marks by the second-order formula, near what direct maximisation gave. */
class EntryMarkTest {
  @ParameterizedTest(name = "M{0}x{1} mill {2}, {3} degrees, a = {4} e, rise {5} P")
  @CsvFileSource(resources = "entry-marks.csv", numLinesToSkip = 3)
  void mark_is_that_of_the_formula_and_near_the_direct_one(
      double major,
      double pitch,
      double mill,
      double sweep,
      double arcShare,
      double riseShare,
      double direct,
      Double degrees,
      double formula) {
    double path = (major - mill) / 2;
    InvoluteFlank flank = InvoluteFlank.of(pitch, path, Math.PI / 6);
    double lag = flank.lag((major - 0.649519 * pitch) / 2);
    double ratio = riseShare * 360 / sweep;
    EntryMark mark = EntryMark.of(flank.baseRadius(), lag, path, arcShare * path, ratio);
    assertThat(mark.depth() * 1000).isCloseTo(formula, within(0.051));
    assertThat(mark.depth() * 1000).isCloseTo(direct, within(0.11 * direct + 0.05));
    if (degrees != null) {
      assertThat(Angles.toDegrees(mark.angle())).isCloseTo(-degrees, within(4.5));
    }
  }
}
