package flankfit.solid;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** What a mesh must be to be stock. */
final class FacetChecks {
  /** No stock on a milling machine is longer (mm). */
  private static final double LONGEST = 10_000;

  /** No stock is thinner (mm). */
  private static final double THINNEST = 0.01;

  private final String name;
  private final Facets facets;

  FacetChecks(String name, Facets facets) {
    this.name = name;
    this.facets = facets;
  }

  void checkSize() throws MeshFileException {
    double[] sides = new double[3];
    double longest = 0;
    double thinnest = Double.POSITIVE_INFINITY;
    for (int axis = 0; axis < 3; axis++) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int at = axis; at < facets.places().length; at += 3) {
        low = Math.min(low, facets.places()[at]);
        high = Math.max(high, facets.places()[at]);
      }
      sides[axis] = high - low;
      longest = Math.max(longest, Math.max(sides[axis], Math.max(high, -low)));
      thinnest = Math.min(thinnest, sides[axis]);
    }
    if (longest > LONGEST || thinnest < THINNEST) {
      throw new MeshFileException(
          String.format(
              Locale.ROOT,
              "%s measures %.3f by %.3f by %.3f mm and reaches %.3f mm from the origin",
              name,
              sides[0],
              sides[1],
              sides[2],
              longest),
          String.format(
              Locale.ROOT,
              "stock is between %.2f and %.0f mm; coordinates are read as millimetres",
              THINNEST,
              LONGEST),
          "export the stock in millimetres, in the part's frame");
    }
  }

  void checkClosed() throws MeshFileException {
    // in the order of the facets, so that the first place told is always the same
    Map<Long, Integer> balance = new HashMap<>();
    for (int f = 0; f < facets.count(); f++) {
      for (int corner = 0; corner < 3; corner++) {
        int a = facets.corners()[3 * f + corner];
        int b = facets.corners()[3 * f + (corner + 1) % 3];
        balance.merge(edge(a, b), a < b ? 1 : -1, Integer::sum);
      }
    }
    int open = 0;
    int twisted = 0;
    String place = "";
    for (int f = 0; f < facets.count(); f++) {
      for (int corner = 0; corner < 3; corner++) {
        int a = facets.corners()[3 * f + corner];
        int b = facets.corners()[3 * f + (corner + 1) % 3];
        int left = balance.getOrDefault(edge(a, b), 0);
        if (left != 0) {
          place = place.isEmpty() ? "from " + at(a) + " to " + at(b) : place;
          if (left % 2 == 0) {
            twisted++;
          } else {
            open++;
          }
          // each edge is told once
          balance.put(edge(a, b), 0);
        }
      }
    }
    if (open > 0) {
      throw new MeshFileException(
          name
              + " is not closed: "
              + open
              + " edges have a facet on one side only, first: "
              + place,
          "only a closed mesh has an inside",
          "close the stock in the program that made it, and export it again");
    }
    if (twisted > 0) {
      throw new MeshFileException(
          name
              + " has facets that face opposite ways beside "
              + twisted
              + " edges, first: "
              + place,
          "inside and outside are told from the order of the corners",
          "make all facets face outward and export the stock again");
    }
    double volume = facets.volume();
    if (!(volume > 0)) {
      throw new MeshFileException(
          String.format(Locale.ROOT, "%s is inside out: its volume is %.3f mm\u00b3", name, volume),
          "corners of a facet run counter-clockwise seen from outside",
          "turn all facets round and export the stock again");
    }
  }

  private static long edge(int a, int b) {
    return (long) Math.min(a, b) << 32 | Math.max(a, b);
  }

  private String at(int vertex) {
    return at(facets.places(), 3 * vertex);
  }

  static String at(double[] places, int at) {
    return String.format(
        Locale.ROOT, "X%.3f Y%.3f Z%.3f", places[at], places[at + 1], places[at + 2]);
  }
}
