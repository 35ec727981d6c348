package flankfit.solid;

/** Boxes around boxes around facets, halved at the middle facet of the longest side. */
final class FacetTree {
  private static final int LEAF = 4;

  private final Facets facets;
  private final int[] order;

  /** Low and high of each node's box. */
  private final double[] boxes;

  /** First facet and number of facets of each node; children of node i are 2i+1 and 2i+2. */
  private final int[] starts;

  private final int[] counts;

  FacetTree(Facets facets) {
    this.facets = facets;
    int count = facets.count();
    order = new int[count];
    for (int i = 0; i < count; i++) {
      order[i] = i;
    }
    int levels = 1;
    while ((long) LEAF << (levels - 1) < count) {
      levels++;
    }
    int nodes = (1 << levels) - 1;
    boxes = new double[6 * nodes];
    starts = new int[nodes];
    counts = new int[nodes];
    build(0, 0, count, nodes);
  }

  private void build(int node, int start, int count, int nodes) {
    starts[node] = start;
    counts[node] = count;
    for (int axis = 0; axis < 3; axis++) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int i = start; i < start + count; i++) {
        for (int corner = 0; corner < 3; corner++) {
          double value = facets.place(order[i], corner, axis);
          low = Math.min(low, value);
          high = Math.max(high, value);
        }
      }
      boxes[6 * node + axis] = low;
      boxes[6 * node + 3 + axis] = high;
    }
    if (2 * node + 2 < nodes) {
      int axis = 0;
      for (int other = 1; other < 3; other++) {
        if (side(node, other) > side(node, axis)) {
          axis = other;
        }
      }
      int half = count / 2;
      select(start, start + count - 1, start + half, axis);
      build(2 * node + 1, start, half, nodes);
      build(2 * node + 2, start + half, count - half, nodes);
    }
  }

  private double side(int node, int axis) {
    return boxes[6 * node + 3 + axis] - boxes[6 * node + axis];
  }

  private double centre(int facet, int axis) {
    return facets.place(facet, 0, axis)
        + facets.place(facet, 1, axis)
        + facets.place(facet, 2, axis);
  }

  /** Puts the facet that belongs at a place there, lesser ones before, greater ones after it. */
  private void select(int first, int last, int place, int axis) {
    int low = first;
    int high = last;
    while (low < high) {
      double pivot = centre(order[(low + high) >>> 1], axis);
      int i = low;
      int j = high;
      while (i <= j) {
        while (centre(order[i], axis) < pivot) {
          i++;
        }
        while (centre(order[j], axis) > pivot) {
          j--;
        }
        if (i <= j) {
          int swap = order[i];
          order[i++] = order[j];
          order[j--] = swap;
        }
      }
      if (place <= j) {
        high = j;
      } else if (place >= i) {
        low = i;
      } else {
        return;
      }
    }
  }

  int count(int node) {
    return counts[node];
  }

  boolean isLeaf(int node) {
    return 2 * node + 2 >= starts.length;
  }

  /** Facet number i of a node. */
  int facet(int node, int i) {
    return order[starts[node] + i];
  }

  double low(int node, int axis) {
    return boxes[6 * node + axis];
  }

  double high(int node, int axis) {
    return boxes[6 * node + 3 + axis];
  }

  /** Square of the distance from a place to a node's box (mm²); 0 inside. */
  double squareTo(int node, double x, double y, double z) {
    double dx = Math.max(0, Math.max(low(node, 0) - x, x - high(node, 0)));
    double dy = Math.max(0, Math.max(low(node, 1) - y, y - high(node, 1)));
    double dz = Math.max(0, Math.max(low(node, 2) - z, z - high(node, 2)));
    return dx * dx + dy * dy + dz * dz;
  }

  /** Whether two boxes have a place in common. */
  boolean meets(int node, int other) {
    boolean meets = true;
    for (int axis = 0; axis < 3; axis++) {
      meets &= low(node, axis) <= high(other, axis) && low(other, axis) <= high(node, axis);
    }
    return meets;
  }
}
