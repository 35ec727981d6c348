package flankfit.standard;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Plug gauges for internal ISO metric threads. Letters are those of the source: T_PL tolerance,
 * Z_PL offset of the GO plug, W_GO and W_NG wear.
 *
 * @see "ISO 1502; formulas as in GOST 24997-81, table 11; tolerance table and major diameters from
 *     memory of ISO 1502:1996, unverified"
 */
final class MetricGauges {
  /** Turns the NO-GO plug may enter from either end, by hand. */
  private static final double TURNS = 2;

  private static final String RULE =
      "ISO 1502: NO-GO enters at most 2 turns from either end, by hand; sizes by the formulas of"
          + " GOST 24997-81 table 11, tolerances and major diameters from memory of ISO 1502:1996;"
          + " gauge limits: check against the standard";

  // T_D2 up to, T_PL, Z_PL, W_GO, W_NG (µm); the first row starts over 24.
  private static final double[][] TABLE = {
    {50, 6, 0, 8, 6},
    {80, 7, 2, 9.5, 7.5},
    {125, 9, 6, 12.5, 9.5},
    {200, 11, 12, 17.5, 11.5},
    {315, 14, 16, 21, 15},
    {500, 18, 24, 27, 19},
    {670, 22, 32, 33, 23}
  };

  private MetricGauges() {}

  /**
   * Gauges for a nut; empty where the table has no tolerance so large.
   *
   * @param nut limits of the nut (µm)
   * @param P pitch (µm)
   */
  static Optional<PlugGauges> of(StepLimits nut, long P) {
    long T_D2 = nut.pitchMax() - nut.pitchMin();
    for (double[] row : TABLE) {
      if (T_D2 <= row[0]) {
        GaugeLimits limits = limits(nut, P, row);
        double plainGo = nut.millimetres(nut.minorMin());
        double plainNoGo = nut.millimetres(nut.minorMax());
        return Optional.of(PlugGauges.within(limits, TURNS, plainGo, plainNoGo, RULE));
      }
    }
    return Optional.empty();
  }

  private static GaugeLimits limits(StepLimits nut, long P, double[] row) {
    double T_PL = row[1];
    double Z_PL = row[2];
    double go = nut.pitchMin() + Z_PL;
    double goMajor = nut.majorMin() + Z_PL;
    double noGo = nut.pitchMax() + T_PL / 2;
    double noGoMajor = noGo + 0.2 * P;
    return new GaugeLimits(
        nut.millimetres(go - T_PL / 2),
        nut.millimetres(go + T_PL / 2),
        nut.millimetres(go - row[3]),
        nut.millimetres(goMajor - T_PL),
        nut.millimetres(goMajor + T_PL),
        nut.millimetres(noGo - T_PL / 2),
        nut.millimetres(noGo + T_PL / 2),
        OptionalDouble.of(nut.millimetres(noGo - row[4])),
        nut.millimetres(noGoMajor - T_PL),
        nut.millimetres(noGoMajor + T_PL));
  }
}
