package flankfit.standard;

import flankfit.unit.LengthUnit;

/**
 * Limits of size of ISO metric threads, in micrometres. Basic sizes are rounded to a micrometre
 * first, as ISO 724 prints them.
 *
 * @see "ISO 965-1, clause 13; ISO 724"
 */
final class MetricLimits {
  private MetricLimits() {}

  /** Limits of a thread of diameter d and pitch P (µm). */
  static StepLimits of(long d, long P, MetricClass threadClass) {
    return threadClass.internal() ? nut(d, P, threadClass) : screw(d, P, threadClass);
  }

  private static StepLimits nut(long D, long P, MetricClass threadClass) {
    long EI = MetricTolerances.deviation(threadClass.position(), P);
    long D2 = basicPitch(D, P) + EI;
    long D1 = basicMinor(D, P) + EI;
    return new StepLimits(
        LengthUnit.MILLIMETRE,
        1000,
        true,
        D + EI,
        D + EI,
        D2,
        D2 + MetricTolerances.pitchNut(D, P, threadClass.pitchGrade()),
        D1,
        D1 + MetricTolerances.minorNut(P, threadClass.crestGrade()));
  }

  private static StepLimits screw(long d, long P, MetricClass threadClass) {
    long es = MetricTolerances.deviation(threadClass.position(), P);
    long d2 = basicPitch(d, P) - es;
    long d1 = basicMinor(d, P) - es;
    return new StepLimits(
        LengthUnit.MILLIMETRE,
        1000,
        false,
        d - es - MetricTolerances.majorScrew(P, threadClass.crestGrade()),
        d - es,
        d2 - MetricTolerances.pitchScrew(d, P, threadClass.pitchGrade()),
        d2,
        d1,
        d1);
  }

  private static long basicPitch(long d, long P) {
    return Rounding.steps(d - BasicProfile.MAJOR_TO_PITCH * P);
  }

  private static long basicMinor(long d, long P) {
    return Rounding.steps(d - BasicProfile.MAJOR_TO_MINOR * P);
  }
}
