package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Place;
import flankfit.setup.SetupSheet;
import flankfit.setup.SetupSheet.GaugeCondition;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import picocli.CommandLine.Option;

/** Plug gauges in another condition than the sheet says. */
final class PlugsOption {
  @Option(
      names = "--plugs",
      paramLabel = "new|middle|worn",
      description = "takes the plugs as new or worn, whatever [gauges] of the sheet says")
  private Optional<String> condition = Optional.empty();

  /**
   * What becomes of a sheet.
   *
   * @throws RequestException if the condition is none of the sheet's words
   */
  UnaryOperator<SetupSheet> change() throws RequestException {
    if (condition.isEmpty()) {
      return UnaryOperator.identity();
    }
    String asked = condition.get();
    List<GaugeCondition> found =
        Arrays.stream(GaugeCondition.values())
            .filter(c -> c.name().toLowerCase(Locale.ROOT).equals(asked))
            .toList();
    if (found.isEmpty()) {
      throw RequestException.wrong(
          Finding.of(
              Code.RQ04,
              Place.file(""),
              "--plugs " + asked + " is no condition of gauges",
              "the sheet's own words are wanted",
              "write new, middle or worn"));
    }
    return sheet -> sheet.withGauges(found.get(0));
  }
}
