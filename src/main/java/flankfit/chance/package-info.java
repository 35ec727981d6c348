/**
 * Chance without threads: how quantities scatter, draws that fill the space evenly, shares of a
 * variance, functions held as tables, beliefs over a grid.
 */
package flankfit.chance;
