package flankfit.standard;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Plug gauges for internal Unified threads with X tolerances.
 *
 * @see "ASME B1.2-1983, clauses 3.4, 3.5, 4.1, 4.2 and 4.8; tolerance table, its directions and the
 *     NO-GO major diameter from memory, unverified"
 */
final class UnifiedGauges {
  /** Complete turns the NO-GO plug may enter. */
  private static final double TURNS = 3;

  /** Largest diameter of the tolerance table, and where its pitch-diameter column changes (in). */
  private static final double LARGEST = 4;

  private static final double LARGE_FROM = 1.5;

  private static final String RULE =
      "ASME B1.2 paragraph 5.2.1: NO-GO drags on or before the third turn, more than 3 complete"
          + " turns reject; X tolerances and NO-GO major diameter from memory of ASME B1.2-1983,"
          + " wear down to the product limit is common practice, no source;"
          + " gauge limits: check against the standard";

  // From this many threads per inch up: tolerance of the major diameter, of the pitch diameter to
  // 1.5 in, and above (0.0001 in). A number between the rows takes the coarser row.
  private static final double[][] X = {
    {72, 3, 2, 3},
    {48, 4, 2, 3},
    {36, 4, 2, 3},
    {20, 5, 3, 4},
    {18, 5, 3, 4},
    {10, 6, 3, 4},
    {9, 7, 3, 4},
    {7, 7, 4, 5},
    {4.5, 8, 4, 5},
    {4, 9, 4, 5}
  };

  private UnifiedGauges() {}

  /**
   * Gauges for a nut; empty beyond 4 in or coarser than 4 threads per inch, where no tolerance is
   * known here.
   *
   * @param nut limits of the nut (0.0001 in)
   * @param size basic major diameter
   * @param n threads per inch (1)
   */
  static Optional<PlugGauges> of(StepLimits nut, InchSize size, double n) {
    if (size.inches() > LARGEST) {
      return Optional.empty();
    }
    for (double[] row : X) {
      if (n >= row[0]) {
        double xPitch = size.inches() <= LARGE_FROM ? row[2] : row[3];
        double plainGo = nut.millimetres(nut.minorMin());
        double plainNoGo = nut.millimetres(nut.minorMax());
        GaugeLimits limits = limits(nut, n, xPitch, row[1]);
        return Optional.of(PlugGauges.within(limits, TURNS, plainGo, plainNoGo, RULE));
      }
    }
    return Optional.empty();
  }

  private static GaugeLimits limits(StepLimits nut, double n, double xPitch, double xMajor) {
    double halfH = BasicProfile.sharpHeight(1 / n) / 2;
    long noGoMajor = nut.pitchMax() + Rounding.steps(halfH * nut.stepsPerUnit());
    return new GaugeLimits(
        nut.millimetres(nut.pitchMin()),
        nut.millimetres(nut.pitchMin() + xPitch),
        nut.millimetres(nut.pitchMin()),
        nut.millimetres(nut.majorMin()),
        nut.millimetres(nut.majorMin() + xMajor),
        nut.millimetres(nut.pitchMax() - xPitch),
        nut.millimetres(nut.pitchMax()),
        OptionalDouble.empty(),
        nut.millimetres(noGoMajor - xMajor),
        nut.millimetres(noGoMajor));
  }
}
