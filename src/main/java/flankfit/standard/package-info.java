/**
 * Thread designations, limits of size and plug gauges, by the standards' own formulas.
 *
 * <p>{@link flankfit.standard.Designations#parse} reads a designation. Limits are counted in whole
 * steps of the last printed decimal, micrometres or ten-thousandths of an inch, and become
 * millimetres at the end; formula code keeps the letters of its source. Limits are for uncoated
 * threads of normal length of engagement at 20 degrees Celsius. Gauge tolerances are from memory of
 * ISO 1502 and ASME B1.2 and say so in {@link flankfit.standard.PlugGauges#rule}. Not known here:
 * MJ, UNJ, pipe, Acme and trapezoidal threads, and Unified threads of several starts.
 */
package flankfit.standard;
