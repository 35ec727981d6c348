package flankfit.solid;

import earcut4j.Earcut;
import java.util.ArrayList;
import java.util.List;

/** The fill of an outline. */
final class Cap {
  private final int[] triangles;
  private final int unfilled;

  Cap(int[] triangles, int unfilled) {
    this.triangles = triangles;
    this.unfilled = unfilled;
  }

  /** Points of the outline, three for each triangle. */
  int[] triangles() {
    return triangles;
  }

  /** Number of holes that lie in no loop round metal. */
  int unfilled() {
    return unfilled;
  }

  /** Fills loops: each loop round metal less the holes that lie in it and in none smaller. */
  static Cap of(Outline outline) {
    int loops = outline.starts().length - 1;
    double[] areas = new double[loops];
    for (int loop = 0; loop < loops; loop++) {
      areas[loop] = area(outline.places(), outline.starts()[loop], outline.starts()[loop + 1]);
    }
    List<List<Integer>> holes = new ArrayList<>();
    for (int loop = 0; loop < loops; loop++) {
      holes.add(new ArrayList<>());
    }
    int unfilled = 0;
    for (int loop = 0; loop < loops; loop++) {
      if (areas[loop] < 0) {
        int around = around(outline, areas, loop);
        if (around < 0) {
          unfilled++;
        } else {
          holes.get(around).add(loop);
        }
      }
    }
    IntColumn triangles = new IntColumn();
    for (int loop = 0; loop < loops; loop++) {
      if (areas[loop] > 0) {
        fill(outline, loop, holes.get(loop), triangles);
      }
    }
    return new Cap(IntColumn.joined(new IntColumn[] {triangles}), unfilled);
  }

  /** The smallest loop round metal that holds a hole, or -1. */
  private static int around(Outline outline, double[] areas, int hole) {
    int best = -1;
    double x = outline.places()[2 * outline.starts()[hole]];
    double y = outline.places()[2 * outline.starts()[hole] + 1];
    for (int loop = 0; loop < areas.length; loop++) {
      if (areas[loop] > 0
          && (best < 0 || areas[loop] < areas[best])
          && holds(outline, loop, x, y)) {
        best = loop;
      }
    }
    return best;
  }

  private static boolean holds(Outline outline, int loop, double x, double y) {
    double[] p = outline.places();
    int start = outline.starts()[loop];
    int end = outline.starts()[loop + 1];
    boolean inside = false;
    for (int i = start, j = end - 1; i < end; j = i++) {
      boolean spans = p[2 * i + 1] > y != p[2 * j + 1] > y;
      if (spans
          && x
              < (p[2 * j] - p[2 * i]) * (y - p[2 * i + 1]) / (p[2 * j + 1] - p[2 * i + 1])
                  + p[2 * i]) {
        inside = !inside;
      }
    }
    return inside;
  }

  private static void fill(Outline outline, int loop, List<Integer> holes, IntColumn to) {
    DoubleColumn places = new DoubleColumn();
    IntColumn points = new IntColumn();
    int[] holeStarts = new int[holes.size()];
    add(outline, loop, places, points);
    for (int i = 0; i < holeStarts.length; i++) {
      holeStarts[i] = points.size();
      add(outline, holes.get(i), places, points);
    }
    List<Integer> corners = Earcut.earcut(places.toArray(), holeStarts, 2);
    for (int i = 0; i + 2 < corners.size(); i += 3) {
      int a = corners.get(i);
      int b = corners.get(i + 1);
      int c = corners.get(i + 2);
      double twice =
          (places.get(2 * b) - places.get(2 * a)) * (places.get(2 * c + 1) - places.get(2 * a + 1))
              - (places.get(2 * c) - places.get(2 * a))
                  * (places.get(2 * b + 1) - places.get(2 * a + 1));
      to.add(points.get(a));
      to.add(points.get(twice < 0 ? c : b));
      to.add(points.get(twice < 0 ? b : c));
    }
  }

  private static void add(Outline outline, int loop, DoubleColumn places, IntColumn points) {
    for (int i = outline.starts()[loop]; i < outline.starts()[loop + 1]; i++) {
      places.add(outline.places()[2 * i]);
      places.add(outline.places()[2 * i + 1]);
      points.add(i);
    }
  }

  /** Area within a loop, negative where it runs clockwise (mm²). */
  static double area(double[] places, int start, int end) {
    double twice = 0;
    double ox = start < end ? places[2 * start] : 0;
    double oy = start < end ? places[2 * start + 1] : 0;
    for (int i = start; i < end; i++) {
      int j = i + 1 < end ? i + 1 : start;
      twice +=
          (places[2 * i] - ox) * (places[2 * j + 1] - oy)
              - (places[2 * j] - ox) * (places[2 * i + 1] - oy);
    }
    return twice / 2;
  }
}
