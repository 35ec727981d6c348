package flankfit.control;

import flankfit.finding.Finding;
import flankfit.motion.Tape;
import flankfit.setup.RadiusSetting;
import flankfit.unit.LengthUnit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a program does.
 *
 * @param file name of the program's file as the user gave it
 * @param unit unit of the program's dimensions: the first one stated, or that of power-up
 * @param blocks number of blocks executed
 * @param tape the moves; after a stop those before the block
 * @param findings by file, line, column and code
 * @param assumptions one sentence each: those of the sheet, then those made here
 * @param radiusSettings the D registers that the program sets itself, in order
 * @param complete whether the program was executed to its end
 * @param stoppedAt the error that ended it otherwise
 */
public record Interpretation(
    String file,
    LengthUnit unit,
    int blocks,
    Tape tape,
    List<Finding> findings,
    List<String> assumptions,
    List<RadiusSetting> radiusSettings,
    boolean complete,
    Optional<Stop> stoppedAt) {
  public Interpretation {
    Objects.requireNonNull(file, "file");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(tape, "tape");
    findings = List.copyOf(findings);
    assumptions = List.copyOf(assumptions);
    radiusSettings = List.copyOf(radiusSettings);
    Objects.requireNonNull(stoppedAt, "stoppedAt");
  }

  /** The same with other findings and assumptions. */
  public Interpretation with(List<Finding> otherFindings, List<String> otherAssumptions) {
    return new Interpretation(
        file,
        unit,
        blocks,
        tape,
        otherFindings,
        otherAssumptions,
        radiusSettings,
        complete,
        stoppedAt);
  }
}
