/**
 * Finds threads in the motion, measures the surface they leave, and says what GO and NO-GO gauges
 * will do. The surface is that of the endless regular helix: entry and exit arcs, deflection and
 * run-out are not part of it, and each answer lists that. Plugs are held central.
 */
package flankfit.gauge;
