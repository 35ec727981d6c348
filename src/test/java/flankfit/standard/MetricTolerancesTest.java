package flankfit.standard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Tolerances by formula and R40 steps against the tables, and which grades there are. */
class MetricTolerancesTest {
  static List<PrintedTable.Row> tables() {
    return PrintedTable.read("metric-tolerances.csv");
  }

  static List<PrintedTable.Row> minorTable() {
    return tables().stream().filter(row -> row.text("table").equals("T_D1")).toList();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("tables")
  void every_entry_follows_from_grade_six(PrintedTable.Row row) {
    for (int grade = 4; grade <= 8; grade++) {
      if (row.has("g" + grade)) {
        assertThat(tolerance(row, grade))
            .as("grade %s of %s", grade, row)
            .isEqualTo(Long.parseLong(row.text("g" + grade)));
      }
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("minorTable")
  void a_grade_beyond_the_minor_diameter_table_is_refused(PrintedTable.Row row) {
    for (int grade = 4; grade <= 8; grade++) {
      assertThat(isClass(row.text("pitch"), grade + "H"))
          .as("%sH at %s mm", grade, row.text("pitch"))
          .isEqualTo(row.has("g" + grade));
    }
  }

  /** T_d2 of grades 3 to 9 (µm), from memory of ISO 965-1:1998, table 6. */
  @ParameterizedTest
  @CsvSource({
    "1.2, 0.2, 24 30 38 48",
    "2, 0.4, 34 42 53 67 85",
    "4, 0.8, 48 60 75 95 118 150 190",
    "8, 1, 56 71 90 112 140 180 224",
    "30, 1, 63 80 100 125 160 200 250"
  })
  void pitch_diameter_of_screws_follows_from_grade_six(double d, double pitch, String printed) {
    int grade = 3;
    for (String entry : printed.split(" ", -1)) {
      assertThat(MetricTolerances.pitchScrew(micrometres(d), micrometres(pitch), grade))
          .as("grade %s", grade)
          .isEqualTo(Long.parseLong(entry));
      grade++;
    }
  }

  @Test
  void deviations_are_those_of_table_one() {
    assertThat(MetricTolerances.deviation('H', 1500)).isZero();
    assertThat(MetricTolerances.deviation('g', 1500)).isEqualTo(32);
    assertThat(MetricTolerances.deviation('G', 8000)).isEqualTo(100);
    assertThat(MetricTolerances.deviation('e', 2000)).isEqualTo(71);
    assertThat(MetricTolerances.deviation('f', 350)).isEqualTo(34);
  }

  private static long tolerance(PrintedTable.Row row, int grade) {
    long pitch = micrometres(row.number("pitch"));
    return switch (row.text("table")) {
      case "T_D1" -> MetricTolerances.minorNut(pitch, grade);
      case "T_d" -> MetricTolerances.majorScrew(pitch, grade);
      default -> MetricTolerances.pitchNut(micrometres(row.number("d")), pitch, grade);
    };
  }

  private static boolean isClass(String pitch, String known) {
    try {
      return Designations.parse("M36x" + pitch + "-" + known).threadClass().equals(known);
    } catch (InvalidDesignationException e) {
      assertThat(e.getMessage()).contains("is not a class for a hole");
      return false;
    }
  }

  private static long micrometres(double millimetres) {
    return Math.round(millimetres * 1000);
  }
}
