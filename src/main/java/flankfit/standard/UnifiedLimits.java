package flankfit.standard;

import flankfit.unit.LengthUnit;

/**
 * Limits of size of Unified threads, in ten-thousandths of an inch. Letters as in ASME B1.1: D, P,
 * LE, Td2, es; lengths within in inches.
 *
 * <p>Rounded as the tables were: P to eight decimals, products and Td2 to six, then basic pitch
 * diameter, allowance and every tolerance to four before they are added.
 *
 * @see "ASME B1.1-2003, paragraphs 5.1, 5.8.1 and 5.8.2"
 */
final class UnifiedLimits {
  private static final int STEPS = 10_000;

  /** Smallest diameter whose minor diameters are printed to three decimals: number 6 (in). */
  private static final double THREE_DECIMALS_FROM = 0.138;

  private final double D;
  private final double n;
  private final double P;
  private final double LE;
  private final UnifiedClass threadClass;

  private UnifiedLimits(InchSize size, double n, UnifiedSeries series, UnifiedClass threadClass) {
    this.D = size.inches();
    this.n = n;
    this.P = Rounding.decimals(1 / n, 8);
    this.LE = engagementIsDiameter(series) ? D : 9 * P;
    this.threadClass = threadClass;
  }

  /** Limits of a thread: size, threads per inch, series, class. */
  static StepLimits of(InchSize size, double n, UnifiedSeries series, UnifiedClass threadClass) {
    UnifiedLimits limits = new UnifiedLimits(size, n, series, threadClass);
    return threadClass.internal() ? limits.nut() : limits.screw();
  }

  private StepLimits nut() {
    long D2 = basicPitch();
    long D1 = steps(D - Rounding.decimals(BasicProfile.MAJOR_TO_MINOR * P, 6));
    long least = D < THREE_DECIMALS_FROM ? D1 : Rounding.tens(D1);
    long greatest = D1 + steps(minorTolerance());
    boolean threeDecimals = D >= THREE_DECIMALS_FROM && !threadClass.close();
    return new StepLimits(
        LengthUnit.INCH,
        STEPS,
        true,
        steps(D),
        steps(D),
        D2,
        D2 + pitchTolerance(),
        least,
        threeDecimals ? Rounding.tens(greatest) : greatest);
  }

  private StepLimits screw() {
    long es = threadClass.close() ? 0 : steps(0.300 * Td2());
    long d = steps(D) - es;
    long d2 = basicPitch() - es;
    long d1 = steps(D - BasicProfile.MAJOR_TO_MINOR * P) - es;
    return new StepLimits(
        LengthUnit.INCH,
        STEPS,
        false,
        d - steps(majorTolerance()),
        d,
        d2 - pitchTolerance(),
        d2,
        d1,
        d1);
  }

  private long basicPitch() {
    return steps(D - Rounding.decimals(BasicProfile.MAJOR_TO_PITCH * P, 6));
  }

  private long pitchTolerance() {
    return steps(threadClass.pitchFactor() * Td2());
  }

  /** Pitch-diameter tolerance of class 2A (in). */
  private double Td2() {
    double sum = 0.0015 * StrictMath.cbrt(D) + 0.0015 * Math.sqrt(LE) + 0.015 * pitchToTwoThirds();
    return Rounding.decimals(sum, 6);
  }

  private double majorTolerance() {
    return (threadClass.loose() ? 0.090 : 0.060) * pitchToTwoThirds();
  }

  /** Minor-diameter tolerance of a nut (in), paragraph 5.8.2 (c). */
  private double minorTolerance() {
    double bySize = Math.min(0.05 * pitchToTwoThirds() + 0.03 * P / D - 0.002, 0.394 * P);
    if (threadClass.close()) {
      return Math.max(bySize, n >= 13 ? 0.23 * P - 1.5 * P * P : 0.12 * P);
    }
    double byPitch = 0.25 * P - 0.40 * P * P;
    if (D < 0.250) {
      return Math.max(bySize, byPitch);
    }
    return n >= 4 ? byPitch : 0.15 * P;
  }

  private double pitchToTwoThirds() {
    return StrictMath.pow(P, 2 / 3.0);
  }

  /**
   * Whether the tables count on an engagement of one diameter instead of nine pitches, paragraph
   * 5.1. The printed 1-14 UNS has it too, though it is a special thread.
   */
  private boolean engagementIsDiameter(UnifiedSeries series) {
    return switch (series) {
      case UNC, UNF -> true;
      case UNEF -> false;
      case UN -> n == 4 || n == 6 || n == 8;
      case UNS -> D == 1 && n == 14;
    };
  }

  private static long steps(double inches) {
    return Rounding.steps(inches * STEPS);
  }
}
