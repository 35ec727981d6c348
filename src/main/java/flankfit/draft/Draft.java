package flankfit.draft;

import flankfit.gauge.OffsetAdvice;
import flankfit.setup.Offsets;
import flankfit.setup.SetupSheet;
import flankfit.standard.ThreadSpec;
import java.util.List;
import java.util.Objects;

/**
 * A program that gauges good, with the numbers behind it.
 *
 * @param choices how it was asked for
 * @param spec thread that it cuts
 * @param program text of the program
 * @param sheet the setup sheet with the D register that belongs to it
 * @param register what D holds (mm, as entered)
 * @param offset the entries of D at which either gauge says no: on the path as moved where the
 *     endless helix did not serve
 * @param worksheet the numbers, in the order in which they are worked out
 * @param proof what executing and gauging gave
 */
public record Draft(
    DraftChoices choices,
    ThreadSpec spec,
    String program,
    SetupSheet sheet,
    Offsets.Register register,
    OffsetAdvice offset,
    List<WorksheetRow> worksheet,
    Proof proof) {
  public Draft {
    Objects.requireNonNull(choices, "choices");
    Objects.requireNonNull(spec, "spec");
    Objects.requireNonNull(program, "program");
    Objects.requireNonNull(sheet, "sheet");
    Objects.requireNonNull(register, "register");
    Objects.requireNonNull(offset, "offset");
    worksheet = List.copyOf(worksheet);
    Objects.requireNonNull(proof, "proof");
  }
}
