package flankfit.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Expressions with printed values, to the bound that stands beside each. */
class ExpressionsPublishedTest {
  @ParameterizedTest(name = "{0} = {1}")
  @CsvFileSource(resources = "expressions.csv", useHeadersInDisplayName = true)
  void expression_has_the_printed_value(
      String expression, double value, double bound, String status) {
    Interpretation result =
        Programs.run("G0 X" + expression + "\nG0 Z9.\nM30\n", "fix-rounding = \"down\"");
    assertThat(result.complete()).as("%s", result.findings()).isTrue();
    assertThat(result.tape().toX(result.tape().size() - 1))
        .as(status)
        .isCloseTo(value, within(bound));
  }
}
