package flankfit.standard;

import flankfit.unit.LengthUnit;
import java.util.OptionalDouble;

/**
 * Limits of size as whole steps of the last decimal: micrometres for metric threads,
 * ten-thousandths of an inch for Unified ones. Whole numbers keep the printed digits exact.
 *
 * @param unit unit of the figures
 * @param stepsPerUnit steps in one unit (1)
 * @param internal whether a nut's
 * @param majorMin least major diameter (steps)
 * @param majorMax greatest major diameter (steps); not used of a nut
 * @param pitchMin least pitch diameter (steps)
 * @param pitchMax greatest pitch diameter (steps)
 * @param minorMin least minor diameter (steps); not used of a screw
 * @param minorMax greatest minor diameter (steps)
 */
record StepLimits(
    LengthUnit unit,
    int stepsPerUnit,
    boolean internal,
    long majorMin,
    long majorMax,
    long pitchMin,
    long pitchMax,
    long minorMin,
    long minorMax) {
  /** These many steps as a length (mm). */
  double millimetres(double steps) {
    return unit.toMillimetres(steps / stepsPerUnit);
  }

  /** A whole number of steps as a length (mm). */
  double millimetres(long steps) {
    return millimetres((double) steps);
  }

  /** The limits as lengths (mm). */
  Limits toLimits() {
    return new Limits(
        OptionalDouble.of(millimetres(majorMin)),
        internal ? OptionalDouble.empty() : OptionalDouble.of(millimetres(majorMax)),
        millimetres(pitchMin),
        millimetres(pitchMax),
        internal ? OptionalDouble.of(millimetres(minorMin)) : OptionalDouble.empty(),
        OptionalDouble.of(millimetres(minorMax)));
  }
}
