/**
 * The stock as it is being cut. A move's cut is the volume that the tool's cutting part sweeps;
 * what is left after k moves is the stock less the first k cuts. Nothing is stored as a distance:
 * each node of an octree keeps which moves may cut in it, each lattice point of a brick the first
 * move that made it air. So a moment before or after costs a comparison, and every answer can be
 * made again from the moves. Three axes: the tool stands along Z.
 */
package flankfit.metal;
