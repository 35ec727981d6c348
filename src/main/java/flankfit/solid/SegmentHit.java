package flankfit.solid;

/** The first facet that a segment leaves through; one for each question. */
final class SegmentHit {
  private final Facets facets;
  private final FacetTree tree;
  private final double[] from;
  private final double[] along;
  private double share = Double.POSITIVE_INFINITY;
  private int facet = -1;

  SegmentHit(
      Facets facets,
      FacetTree tree,
      double fx,
      double fy,
      double fz,
      double tx,
      double ty,
      double tz) {
    this.facets = facets;
    this.tree = tree;
    from = new double[] {fx, fy, fz};
    along = new double[] {tx - fx, ty - fy, tz - fz};
    visit(0);
  }

  private void visit(int node) {
    if (tree.count(node) == 0 || !reaches(node)) {
      return;
    }
    if (tree.isLeaf(node)) {
      for (int i = 0; i < tree.count(node); i++) {
        meet(tree.facet(node, i));
      }
    } else {
      visit(2 * node + 1);
      visit(2 * node + 2);
    }
  }

  private boolean reaches(int node) {
    double enter = 0;
    double leave = Math.min(1, share);
    for (int axis = 0; axis < 3; axis++) {
      double low = tree.low(node, axis) - from[axis];
      double high = tree.high(node, axis) - from[axis];
      if (along[axis] == 0) {
        if (low > 0 || high < 0) {
          return false;
        }
      } else {
        double a = low / along[axis];
        double b = high / along[axis];
        enter = Math.max(enter, Math.min(a, b));
        leave = Math.min(leave, Math.max(a, b));
      }
    }
    // a box without thickness is met within rounding
    return enter <= leave + 1e-12;
  }

  /** A facet is left through where the segment passes to the left of all its edges. */
  private void meet(int f) {
    double slope = 0;
    double height = 0;
    for (int axis = 0; axis < 3; axis++) {
      slope += facets.normal(f, axis) * along[axis];
      height += facets.normal(f, axis) * (facets.place(f, 0, axis) - from[axis]);
    }
    if (!(slope > 0)) {
      return;
    }
    double at = height / slope;
    if (!(at >= 0 && at <= 1) || at > share || (at == share && f > facet)) {
      return;
    }
    for (int corner = 0; corner < 3; corner++) {
      if (leftOf(f, corner, (corner + 1) % 3) < 0) {
        return;
      }
    }
    share = at;
    facet = f;
  }

  /** Sign of the volume between the segment's line and an edge. */
  private double leftOf(int f, int a, int b) {
    double ax = facets.place(f, a, 0) - from[0];
    double ay = facets.place(f, a, 1) - from[1];
    double az = facets.place(f, a, 2) - from[2];
    double bx = facets.place(f, b, 0) - from[0];
    double by = facets.place(f, b, 1) - from[1];
    double bz = facets.place(f, b, 2) - from[2];
    return along[0] * (ay * bz - az * by)
        + along[1] * (az * bx - ax * bz)
        + along[2] * (ax * by - ay * bx);
  }

  /** The facet, or -1. */
  int facet() {
    return facet;
  }

  /** Share of the segment before it. */
  double share() {
    return share;
  }
}
