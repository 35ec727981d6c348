package flankfit.cli;

import flankfit.finding.Code;
import flankfit.finding.Finding;
import flankfit.finding.Nearest;
import flankfit.finding.Place;
import flankfit.setup.Hole;
import flankfit.setup.SetupSheet;
import java.util.List;

/** Finds holes and bosses by their names. */
final class HoleNames {
  private HoleNames() {}

  /**
   * The hole or boss of a name.
   *
   * @throws RequestException if the sheet has none of that name
   */
  static Hole find(String name, SetupSheet sheet) throws RequestException {
    List<String> names = sheet.holes().stream().map(Hole::name).toList();
    return sheet.holes().stream()
        .filter(hole -> hole.name().equals(name))
        .findFirst()
        .orElseThrow(() -> unknown(name, names));
  }

  private static RequestException unknown(String name, List<String> names) {
    return RequestException.wrong(
        Finding.of(
            Code.RQ04,
            Place.file(""),
            "the setup sheet has no hole \"" + name + "\"",
            names.isEmpty() ? "it has no holes at all" : "it has " + String.join(", ", names),
            Nearest.of(name, names).map(n -> "write \"" + n + "\"").orElse("name one of them")));
  }
}
