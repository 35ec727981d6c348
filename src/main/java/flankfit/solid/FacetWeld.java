package flankfit.solid;

import java.util.HashMap;
import java.util.Map;

/**
 * Joins corners of facets that are one: nearer than a micrometre's thousandth, or than the last
 * digits of single precision at the mesh's size. Facets that lose a corner so are left out.
 */
final class FacetWeld {
  /** Points nearer than this are one (mm); the model's own nearness. */
  private static final double ONE = 1e-6;

  /** Last digit of single precision, as a share of the coordinate. */
  private static final double SINGLE = 0x1p-23;

  private record Place(double x, double y, double z) {}

  private record Box(long x, long y, long z) {}

  private final String name;
  private final Map<Place, Integer> exact = new HashMap<>();
  private final Map<Box, IntColumn> boxes = new HashMap<>();
  private final DoubleColumn places = new DoubleColumn();
  private double near;

  FacetWeld(String name) {
    this.name = name;
  }

  Facets weld(double[] corners) throws MeshFileException {
    double largest = 0;
    for (double value : corners) {
      largest = Math.max(largest, Math.abs(value));
    }
    near = Math.max(ONE, 2 * SINGLE * largest);
    IntColumn joined = new IntColumn();
    for (int at = 0; at < corners.length; at += 9) {
      int a = vertex(corners, at);
      int b = vertex(corners, at + 3);
      int c = vertex(corners, at + 6);
      if (a != b && b != c && c != a) {
        joined.add(a);
        joined.add(b);
        joined.add(c);
      }
    }
    if (joined.size() == 0) {
      throw new MeshFileException(
          name + " has no facet with area",
          "there is no stock to cut",
          "export the stock again as STL, in millimetres");
    }
    return new Facets(places.toArray(), IntColumn.joined(new IntColumn[] {joined}));
  }

  private int vertex(double[] corners, int at) {
    // adding zero makes one of the two zeros of floating point
    Place place = new Place(corners[at] + 0.0, corners[at + 1] + 0.0, corners[at + 2] + 0.0);
    Integer known = exact.get(place);
    if (known != null) {
      return known;
    }
    int found = beside(place);
    if (found < 0) {
      found = places.size() / 3;
      places.add(place.x(), place.y(), place.z());
      boxes
          .computeIfAbsent(
              new Box(box(place.x()), box(place.y()), box(place.z())), b -> new IntColumn())
          .add(found);
    }
    exact.put(place, found);
    return found;
  }

  private long box(double value) {
    return (long) Math.floor(value / (4 * near));
  }

  private int beside(Place p) {
    for (long x = box(p.x() - near); x <= box(p.x() + near); x++) {
      for (long y = box(p.y() - near); y <= box(p.y() + near); y++) {
        for (long z = box(p.z() - near); z <= box(p.z() + near); z++) {
          IntColumn inBox = boxes.get(new Box(x, y, z));
          for (int i = 0; inBox != null && i < inBox.size(); i++) {
            int v = inBox.get(i);
            double dx = places.get(3 * v) - p.x();
            double dy = places.get(3 * v + 1) - p.y();
            double dz = places.get(3 * v + 2) - p.z();
            if (dx * dx + dy * dy + dz * dz <= near * near) {
              return v;
            }
          }
        }
      }
    }
    return -1;
  }
}
