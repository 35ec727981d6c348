package flankfit.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The basic profile and the lead angle.
 *
 * @see "ISO 68-1; Machinery's Handbook, 27th edition, p. 1786, table 3, and p. 1763"
 */
class BasicProfileTest {
  /** Half of the last printed place of the table's factors (1). */
  private static final double PRINTED = 0.5e-6;

  @Test
  void factors_of_the_pitch_are_those_printed() {
    assertThat(BasicProfile.sharpHeight(1)).isCloseTo(0.866025, within(PRINTED));
    assertThat(-BasicProfile.pitchDiameter(0, 1)).isCloseTo(0.649519, within(PRINTED));
    assertThat(-BasicProfile.minorDiameter(0, 1)).isCloseTo(1.082532, within(PRINTED));
    assertThat(BasicProfile.sharpHeight(1) * 5 / 8).isCloseTo(0.541266, within(PRINTED));
  }

  @Test
  void rounded_factors_of_the_standards_are_the_exact_ones_to_eight_decimals() {
    assertThat(BasicProfile.MAJOR_TO_PITCH)
        .isCloseTo(-BasicProfile.pitchDiameter(0, 1), within(0.5e-8));
    assertThat(BasicProfile.MAJOR_TO_MINOR)
        .isCloseTo(-BasicProfile.minorDiameter(0, 1), within(0.5e-8));
  }

  @Test
  void basic_diameters_of_the_thread_are_not_rounded() throws Exception {
    ThreadSpec thread = Designations.parse("M20x1.5-6H");
    assertThat(thread.basicPitch()).isCloseTo(19.025721, within(PRINTED));
    assertThat(thread.basicMinor()).isCloseTo(18.376202, within(PRINTED));
  }

  @ParameterizedTest
  @CsvSource({
    "#1-64 UNC-2B, 4, 31",
    "#2-56 UNC-2B, 4, 22",
    "#3-48 UNC-2B, 4, 26",
    "#4-40 UNC-2B, 4, 45",
    "#5-40 UNC-2B, 4, 11",
    "#6-32 UNC-2B, 4, 50"
  })
  void lead_angles_are_those_printed(String text, int degrees, int minutes) throws Exception {
    double leadAngle = Math.toDegrees(Designations.parse(text).leadAngle());
    assertThat(Math.round(leadAngle * 60)).isEqualTo(degrees * 60 + minutes);
  }
}
