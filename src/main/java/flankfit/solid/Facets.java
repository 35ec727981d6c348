package flankfit.solid;

/** Triangles of a welded mesh. */
final class Facets {
  private final double[] places;
  private final int[] corners;

  Facets(double[] places, int[] corners) {
    this.places = places;
    this.corners = corners;
  }

  /** X, y, z of each vertex (mm). */
  double[] places() {
    return places;
  }

  /** Vertices of each triangle, counter-clockwise seen from outside. */
  int[] corners() {
    return corners;
  }

  int count() {
    return corners.length / 3;
  }

  double place(int facet, int corner, int axis) {
    return places[3 * corners[3 * facet + corner] + axis];
  }

  /** Coordinate of the normal, not of unit length: twice the area (mm²). */
  double normal(int facet, int axis) {
    int u = (axis + 1) % 3;
    int v = (axis + 2) % 3;
    double au = place(facet, 0, u);
    double av = place(facet, 0, v);
    return (place(facet, 1, u) - au) * (place(facet, 2, v) - av)
        - (place(facet, 1, v) - av) * (place(facet, 2, u) - au);
  }

  /** Enclosed volume (mm³), negative where the facets look inward. */
  double volume() {
    double six = 0;
    for (int f = 0; f < count(); f++) {
      double sum = 0;
      for (int axis = 0; axis < 3; axis++) {
        sum += (place(f, 0, axis) - places[axis]) * normal(f, axis);
      }
      six += sum;
    }
    return six / 6;
  }
}
