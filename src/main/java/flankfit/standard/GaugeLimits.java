package flankfit.standard;

import java.util.OptionalDouble;

/**
 * Limits of new thread plug gauges and how far they may wear (mm).
 *
 * @param goPitchMin least pitch diameter of a new GO plug (mm)
 * @param goPitchMax greatest pitch diameter of a new GO plug (mm)
 * @param goPitchWear pitch diameter down to which the GO plug may wear (mm)
 * @param goMajorMin least major diameter of the GO plug (mm)
 * @param goMajorMax greatest major diameter of the GO plug (mm)
 * @param noGoPitchMin least pitch diameter of a new NO-GO plug (mm)
 * @param noGoPitchMax greatest pitch diameter of a new NO-GO plug (mm)
 * @param noGoPitchWear pitch diameter down to which the NO-GO plug may wear (mm); empty where no
 *     rule is known
 * @param noGoMajorMin least major diameter of the NO-GO plug (mm)
 * @param noGoMajorMax greatest major diameter of the NO-GO plug (mm)
 */
public record GaugeLimits(
    double goPitchMin,
    double goPitchMax,
    double goPitchWear,
    double goMajorMin,
    double goMajorMax,
    double noGoPitchMin,
    double noGoPitchMax,
    OptionalDouble noGoPitchWear,
    double noGoMajorMin,
    double noGoMajorMax) {}
