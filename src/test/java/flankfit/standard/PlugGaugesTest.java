package flankfit.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The one size that stands for each plug gauge, the turns rule, and gauges that are not known. */
class PlugGaugesTest {
  private static final double DIGITS = 1e-9;

  @Test
  void metric_plugs_stand_at_the_middle_of_their_tolerance() throws Exception {
    PlugGauges plugs = Designations.parse("M20x2.5-6H").gauges().orElseThrow();
    assertThat(plugs.goPitch()).isCloseTo(18.392, within(DIGITS));
    assertThat(plugs.noGoPitch()).isCloseTo(18.607, within(DIGITS));
    assertThat(plugs.goMajorMin()).isCloseTo(20.002, within(DIGITS));
    assertThat(plugs.noGoMajorMax()).isCloseTo(19.121, within(DIGITS));
    assertThat(plugs.plainGo()).isCloseTo(17.294, within(DIGITS));
    assertThat(plugs.plainNoGo()).isCloseTo(17.744, within(DIGITS));
  }

  @Test
  void turns_are_two_by_iso_and_three_by_asme() throws Exception {
    assertThat(Designations.parse("M20x1.5-6H").gauges().orElseThrow().turnsAllowed()).isEqualTo(2);
    assertThat(Designations.parse("1/2-13 UNC-2B").gauges().orElseThrow().turnsAllowed())
        .isEqualTo(3);
  }

  @ParameterizedTest
  @ValueSource(strings = {"M20x1.5-6H", "1/2-13 UNC-2B"})
  void the_rule_says_that_gauge_limits_are_to_be_checked(String text) throws Exception {
    ThreadSpec thread = Designations.parse(text);
    assertThat(thread.gauges().orElseThrow().rule())
        .contains("from memory")
        .contains("gauge limits: check against the standard");
    assertThat(thread.sources()).anyMatch(s -> s.contains("check against the standard"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"5-8 UN-2B", "4-3 UNS-2B", "M300x8-8H"})
  void no_gauge_is_made_up_beyond_the_tables(String text) throws Exception {
    ThreadSpec thread = Designations.parse(text);
    assertThat(thread.gauges()).isEmpty();
    assertThat(thread.sources()).anyMatch(s -> s.startsWith("gauges: none"));
  }

  @Test
  void between_the_rows_the_coarser_row_counts() throws Exception {
    GaugeLimits at27 =
        Designations.parse("1/2-27 UNS-2B").gauges().orElseThrow().limits().orElseThrow();
    GaugeLimits at20 =
        Designations.parse("1/2-20 UNF-2B").gauges().orElseThrow().limits().orElseThrow();
    assertThat(at27.goMajorMax() - at27.goMajorMin())
        .isCloseTo(at20.goMajorMax() - at20.goMajorMin(), within(DIGITS));
  }

  @Test
  void a_no_go_that_catches_about_half_a_turn_is_accepted() throws InvalidDesignationException {
    // common practice, no source: half a turn is fine. ISO 1502 allows two turns, ASME B1.2
    // (1983) paragraph 5.2.1 three: both as quoted by gauge makers.
    PlugGauges metric = Designations.parse("M20x1.5-6H").gauges().orElseThrow();
    PlugGauges inch = Designations.parse("1/2-13 UNC-2B").gauges().orElseThrow();
    assertThat(metric.acceptsNoGoTurns(0.5)).isTrue();
    assertThat(inch.acceptsNoGoTurns(0.5)).isTrue();
    assertThat(metric.acceptsNoGoTurns(2.5)).isFalse();
    assertThat(inch.acceptsNoGoTurns(2.5)).isTrue();
    assertThat(inch.acceptsNoGoTurns(3.1)).isFalse();
  }
}
