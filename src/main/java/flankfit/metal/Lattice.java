package flankfit.metal;

/**
 * Where lattice points lie.
 *
 * @param originX place of point 0 0 0 (mm)
 * @param originY place of point 0 0 0 (mm)
 * @param originZ place of point 0 0 0 (mm)
 * @param cell side of the finest cells (mm)
 */
record Lattice(double originX, double originY, double originZ, double cell) {
  double x(double index) {
    return originX + index * cell;
  }

  double y(double index) {
    return originY + index * cell;
  }

  double z(double index) {
    return originZ + index * cell;
  }
}
