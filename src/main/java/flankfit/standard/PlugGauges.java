package flankfit.standard;

/**
 * Plug gauges for an internal thread (mm), as new at the middle of their own tolerance.
 *
 * @param goPitch pitch diameter of the GO thread plug (mm)
 * @param goMajorMin least major diameter of the GO thread plug (mm)
 * @param noGoPitch pitch diameter of the NO-GO thread plug (mm)
 * @param noGoMajorMax greatest major diameter of the NO-GO thread plug (mm)
 * @param turnsAllowed turns the NO-GO plug may enter and the thread still be accepted (1)
 * @param plainGo diameter of the plain GO plug (mm)
 * @param plainNoGo diameter of the plain NO-GO plug (mm)
 * @param rule where the turns rule and the sizes come from, and how sure that is
 */
public record PlugGauges(
    double goPitch,
    double goMajorMin,
    double noGoPitch,
    double noGoMajorMax,
    double turnsAllowed,
    double plainGo,
    double plainNoGo,
    String rule) {}
