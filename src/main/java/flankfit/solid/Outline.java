package flankfit.solid;

/**
 * Loops on a plane.
 *
 * @param places right and up of each point (mm)
 * @param makers of the piece that starts at each point
 * @param starts first point of each loop, and the number of points
 */
record Outline(double[] places, int[] makers, int[] starts) {}
