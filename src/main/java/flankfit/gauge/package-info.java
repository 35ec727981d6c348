/**
 * Finds threads in the motion, measures the surface they leave, and says what GO and NO-GO gauges
 * will do. The surface is that of the endless regular helix: entry and exit arcs, deflection and
 * run-out are not part of it, and each answer lists that. Plugs are held central.
 *
 * <p>A wall over the whole turn, of a real and finite path, is read once into a {@link
 * flankfit.gauge.WallField}. {@link flankfit.gauge.Travel} screws gauges into it, free to turn and
 * to shift sideways but upright, {@link flankfit.gauge.TurnsRuling} rules on the NO-GO gauge's
 * turns and {@link flankfit.gauge.WallMeasures} measures. What is decided there rests on one linear
 * program, {@link flankfit.gauge.LargestGauge}.
 */
package flankfit.gauge;
