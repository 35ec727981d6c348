package flankfit.gauge;

import java.util.ArrayList;
import java.util.List;

/**
 * The slow witness of the largest gauge: points of the wall's flanks, and for each place of the
 * gauge the largest one that holds none of them, by the gauge's own geometry, not linear in its
 * shift. Places are tried on a grid that draws together.
 */
final class PlaceSearch {
  private final TurnedWall wall;
  private final double sign;
  private final double tan;
  private final double rise;
  private final double root;
  private final double crest;
  private final double helix;
  private final List<double[]> points = new ArrayList<>();

  PlaceSearch(TurnedWall wall, WallField field, double low, double high) {
    this.wall = wall;
    this.sign = wall.spec.internal() ? 1 : -1;
    this.tan = Math.tan(wall.spec.halfAngle());
    this.rise = (wall.spec.leftHand() ? -1 : 1) * wall.spec.lead() / (2 * Math.PI);
    ThreadGauge gauge = ThreadGauge.goRelieved(wall.spec);
    this.root = sign * gauge.rootRadius();
    this.crest = sign * gauge.crestRadius();
    this.helix = field.phase();
    double[] buffer = new double[64];
    for (int i = 0; i < field.directions(); i++) {
      double theta = 2 * Math.PI * i / field.directions();
      for (int n = -20; n <= 20; n++) {
        double middle = helix + rise * theta + n * wall.spec.pitch();
        if (middle >= low && middle <= high) {
          collect(theta, middle, buffer);
        }
      }
    }
  }

  private void collect(double theta, double middle, double[] buffer) {
    int steps = 12;
    for (int k = 0; k <= steps; k++) {
      double radius = sign * (root + (crest - root) * k / steps);
      int count = wall.open(theta, radius, buffer);
      for (int i = 0; i < count; i++) {
        double low = buffer[2 * i];
        double high = buffer[2 * i + 1];
        if (low < middle && high > middle && high - low < wall.spec.pitch()) {
          points.add(new double[] {theta, radius, high, middle});
          points.add(new double[] {theta, radius, low, middle});
        }
      }
    }
  }

  double largest() {
    double[] best = {0, 0, 0};
    double value = at(best);
    for (double step = 0.02; step > 1e-5; step *= 0.6) {
      double[] from = best.clone();
      for (int i = -2; i <= 2; i++) {
        for (int j = -2; j <= 2; j++) {
          for (int k = -2; k <= 2; k++) {
            double[] place = {from[0] + i * step, from[1] + j * step, from[2] + k * step};
            double here = at(place);
            if (here > value) {
              value = here;
              best = place;
            }
          }
        }
      }
    }
    return sign * value;
  }

  /** Signed pitch diameter of the largest gauge at a place (height, x, y) (mm). */
  private double at(double[] place) {
    double least = Double.POSITIVE_INFINITY;
    for (double[] point : points) {
      double x = point[1] * Math.cos(point[0]) - place[1];
      double y = point[1] * Math.sin(point[0]) - place[2];
      double radius = Math.hypot(x, y);
      double turn = Math.atan2(y, x) - point[0];
      turn -= 2 * Math.PI * Math.rint(turn / (2 * Math.PI));
      double middle = point[3] + place[0] + rise * turn;
      double away = point[2] > point[3] ? point[2] - middle : middle - point[2];
      double size = 2 * ((away - wall.spec.pitch() / 4) / tan + sign * radius);
      least = Math.min(least, size);
    }
    return least;
  }
}
