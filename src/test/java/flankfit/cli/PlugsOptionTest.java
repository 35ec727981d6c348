package flankfit.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import flankfit.setup.SetupReader;
import flankfit.setup.SetupSheet;
import flankfit.setup.SetupSheet.GaugeCondition;
import flankfit.setup.SheetReading;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** The condition of the plugs on the command line outranks the sheet's. */
class PlugsOptionTest {
  private static SetupSheet sheet(String more) {
    String text =
        "units = \"mm\"\n[[hole]]\nname = \"A\"\nat = [0.0, 0.0]\ntop = 0.0\n"
            + "diameter = 18.5\ndepth = \"through\"\nthread = \"M20x1.5-6H\"\n"
            + more;
    SheetReading reading = SetupReader.read("a.setup.toml", text);
    return reading.sheet().orElseThrow(() -> new AssertionError(reading.findings()));
  }

  private static PlugsOption option(String... args) {
    return CommandLine.populateCommand(new PlugsOption(), args);
  }

  @Test
  void each_word_of_the_sheet_is_taken() throws RequestException {
    SetupSheet sheet = sheet("[gauges]\ncondition = \"new\"\n");
    for (GaugeCondition condition : GaugeCondition.values()) {
      String word = condition.name().toLowerCase(Locale.ROOT);
      assertThat(option("--plugs", word).change().apply(sheet).gauges()).isEqualTo(condition);
    }
  }

  @Test
  void without_it_the_sheet_stays() throws RequestException {
    SetupSheet sheet = sheet("[gauges]\ncondition = \"worn\"\n");
    assertThat(option().change().apply(sheet)).isSameAs(sheet);
  }

  @Test
  void what_was_assumed_of_the_gauges_is_no_longer() throws RequestException {
    SetupSheet sheet = sheet("");
    assertThat(sheet.assumptions()).anyMatch(s -> s.startsWith("gauges: condition"));
    SetupSheet worn = option("--plugs", "worn").change().apply(sheet);
    assertThat(worn.assumptions()).noneMatch(s -> s.startsWith("gauges: condition"));
    assertThat(worn.assumptions()).hasSize(sheet.assumptions().size() - 1);
  }

  @Test
  void any_other_word_is_refused() {
    assertThatThrownBy(() -> option("--plugs", "old").change())
        .isInstanceOf(RequestException.class);
  }
}
