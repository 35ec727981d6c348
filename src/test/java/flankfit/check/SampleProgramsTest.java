package flankfit.check;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The rules on the sample programs: good ones are not found fault with. */
class SampleProgramsTest {
  private static final Path FOLDER = Path.of("sample-programs");

  private static List<Finding> findings(String name) throws Exception {
    return Checked.of(
            Files.readString(FOLDER.resolve(name + ".nc")),
            Files.readString(FOLDER.resolve(name + ".setup.toml")))
        .findings();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "filter-housing-m20",
        "hub-axle-m16-left",
        "valve-block-half-13",
        "valve-manifold-four-m12",
        "broken-rise-is-not-pitch",
        "broken-compensation-left-on",
        "broken-wear-sign"
      })
  void rules_are_silent_where_the_motion_is_safe(String name) throws Exception {
    assertThat(findings(name)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = "broken-incremental-left-on")
  void thread_beside_its_port_is_a_plunge_into_solid_metal(String name) throws Exception {
    assertThat(findings(name)).extracting(Finding::code).contains(Code.HZ08);
  }
}
