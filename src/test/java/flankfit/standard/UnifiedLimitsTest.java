package flankfit.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.unit.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Allowance, length of engagement and rounding of Unified limits (inch). */
class UnifiedLimitsTest {
  private static final double DIGITS = 1e-9;

  /** es = 0.300 Td2 of class 2A, ASME B1.1 paragraph 5.8.1; figures by hand from the formula. */
  @ParameterizedTest
  @CsvSource({
    "1/2-13 UNC-2A, 0.0015",
    "1/2-13 UNC-1A, 0.0015",
    "1/2-13 UNC-3A, 0",
    "1-8 UNC-2A, 0.0020",
    "#10-32 UNF-2A, 0.0009"
  })
  void allowance_lowers_major_and_pitch_diameter_alike(String text, double allowance)
      throws Exception {
    ThreadSpec screw = Designations.parse(text);
    double basic = LengthUnit.INCH.fromMillimetres(screw.nominal());
    double major = LengthUnit.INCH.fromMillimetres(screw.limits().majorMax().orElseThrow());
    ThreadSpec nut = Designations.parse(text.substring(0, text.length() - 1) + "B");
    double pitch =
        LengthUnit.INCH.fromMillimetres(nut.limits().pitchMin() - screw.limits().pitchMax());
    assertThat(basic - major).isCloseTo(allowance, within(DIGITS));
    assertThat(pitch).isCloseTo(allowance, within(DIGITS));
  }

  /** LE is D for UNC, UNF, 4-, 6- and 8-UN, else 9P; paragraph 5.1. Tolerances by hand. */
  @ParameterizedTest
  @CsvSource({
    // 1.3 (0.0015 + 0.0015 sqrt(1) + 0.015 / 4) = 0.008775
    "1-8 UNC-2B, 0.0088",
    // 1.3 (0.0015 * 1.25992 + 0.0015 sqrt(2) + 0.015 / 4) = 0.010090; with 9P it would be 0.0094
    "2-8 UN-2B, 0.0101",
    // 1.3 (0.0015 * 1.25992 + 0.0015 sqrt(0.75) + 0.015 * 0.190786) = 0.007866
    "2-12 UN-2B, 0.0079",
    // 1.3 (0.0015 + 0.0015 sqrt(0.5625) + 0.015 * 0.157490) = 0.006484
    "1-16 UN-2B, 0.0065",
    // the printed exception: 1.3 (0.0015 + 0.0015 sqrt(1) + 0.015 * 0.172150) = 0.007257
    "1-14 UNS-2B, 0.0073"
  })
  void length_of_engagement_follows_the_series(String text, double tolerance) throws Exception {
    Limits limits = Designations.parse(text).limits();
    assertThat(LengthUnit.INCH.fromMillimetres(limits.pitchMax() - limits.pitchMin()))
        .isCloseTo(tolerance, within(DIGITS));
  }

  /** 0.15540 rounds to 0.155, but 0.15548 goes by 0.1555 to 0.156 as printed (10-24 2B). */
  @Test
  void greatest_minor_diameter_is_rounded_in_two_steps() throws Exception {
    Limits limits = Designations.parse("#10-24 UNC-2B").limits();
    assertThat(LengthUnit.INCH.fromMillimetres(limits.minorMax().orElseThrow()))
        .isCloseTo(0.156, within(DIGITS));
  }

  /** 0.15 P below 4 threads per inch, paragraph 5.8.2 (c): 1/3 in gives 0.0500 in. */
  @Test
  void minor_diameter_tolerance_changes_its_rule_below_four_threads_per_inch() throws Exception {
    Limits limits = Designations.parse("4-3 UNS-2B").limits();
    // basic minor diameter 4 - 1.08253175 / 3 = 3.63916
    assertThat(LengthUnit.INCH.fromMillimetres(limits.minorMin().orElseThrow()))
        .isCloseTo(3.639, within(DIGITS));
    assertThat(LengthUnit.INCH.fromMillimetres(limits.minorMax().orElseThrow()))
        .isCloseTo(3.689, within(DIGITS));
  }
}
