package flankfit.draft;

import java.util.Objects;

/**
 * One number that a person works out by hand.
 *
 * @param key name in answers for machines
 * @param name name for people
 * @param formula how it is worked out, in words and letters
 * @param inserted the same with figures in the unit of the program
 * @param value result as answers for machines give it (mm, mm/min, 1/min, m/min, %, s, 1)
 * @param unit unit of {@code value}
 * @param result result in the unit of the program
 * @param note what else is to be known; may be empty
 */
public record WorksheetRow(
    String key,
    String name,
    String formula,
    String inserted,
    double value,
    String unit,
    String result,
    String note) {
  public WorksheetRow {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(formula, "formula");
    Objects.requireNonNull(inserted, "inserted");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(result, "result");
    Objects.requireNonNull(note, "note");
  }
}
