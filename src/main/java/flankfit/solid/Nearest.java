package flankfit.solid;

/** The facet nearest to a place; one for each question. */
final class Nearest {
  private final Facets facets;
  private final FacetTree tree;
  private final double x;
  private final double y;
  private final double z;
  private double square = Double.POSITIVE_INFINITY;
  private int facet = -1;

  Nearest(Facets facets, FacetTree tree, double x, double y, double z) {
    this.facets = facets;
    this.tree = tree;
    this.x = x;
    this.y = y;
    this.z = z;
    visit(0);
  }

  private void visit(int node) {
    if (tree.count(node) == 0) {
      return;
    }
    if (tree.isLeaf(node)) {
      for (int i = 0; i < tree.count(node); i++) {
        int candidate = tree.facet(node, i);
        double found = squareTo(candidate);
        if (found < square || (found == square && candidate < facet)) {
          square = found;
          facet = candidate;
        }
      }
      return;
    }
    int near = 2 * node + 1;
    int far = 2 * node + 2;
    double toNear = tree.squareTo(near, x, y, z);
    double toFar = tree.squareTo(far, x, y, z);
    if (toFar < toNear) {
      near = far;
      far = 2 * node + 1;
      double swap = toNear;
      toNear = toFar;
      toFar = swap;
    }
    if (toNear <= square) {
      visit(near);
    }
    if (toFar <= square) {
      visit(far);
    }
  }

  /**
   * Square of the distance to a facet, by the region of the triangle that is nearest.
   *
   * @see "C. Ericson, Real-Time Collision Detection, 5.1.5; from memory"
   */
  private double squareTo(int f) {
    double ax = facets.place(f, 0, 0);
    double ay = facets.place(f, 0, 1);
    double az = facets.place(f, 0, 2);
    double ux = facets.place(f, 1, 0) - ax;
    double uy = facets.place(f, 1, 1) - ay;
    double uz = facets.place(f, 1, 2) - az;
    double vx = facets.place(f, 2, 0) - ax;
    double vy = facets.place(f, 2, 1) - ay;
    double vz = facets.place(f, 2, 2) - az;
    double px = x - ax;
    double py = y - ay;
    double pz = z - az;
    double d1 = ux * px + uy * py + uz * pz;
    double d2 = vx * px + vy * py + vz * pz;
    if (d1 <= 0 && d2 <= 0) {
      return px * px + py * py + pz * pz;
    }
    double uu = ux * ux + uy * uy + uz * uz;
    double uv = ux * vx + uy * vy + uz * vz;
    double vv = vx * vx + vy * vy + vz * vz;
    double d3 = d1 - uu;
    double d4 = d2 - uv;
    double d5 = d1 - uv;
    double d6 = d2 - vv;
    double s;
    double t;
    if (d3 >= 0 && d4 <= d3) {
      s = 1;
      t = 0;
    } else if (d6 >= 0 && d5 <= d6) {
      s = 0;
      t = 1;
    } else {
      double vc = d1 * d4 - d3 * d2;
      double vb = d5 * d2 - d1 * d6;
      double va = d3 * d6 - d5 * d4;
      if (vc <= 0 && d1 >= 0 && d3 <= 0) {
        s = d1 / (d1 - d3);
        t = 0;
      } else if (vb <= 0 && d2 >= 0 && d6 <= 0) {
        s = 0;
        t = d2 / (d2 - d6);
      } else if (va <= 0 && d4 >= d3 && d5 >= d6) {
        t = (d4 - d3) / (d4 - d3 + d5 - d6);
        s = 1 - t;
      } else {
        double sum = va + vb + vc;
        s = vb / sum;
        t = vc / sum;
      }
    }
    double dx = px - s * ux - t * vx;
    double dy = py - s * uy - t * vy;
    double dz = pz - s * uz - t * vz;
    return dx * dx + dy * dy + dz * dz;
  }

  double distance() {
    return Math.sqrt(square);
  }

  int facet() {
    return facet;
  }
}
