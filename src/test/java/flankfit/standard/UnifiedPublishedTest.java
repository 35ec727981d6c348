package flankfit.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import flankfit.unit.LengthUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Limits of size and plug gauges of Unified threads against printed tables (inch). */
class UnifiedPublishedTest {
  /** The figures have four decimals at most: agreement means every printed digit (in). */
  private static final double DIGITS = 1e-9;

  /** Printed figures that the rule does not give, by row and column; each has its reason. */
  private static final Map<String, PrintedTable.Row> EXCEPTIONS =
      PrintedTable.read("unified-exceptions.csv").stream()
          .collect(Collectors.toMap(UnifiedPublishedTest::exceptionKey, row -> row));

  static List<PrintedTable.Row> internal() {
    return PrintedTable.read("unified-internal.csv");
  }

  static List<PrintedTable.Row> external() {
    return PrintedTable.read("unified-external.csv");
  }

  static List<PrintedTable.Row> gauges() {
    return PrintedTable.read("gauges-unified.csv");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("internal")
  void limits_of_holes_are_those_printed(PrintedTable.Row row) throws Exception {
    ThreadSpec thread = Designations.parse(designation(row));
    Limits limits = thread.limits();
    check(row, "basic_major", thread.nominal());
    check(row, "major_min", limits.majorMin().orElseThrow());
    check(row, "pd_min", limits.pitchMin());
    check(row, "pd_max", limits.pitchMax());
    check(row, "minor_min", limits.minorMin().orElseThrow());
    check(row, "minor_max", limits.minorMax().orElseThrow());
    assertThat(limits.majorMax()).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("external")
  void limits_of_screws_are_those_printed(PrintedTable.Row row) throws Exception {
    Limits limits = Designations.parse(designation(row)).limits();
    check(row, "major_max", limits.majorMax().orElseThrow());
    check(row, "major_min", limits.majorMin().orElseThrow());
    check(row, "pd_max", limits.pitchMax());
    check(row, "pd_min", limits.pitchMin());
    assertThat(limits.minorMin()).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("gauges")
  void gauge_limits_are_those_computed(PrintedTable.Row row) throws Exception {
    PlugGauges plugs = Designations.parse(designation(row)).gauges().orElseThrow();
    GaugeLimits limits = plugs.limits().orElseThrow();
    check(row, "go_pd_min", limits.goPitchMin());
    check(row, "go_pd_max", limits.goPitchMax());
    check(row, "go_major_min", limits.goMajorMin());
    check(row, "go_major_max", limits.goMajorMax());
    check(row, "notgo_pd_min", limits.noGoPitchMin());
    check(row, "notgo_pd_max", limits.noGoPitchMax());
    check(row, "notgo_major_min", limits.noGoMajorMin());
    check(row, "notgo_major_max", limits.noGoMajorMax());
    check(row, "plain_go_min", plugs.plainGo());
    check(row, "plain_notgo_max", plugs.plainNoGo());
    assertThat(limits.goPitchMax() - limits.goPitchMin())
        .isCloseTo(LengthUnit.INCH.toMillimetres(row.number("x_pd")), within(DIGITS));
    assertThat(limits.goMajorMax() - limits.goMajorMin())
        .isCloseTo(LengthUnit.INCH.toMillimetres(row.number("x_major")), within(DIGITS));
  }

  @Test
  void every_exception_names_a_printed_figure_and_a_reason() {
    Set<String> printed = new HashSet<>();
    for (PrintedTable.Row row : internal()) {
      row.cells().forEach((column, cell) -> printed.add(key(row, column) + " " + cell));
    }
    for (PrintedTable.Row row : external()) {
      row.cells().forEach((column, cell) -> printed.add(key(row, column) + " " + cell));
    }
    for (PrintedTable.Row exception : EXCEPTIONS.values()) {
      assertThat(printed).contains(exceptionKey(exception) + " " + exception.text("printed"));
      assertThat(exception.text("reason")).isNotBlank();
      assertThat(exception.text("printed")).isNotEqualTo(exception.text("computed"));
    }
  }

  private static String designation(PrintedTable.Row row) {
    return row.text("nominal")
        + "-"
        + row.text("tpi")
        + " "
        + row.text("series")
        + "-"
        + row.text("class");
  }

  private static void check(PrintedTable.Row row, String column, double millimetres) {
    PrintedTable.Row exception = EXCEPTIONS.get(key(row, column));
    double expected = exception == null ? row.number(column) : exception.number("computed");
    assertThat(LengthUnit.INCH.fromMillimetres(millimetres))
        .as("%s of %s", column, row)
        .isCloseTo(expected, within(DIGITS));
  }

  private static String key(PrintedTable.Row row, String column) {
    return designation(row) + " " + column;
  }

  private static String exceptionKey(PrintedTable.Row row) {
    return key(row, row.text("column"));
  }
}
