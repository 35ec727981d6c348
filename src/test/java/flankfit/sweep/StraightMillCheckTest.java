package flankfit.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.unit.Angles;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Straight V mills against figures computed twice: by the closed form of the involute helicoid and
 * by direct maximisation over the path. They are not published measurements.
 */
class StraightMillCheckTest {
  private static final double SIXTH = 0.6e-6;

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "internal-overcut.csv", numLinesToSkip = 5)
  void internal_thread_comes_out_as_computed_twice(ArgumentsAccessor row) {
    double pitch = row.getDouble(2);
    Case c = Case.of(row);
    InvoluteFlank flank = InvoluteFlank.of(c.lead, c.path, c.angle);
    assertThat(pitch).isEqualTo(c.pitch);
    assertThat(flank.baseRadius()).isCloseTo(row.getDouble(7), within(SIXTH));
    assertThat(c.path).isCloseTo(row.getDouble(8), within(1e-9));
    assertThat(degrees(flank.contactAngle())).isCloseTo(row.getDouble(9), within(0.6e-4));
    RegularThread thread = c.thread(c.path);
    double milled = 2 * thread.radiusOfWidth(c.pitch / 2);
    assertThat(degrees(flank.lag(milled / 2))).isCloseTo(row.getDouble(10), within(0.01));
    assertThat(milled).isCloseTo(row.getDouble(12), within(SIXTH));
    assertThat((milled - row.getDouble(11)) * 1000).isCloseTo(row.getDouble(13), within(0.0061));
    assertThat(degrees(flank.localHalfAngle(milled / 2)))
        .isCloseTo(row.getDouble(14), within(6e-5));
    assertThat(flank.pathSensitivity(milled / 2)).isCloseTo(row.getDouble(16), within(6e-6));
    double step = 1e-5;
    double slope =
        (c.thread(c.path + step).radiusOfWidth(c.pitch / 2)
                - c.thread(c.path - step).radiusOfWidth(c.pitch / 2))
            / (2 * step);
    assertThat(slope).isCloseTo(flank.pathSensitivity(milled / 2), within(1e-7));
    double atBasic = 2 * c.thread(row.getDouble(17)).radiusOfWidth(c.pitch / 2);
    assertThat(atBasic).isCloseTo(row.getDouble(11), within(1.2e-5));
  }

  @ParameterizedTest(name = "M{0}x{1} mill {2} at z {3}")
  @CsvFileSource(resources = "groove-points.csv", numLinesToSkip = 3)
  void groove_stands_point_by_point_where_computed_twice(
      double major, double pitch, double mill, double z, double radius) {
    PolylineTooth tooth = PolylineTooth.straight(mill / 2, pitch / 8, Math.PI / 6);
    HelicalGroove groove = new HelicalGroove(tooth, true, (major - mill) / 2, pitch);
    assertThat(new RegularThread(groove, pitch, radius - 0.2).surface(z))
        .isCloseTo(radius, within(SIXTH));
    assertThat(groove.envelope(z, 2000)).isCloseTo(radius, within(SIXTH));
  }

  @ParameterizedTest(name = "M{0}x{1} mill {2}")
  @CsvFileSource(resources = "external-overcut.csv", numLinesToSkip = 2)
  void external_thread_comes_out_small_as_computed_twice(
      double major, double pitch, double mill, double path, double basic, double milled) {
    PolylineTooth tooth = PolylineTooth.straight(mill / 2, pitch / 4, Math.PI / 6);
    double exact = (major - 1.25 * Math.sqrt(3) / 2 * pitch + mill) / 2;
    HelicalGroove groove = new HelicalGroove(tooth, false, exact, pitch);
    RegularThread thread = new RegularThread(groove, pitch, major / 2);
    assertThat(exact).isCloseTo(path, within(6e-6));
    assertThat(2 * thread.radiusOfWidth(pitch / 2)).isCloseTo(milled, within(6e-8));
    assertThat(basic - milled).isBetween(0.0, 0.03);
  }

  private static double degrees(double radians) {
    return Angles.toDegrees(radians);
  }

  private record Case(
      double major,
      double pitch,
      double lead,
      double angle,
      double halfCrest,
      double mill,
      double path) {
    static Case of(ArgumentsAccessor row) {
      double pitch = row.getDouble(2);
      String crest = row.getString(5);
      double halfCrest = crest == null ? pitch / 16 : Double.parseDouble(crest);
      double major = row.getDouble(1);
      double mill = row.getDouble(6);
      double angle = Angles.toRadians(row.getDouble(4));
      return new Case(
          major, pitch, pitch * row.getInteger(3), angle, halfCrest, mill, (major - mill) / 2);
    }

    RegularThread thread(double at) {
      PolylineTooth tooth = PolylineTooth.straight(mill / 2, 2 * halfCrest, angle);
      HelicalGroove groove = new HelicalGroove(tooth, true, at, lead);
      return new RegularThread(groove, pitch, major / 2 - 0.85 * pitch);
    }
  }
}
