package flankfit.gauge;

import flankfit.gauge.Fit.DecidedBy;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What is measured on the finished thread. Taper, roundness, the entry mark and the pitch
 * diameter's course over the circumference do not exist on the endless regular helix: they are left
 * out, not given as 0.
 *
 * @param major greatest diameter (mm)
 * @param minor least diameter (mm)
 * @param pitchSimple diameter on which the groove is half the pitch wide (mm)
 * @param pitchOverBall pitch diameter that a reading over two best-size balls gives, lead angle
 *     neglected (mm); inside a hole only, empty where a ball does not touch both flanks
 * @param functional functional diameter with the GO gauge's full crest (mm)
 * @param functionalFlank functional diameter with the crest relieved (mm)
 * @param decidedBy what touches the GO gauge first; flank-up when both flanks are alike
 * @param flankAngleUp half angle of the upper flank (rad), least squares over its middle 60 %
 * @param flankAngleDown half angle of the lower flank (rad)
 * @param leadError lead of the motion less the lead wanted (mm)
 * @param leadLoss what lead errors take from the functional diameter over the engaged length (mm)
 */
public record Measures(
    double major,
    double minor,
    double pitchSimple,
    OptionalDouble pitchOverBall,
    double functional,
    double functionalFlank,
    DecidedBy decidedBy,
    double flankAngleUp,
    double flankAngleDown,
    double leadError,
    double leadLoss) {
  public Measures {
    Objects.requireNonNull(pitchOverBall, "pitchOverBall");
    Objects.requireNonNull(decidedBy, "decidedBy");
  }

  /** The same with what a GO gauge finds elsewhere in the thread. */
  Measures withFit(Fit fit) {
    return new Measures(
        major,
        minor,
        pitchSimple,
        pitchOverBall,
        fit.functional(),
        fit.flanks(),
        fit.decidedBy(),
        flankAngleUp,
        flankAngleDown,
        leadError,
        leadLoss);
  }
}
