package flankfit.standard;

import java.util.OptionalDouble;

/**
 * Limits of size of a thread (mm). For an internal thread the greatest major diameter is not
 * limited, for an external one the least minor diameter is not: those are empty.
 *
 * @param majorMin least major diameter (mm)
 * @param majorMax greatest major diameter (mm), empty where the standard sets none
 * @param pitchMin least pitch diameter (mm)
 * @param pitchMax greatest pitch diameter (mm)
 * @param minorMin least minor diameter (mm), empty where the standard sets none
 * @param minorMax greatest minor diameter (mm), empty where the standard sets none
 */
public record Limits(
    OptionalDouble majorMin,
    OptionalDouble majorMax,
    double pitchMin,
    double pitchMax,
    OptionalDouble minorMin,
    OptionalDouble minorMax) {}
