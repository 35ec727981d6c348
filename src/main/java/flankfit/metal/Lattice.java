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
  /** What rounding may put a corner of a cube out of it (mm). */
  private static final double SLACK = 1e-9;

  double x(double index) {
    return originX + index * cell;
  }

  double y(double index) {
    return originY + index * cell;
  }

  double z(double index) {
    return originZ + index * cell;
  }

  /** Place of a point along X in cells, rounded down (1). */
  double i(double x) {
    return Math.floor((x - originX) / cell);
  }

  /** Place of a point along Y in cells, rounded down (1). */
  double j(double y) {
    return Math.floor((y - originY) / cell);
  }

  /** Place of a point along Z in cells, rounded down (1). */
  double k(double z) {
    return Math.floor((z - originZ) / cell);
  }

  /** Whether a cube of the octree holds a point, or misses it by no more than rounding does. */
  boolean holds(Node node, double x, double y, double z) {
    return x >= x(node.x) - SLACK
        && y >= y(node.y) - SLACK
        && z >= z(node.z) - SLACK
        && x <= x(node.x + (double) node.size) + SLACK
        && y <= y(node.y + (double) node.size) + SLACK
        && z <= z(node.z + (double) node.size) + SLACK;
  }
}
