package flankfit.gauge;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a pass cuts.
 *
 * @param feedCentre feed of the cutter's centre, as moved (mm/min)
 * @param feedEdge feed of the edge at the wall (mm/min)
 * @param toothLoad feed of the centre for one tooth (mm); empty when the spindle does not turn
 * @param engagement angle from the wall to where the crest leaves the metal, for stiff passes
 *     (rad); 0 when an earlier pass already reached as far
 * @param greatestChip thickest chip of the crest for stiff passes (mm)
 * @param seconds time of its turns (s)
 * @param push force and bending; empty when the metal or the mill is not known
 */
public record PassCut(
    double feedCentre,
    double feedEdge,
    OptionalDouble toothLoad,
    double engagement,
    OptionalDouble greatestChip,
    double seconds,
    Optional<Push> push) {
  public PassCut {
    Objects.requireNonNull(toothLoad, "toothLoad");
    Objects.requireNonNull(greatestChip, "greatestChip");
    Objects.requireNonNull(push, "push");
  }

  /**
   * Force and bending of a pass, means over a turn of the cutter, all rows in the metal together.
   *
   * @param cutting cutting force (N)
   * @param away force away from the wall (N); negative when the mill is pulled in
   * @param peak greatest cutting force on one tooth of all rows (N)
   * @param power power at the edge (W)
   * @param torque torque (N·m)
   * @param chipVolume metal that one tooth takes in all rows (mm³)
   * @param deflection how far the mill is pushed off its path, mean over the rows (mm); positive
   *     leaves the path cut short
   * @param taper deflection of the lowest row less that of the highest (mm, on the radius)
   * @param rubs whether all rows only rub
   */
  public record Push(
      double cutting,
      double away,
      double peak,
      double power,
      double torque,
      double chipVolume,
      double deflection,
      double taper,
      boolean rubs) {}
}
