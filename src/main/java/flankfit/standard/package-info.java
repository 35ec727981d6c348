/** Thread designations, limits of size and plug gauges, by the standards' own formulas. */
package flankfit.standard;
