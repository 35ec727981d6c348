package flankfit.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Limits of size and plug gauges of ISO metric threads against printed tables (mm). */
class MetricPublishedTest {
  /** The figures have four decimals at most: agreement means every printed digit (mm). */
  private static final double DIGITS = 1e-9;

  static List<PrintedTable.Row> internal() {
    return PrintedTable.read("metric-internal.csv");
  }

  static List<PrintedTable.Row> external() {
    return PrintedTable.read("metric-external.csv");
  }

  static List<PrintedTable.Row> gauges() {
    return gaugesOf("ISO 1502");
  }

  static List<PrintedTable.Row> basicGauges() {
    return gaugesOf("ASME B1.16M basic");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("internal")
  void limits_of_holes_are_those_printed(PrintedTable.Row row) throws Exception {
    Limits limits = parse(row).limits();
    check(row, "d_min", limits.majorMin().orElseThrow());
    check(row, "d2_min", limits.pitchMin());
    check(row, "d2_max", limits.pitchMax());
    check(row, "d1_min", limits.minorMin().orElseThrow());
    check(row, "d1_max", limits.minorMax().orElseThrow());
    assertThat(limits.majorMax()).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("external")
  void limits_of_screws_are_those_printed(PrintedTable.Row row) throws Exception {
    Limits limits = parse(row).limits();
    check(row, "d_max", limits.majorMax().orElseThrow());
    check(row, "d_min", limits.majorMin().orElseThrow());
    check(row, "d2_max", limits.pitchMax());
    check(row, "d2_min", limits.pitchMin());
    assertThat(limits.minorMin()).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("gauges")
  void gauge_limits_are_those_computed(PrintedTable.Row row) throws Exception {
    ThreadSpec thread = parse(row);
    GaugeLimits limits = thread.gauges().orElseThrow().limits().orElseThrow();
    assertThat((thread.limits().pitchMax() - thread.limits().pitchMin()) * 1000)
        .isCloseTo(row.number("td2_um"), within(1e-6));
    check(row, "go_pd_min", limits.goPitchMin());
    check(row, "go_pd_max", limits.goPitchMax());
    check(row, "go_pd_wear", limits.goPitchWear());
    check(row, "go_major_min", limits.goMajorMin());
    check(row, "go_major_max", limits.goMajorMax());
    check(row, "nogo_pd_min", limits.noGoPitchMin());
    check(row, "nogo_pd_max", limits.noGoPitchMax());
    check(row, "nogo_pd_wear", limits.noGoPitchWear().orElseThrow());
    check(row, "nogo_major_min", limits.noGoMajorMin());
    check(row, "nogo_major_max", limits.noGoMajorMax());
    assertThat(limits.goPitchMax() - limits.goPitchMin())
        .isCloseTo(row.number("t_pl"), within(DIGITS));
    assertThat((limits.goPitchMin() + limits.goPitchMax()) / 2 - thread.limits().pitchMin())
        .isCloseTo(row.number("z_pl"), within(DIGITS));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("basicGauges")
  void basic_gauge_sizes_are_the_pitch_diameter_limits(PrintedTable.Row row) throws Exception {
    Limits limits = parse(row).limits();
    check(row, "go_pd_min", limits.pitchMin());
    check(row, "nogo_pd_max", limits.pitchMax());
  }

  private static List<PrintedTable.Row> gaugesOf(String system) {
    return PrintedTable.read("gauges-metric.csv").stream()
        .filter(row -> row.text("system").equals(system))
        .toList();
  }

  private static ThreadSpec parse(PrintedTable.Row row) throws InvalidDesignationException {
    return Designations.parse(row.text("size") + "-" + row.text("class"));
  }

  private static void check(PrintedTable.Row row, String column, double millimetres) {
    assertThat(millimetres)
        .as("%s of %s", column, row)
        .isCloseTo(row.number(column), within(DIGITS));
  }
}
