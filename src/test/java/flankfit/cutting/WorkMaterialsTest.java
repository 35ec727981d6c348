package flankfit.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The table of specific cutting forces. */
class WorkMaterialsTest {
  private final WorkMaterials table = WorkMaterials.builtIn();

  @Test
  void every_row_says_where_its_figures_come_from() {
    assertThat(table.all()).hasSizeGreaterThan(15);
    assertThat(table.all())
        .allSatisfy(
            row -> {
              assertThat(row.source()).contains(row.read() ? "read" : "memory");
              assertThat(row.edgeSource()).isNotBlank();
              assertThat(row.isoGroup()).matches("[PMKNSH]");
              assertThat(row.kc11()).isBetween(500.0, 5000.0);
              assertThat(row.exponent()).isBetween(0.1, 0.35);
            });
    assertThat(table.keys()).doesNotHaveDuplicates();
  }

  /**
   * kc in kN/mm² over feed, setting angle 45°: operating manual of a lathe chuck, page 43, table 2.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      value = {
        "steel E295; 3.50; 3.10; 2.75; 2.45; 2.15; 1.95",
        "steel C45; 3.05; 2.80; 2.60; 2.40; 2.20; 2.05",
        "steel E360; 4.35; 3.80; 3.30; 2.90; 2.50; 2.20",
        "steel 42CrMo4; 4.35; 3.90; 3.45; 3.10; 2.75; 2.45",
        "steel, Mn and CrNi alloyed; 3.70; 3.40; 3.10; 2.80; 2.55; 2.35",
        "steel, austenitic manganese; 5.40; 4.90; 4.40; 4.00; 3.60; 3.30",
        "steel, cast GE 240; 2.30; 2.10; 1.95; 1.80; 1.70; 1.60",
        "cast iron EN-GJL-250; 2.05; 1.80; 1.60; 1.45; 1.30; 1.15"
      })
  void rows_that_were_read_fit_what_is_printed(
      String key, double a, double b, double c, double d, double e, double f) {
    WorkMaterial row = table.of(key).orElseThrow();
    assertThat(row.read()).isTrue();
    double[] feed = {0.16, 0.25, 0.40, 0.63, 1.0, 1.6};
    double[] printed = {a, b, c, d, e, f};
    for (int i = 0; i < feed.length; i++) {
      double chip = feed[i] * Math.sin(Math.PI / 4);
      double kc = row.ofChip().cutting(chip) / chip;
      // The fit's largest residual is 1.5 %; the print has two decimals.
      assertThat(kc).isCloseTo(1000 * printed[i], within(0.015 * kc + 5));
    }
  }

  @Test
  void names_are_found_without_regard_to_case_and_unknown_ones_have_kin() {
    assertThat(table.of(" Steel c45 ")).isPresent();
    assertThat(table.of("steel X")).isEmpty();
    assertThat(table.alike("steel X")).contains("steel C45", "steel 42CrMo4");
    assertThat(table.alike("granite")).isEmpty();
  }
}
