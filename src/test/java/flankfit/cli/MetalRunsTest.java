package flankfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Requests to {@code metal} that cannot be met. */
class MetalRunsTest {
  @ParameterizedTest
  @ValueSource(strings = {"-5", "0", "1048577", "99999999999999"})
  void memory_that_no_machine_has_is_refused(String memory) {
    Run run = Run.of("metal", "sample-programs/filter-housing-m20.nc", "--memory", memory);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("RQ04", "--memory " + memory, "1 to 1048576 MiB");
  }
}
