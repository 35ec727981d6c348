package flankfit.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.unit.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Suggested drills against those of workshop charts (common practice, no source). */
class DrillsTest {
  @ParameterizedTest
  @CsvSource({
    "M1.6-6H, 1.25 mm",
    "M2.5-6H, 2.05 mm",
    "M3-6H, 2.5 mm",
    "M4-6H, 3.3 mm",
    "M5-6H, 4.2 mm",
    "M6-6H, 5 mm",
    "M8-6H, 6.8 mm",
    "M10-6H, 8.5 mm",
    "M10x1.25-6H, 8.8 mm",
    "M12-6H, 10.2 mm",
    "M12x1.25-6H, 10.8 mm",
    "M14-6H, 12 mm",
    "M16-6H, 14 mm",
    "M18-6H, 15.5 mm",
    "M20-6H, 17.5 mm",
    "M20x1.5-6H, 18.5 mm",
    "M24-6H, 21 mm",
    "M30-6H, 26.5 mm",
    "M36-6H, 32 mm",
    "M42-6H, 37.5 mm"
  })
  void metric_threads_take_diameter_less_pitch(String thread, String name) throws Exception {
    assertThat(drill(thread).name()).isEqualTo(name);
  }

  @ParameterizedTest
  @CsvSource({
    "#0-80 UNF-2B, 3/64 in", "#4-40 UNC-2B, number 43", "#6-32 UNC-2B, number 36",
    "#8-32 UNC-2B, number 29", "#10-24 UNC-2B, number 25", "#10-32 UNF-2B, number 21",
    "1/4-20 UNC-2B, number 7", "1/4-28 UNF-2B, number 3", "5/16-18 UNC-2B, letter F",
    "5/16-24 UNF-2B, letter I", "3/8-16 UNC-2B, 5/16 in", "3/8-24 UNF-2B, letter Q",
    "7/16-14 UNC-2B, letter U", "7/16-20 UNF-2B, 25/64 in", "1/2-13 UNC-2B, 27/64 in",
    "1/2-20 UNF-2B, 29/64 in", "9/16-12 UNC-2B, 31/64 in", "5/8-11 UNC-2B, 17/32 in",
    "3/4-10 UNC-2B, 21/32 in", "3/4-16 UNF-2B, 11/16 in", "7/8-9 UNC-2B, 49/64 in",
    "1-8 UNC-2B, 7/8 in", "1-1/4-7 UNC-2B, 1-7/64 in", "1-1/2-6 UNC-2B, 1-11/32 in"
  })
  void unified_threads_take_the_chart_drill(String thread, String name) throws Exception {
    assertThat(drill(thread).name()).isEqualTo(name);
  }

  @ParameterizedTest
  @CsvSource({
    "5/16-18 UNC-2B, 0.257",
    "#10-32 UNF-2B, 0.159",
    "1/4-20 UNC-2B, 0.201",
    "1/2-13 UNC-2B, 0.421875"
  })
  void inch_drills_have_their_decimal_size(String thread, double inches) throws Exception {
    assertThat(LengthUnit.INCH.fromMillimetres(drill(thread).diameter()))
        .isCloseTo(inches, within(1e-12));
  }

  /**
   * Charts give 33/64 and 37/64, but those leave 65 % and are larger than the greatest minor
   * diameters, 0.515 and 0.578 in. No other inch drill lies within, so a metric one does.
   */
  @ParameterizedTest
  @CsvSource({"9/16-18 UNF-2B, 12.9 mm", "5/8-18 UNF-2B, 14.5 mm"})
  void metric_drill_steps_in_where_no_inch_drill_is_within_limits(String thread, String name)
      throws Exception {
    assertThat(drill(thread).name()).isEqualTo(name);
  }

  @Test
  void engagement_is_the_share_of_three_quarters_of_the_sharp_height() throws Exception {
    // 0.5 in of 1.299038 times 1/13 in, less 27/64 in: 0.078125 / 0.0999260
    assertThat(drill("1/2-13 UNC-2B").engagementPercent()).isCloseTo(78.183, within(0.001));
    assertThat(drill("M20x1.5-6H").engagementPercent()).isCloseTo(76.980, within(0.001));
  }

  @Test
  void no_drill_is_made_up_where_none_is_sold() throws Exception {
    ThreadSpec thread = Designations.parse("6-8 UN-2B");
    assertThat(thread.drill()).isEmpty();
    assertThat(thread.sources()).anyMatch(s -> s.startsWith("drill: none"));
  }

  private static Drill drill(String thread) throws InvalidDesignationException {
    return Designations.parse(thread).drill().orElseThrow();
  }
}
