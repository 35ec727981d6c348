package flankfit.control;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The worked examples with radius compensation, text to tape. */
class CompensatedExamplesTest {
  @ParameterizedTest
  @MethodSource("flankfit.control.WorkedExamplesTest#compensated")
  void compensated_example_gives_its_moves_and_findings(String name) {
    WorkedExamplesTest.check(Example.load(name));
  }
}
