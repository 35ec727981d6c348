package flankfit.solid;

/**
 * Finds facets that pass through each other: an edge of one goes through the inside of the other.
 * Facets that lie in one plane are not compared.
 */
final class FacetCrossings {
  /** Cuts nearer to an edge or end than this share of it are touching, not crossing. */
  private static final double TOUCH = 1e-6;

  private final String name;
  private final Facets facets;
  private final FacetTree tree;
  private int count;
  private final double[] place = new double[3];

  FacetCrossings(String name, Facets facets, FacetTree tree) {
    this.name = name;
    this.facets = facets;
    this.tree = tree;
  }

  void check() throws MeshFileException {
    visit(0, 0);
    if (count > 0) {
      throw new MeshFileException(
          name
              + " crosses itself: "
              + count
              + " pairs of facets, one of them at "
              + FacetChecks.at(place, 0),
          "where bodies overlap it is not told what is inside",
          "unite the bodies in the program that made them, and export the stock again");
    }
  }

  private void visit(int node, int other) {
    if (tree.count(node) == 0 || tree.count(other) == 0 || !tree.meets(node, other)) {
      return;
    }
    if (tree.isLeaf(node) && tree.isLeaf(other)) {
      for (int i = 0; i < tree.count(node); i++) {
        for (int j = node == other ? i + 1 : 0; j < tree.count(other); j++) {
          compare(tree.facet(node, i), tree.facet(other, j));
        }
      }
    } else if (node == other) {
      visit(2 * node + 1, 2 * node + 1);
      visit(2 * node + 2, 2 * node + 2);
      visit(2 * node + 1, 2 * node + 2);
    } else if (!tree.isLeaf(node)) {
      visit(2 * node + 1, other);
      visit(2 * node + 2, other);
    } else {
      visit(node, 2 * other + 1);
      visit(node, 2 * other + 2);
    }
  }

  private void compare(int f, int g) {
    boolean crosses = false;
    for (int corner = 0; corner < 3 && !crosses; corner++) {
      crosses = passes(f, corner, g) || passes(g, corner, f);
    }
    if (crosses) {
      count++;
    }
  }

  /** Whether an edge of one facet passes through the inside of the other. */
  private boolean passes(int f, int corner, int g) {
    int next = (corner + 1) % 3;
    double from = height(f, corner, g);
    double to = height(f, next, g);
    if (!((from < 0 && to > 0) || (from > 0 && to < 0))) {
      return false;
    }
    double share = from / (from - to);
    if (share < TOUCH || share > 1 - TOUCH) {
      return false;
    }
    double square = 0;
    double x = between(f, corner, next, share, 0);
    double y = between(f, corner, next, share, 1);
    double z = between(f, corner, next, share, 2);
    for (int axis = 0; axis < 3; axis++) {
      square += facets.normal(g, axis) * facets.normal(g, axis);
    }
    for (int k = 0; k < 3; k++) {
      int l = (k + 1) % 3;
      double ax = facets.place(g, k, 0) - x;
      double ay = facets.place(g, k, 1) - y;
      double az = facets.place(g, k, 2) - z;
      double bx = facets.place(g, l, 0) - x;
      double by = facets.place(g, l, 1) - y;
      double bz = facets.place(g, l, 2) - z;
      double part =
          facets.normal(g, 0) * (ay * bz - az * by)
              + facets.normal(g, 1) * (az * bx - ax * bz)
              + facets.normal(g, 2) * (ax * by - ay * bx);
      if (part < TOUCH * square) {
        return false;
      }
    }
    if (count == 0) {
      place[0] = x;
      place[1] = y;
      place[2] = z;
    }
    return true;
  }

  private double between(int f, int corner, int next, double share, int axis) {
    double a = facets.place(f, corner, axis);
    return a + share * (facets.place(f, next, axis) - a);
  }

  private double height(int f, int corner, int g) {
    double sum = 0;
    for (int axis = 0; axis < 3; axis++) {
      sum += facets.normal(g, axis) * (facets.place(f, corner, axis) - facets.place(g, 0, axis));
    }
    return sum;
  }
}
