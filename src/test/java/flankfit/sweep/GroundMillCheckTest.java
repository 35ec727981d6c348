package flankfit.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.unit.Angles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Mills ground for a thread, against figures computed by inverse envelope and direct minimisation.
 */
class GroundMillCheckTest {
  private static final double ANGLE = Math.PI / 6;
  private static final double PITCH_LINE = 0.75 * Math.sqrt(3) / 2;

  static GroundTooth groundFor(double major, double pitch, double mill) {
    double pitchRadius = (major - PITCH_LINE * pitch) / 2;
    return new GroundTooth(
        new GroundTooth.Basis(true, major / 2, pitchRadius, pitch, pitch, ANGLE), mill / 2);
  }

  @ParameterizedTest(name = "M{0}x{1} mill {2}")
  @CsvFileSource(resources = "ground-mills.csv", numLinesToSkip = 3)
  void profile_is_the_inverse_envelope(
      double major,
      double pitch,
      double mill,
      double straight,
      double needed,
      double angle,
      double crest) {
    GroundTooth tooth = groundFor(major, pitch, mill);
    assertThat(mill / 2 - (pitch / 4 - pitch / 16) / Math.tan(ANGLE))
        .isCloseTo(straight, within(6e-7));
    assertThat(tooth.radius(pitch / 4)).isCloseTo(needed, within(6e-7));
    assertThat(tooth.halfWidth(needed, Flank.UP)).isCloseTo(pitch / 4, within(6e-7));
    assertThat(2 * tooth.halfWidth(mill / 2, Flank.UP)).isCloseTo(crest, within(6e-6));
    double step = 1e-4;
    double slope =
        (tooth.halfWidth(needed - step, Flank.UP) - tooth.halfWidth(needed + step, Flank.UP))
            / (2 * step);
    assertThat(Angles.toDegrees(Math.atan(slope))).isCloseTo(angle, within(1e-4));
  }

  @ParameterizedTest(name = "ground for M{0}x{1}, used on M{3}")
  @CsvFileSource(resources = "ground-elsewhere.csv", numLinesToSkip = 3)
  void used_on_another_thread_it_is_off_as_computed(
      double groundFor,
      double pitch,
      double mill,
      double usedOn,
      double off,
      double angle,
      double straightOff) {
    double basic = usedOn - PITCH_LINE * pitch;
    double path = (usedOn - mill) / 2;
    HelicalGroove groove = new HelicalGroove(groundFor(groundFor, pitch, mill), true, path, pitch);
    RegularThread thread = new RegularThread(groove, pitch, usedOn / 2 - 0.6 * pitch);
    double milled = 2 * thread.radiusOfWidth(pitch / 2);
    assertThat((milled - basic) * 1000).isCloseTo(off, within(0.051));
    double step = 1e-3;
    double slope =
        (groove.halfWidth(milled / 2 - step, Flank.UP)
                - groove.halfWidth(milled / 2 + step, Flank.UP))
            / (2 * step);
    assertThat(Angles.toDegrees(Math.atan(slope))).isCloseTo(angle, within(0.0011));
    PolylineTooth straight = PolylineTooth.straight(mill / 2, pitch / 8, ANGLE);
    RegularThread other =
        new RegularThread(
            new HelicalGroove(straight, true, path, pitch), pitch, usedOn / 2 - 0.6 * pitch);
    assertThat((2 * other.radiusOfWidth(pitch / 2) - basic) * 1000)
        .isCloseTo(straightOff, within(0.051));
  }

  @Test
  void on_its_own_thread_the_flank_comes_out_straight_from_crest_to_root() {
    HelicalGroove groove = new HelicalGroove(groundFor(20, 2.5, 16), true, 2, 2.5);
    double pitchRadius = (20 - PITCH_LINE * 2.5) / 2;
    for (double rho = 8.65; rho < 9.89; rho += 0.01) {
      double wanted = 2.5 / 4 - (rho - pitchRadius) * Math.tan(ANGLE);
      assertThat(groove.halfWidth(rho, Flank.UP)).isCloseTo(wanted, within(1e-9));
    }
  }

  @Test
  void a_mill_ground_for_a_boss_leaves_straight_flanks_there() {
    double pitchRadius = (20 - PITCH_LINE * 2.5) / 2;
    double bottom = (20 - 1.25 * Math.sqrt(3) / 2 * 2.5) / 2;
    GroundTooth tooth =
        new GroundTooth(new GroundTooth.Basis(false, bottom, pitchRadius, 2.5, 2.5, ANGLE), 10);
    HelicalGroove groove = new HelicalGroove(tooth, false, bottom + 10, 2.5);
    for (double rho = bottom + 0.05; rho < 10; rho += 0.01) {
      double wanted = 2.5 / 4 + (rho - pitchRadius) * Math.tan(ANGLE);
      assertThat(groove.halfWidth(rho, Flank.DOWN))
          .as("at %s", rho)
          .isCloseTo(wanted, within(1e-9));
    }
  }
}
