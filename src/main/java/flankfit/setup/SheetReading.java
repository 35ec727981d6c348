package flankfit.setup;

import flankfit.finding.Finding;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What reading a setup sheet gave.
 *
 * @param sheet the sheet; empty when any finding is an error
 * @param findings everything found, by line and column
 */
public record SheetReading(Optional<SetupSheet> sheet, List<Finding> findings) {
  public SheetReading {
    Objects.requireNonNull(sheet, "sheet");
    findings = List.copyOf(findings);
  }
}
