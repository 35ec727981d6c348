package flankfit.picture;

import static org.assertj.core.api.Assertions.assertThat;

import flankfit.motion.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No point left out lies farther from what is drawn than the tolerance; geometry, no source. */
class ThinnedLineProperties {
  private static final double TOLERANCE = 0.05;

  /** Texels are single precision: 3e-5 mm at some hundred millimetres. */
  private static final double PRECISION = 1e-4;

  /** A wandering path: fine steps that turn slowly, with sharp corners and standstills between. */
  private static List<double[]> path(long seed) {
    Random random = new Random(seed);
    List<double[]> points = new ArrayList<>();
    double[] p = new double[3];
    double[] heading = {1, 0, 0};
    for (int i = 0; i < 4000; i++) {
      double turn = random.nextInt(40) == 0 ? 2 : 0.08;
      double step = random.nextInt(25) == 0 ? 0 : random.nextInt(90) == 0 ? 1 : 0.02;
      for (int k = 0; k < 3; k++) {
        heading[k] += turn * (random.nextDouble() - 0.5);
      }
      for (int k = 0; k < 3; k++) {
        p[k] += step * heading[k];
      }
      points.add(p.clone());
    }
    return points;
  }

  private static double distance(double[] p, double[] a, double[] b) {
    double square = 0;
    double dot = 0;
    for (int k = 0; k < 3; k++) {
      square += (b[k] - a[k]) * (b[k] - a[k]);
      dot += (p[k] - a[k]) * (b[k] - a[k]);
    }
    double t = square == 0 ? 0 : Math.max(0, Math.min(1, dot / square));
    double sum = 0;
    for (int k = 0; k < 3; k++) {
      double d = p[k] - a[k] - t * (b[k] - a[k]);
      sum += d * d;
    }
    return Math.sqrt(sum);
  }

  private static double[] texel(LineStore store, int texel) {
    float[] points = store.points();
    return new double[] {points[4 * texel], points[4 * texel + 1], points[4 * texel + 2]};
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void every_point_lies_by_the_chord_that_stands_for_it(long seed) {
    LineStore store = new LineStore(Point.ZERO);
    ThinnedLine line = new ThinnedLine(store, TOLERANCE);
    line.moveTo(0, 0, 0);
    List<double[]> points = path(seed);
    int[] from = new int[points.size()];
    Random random = new Random(seed);
    for (int i = 0; i < points.size(); i++) {
      double[] p = points.get(i);
      line.lineTo(p[0], p[1], p[2], 3);
      from[i] = line.isWithinChord() ? store.last() : store.last() - 1;
      if (random.nextInt(500) == 0) {
        line.flush();
      }
    }
    line.flush();
    for (int i = 0; i < points.size(); i++) {
      double off = distance(points.get(i), texel(store, from[i]), texel(store, from[i] + 1));
      assertThat(off).as("point %d of seed %d", i, seed).isLessThanOrEqualTo(TOLERANCE + PRECISION);
    }
    assertThat(store.size()).isLessThan(points.size() / 2);
    double[] end = points.get(points.size() - 1);
    assertThat(distance(end, texel(store, store.last()), texel(store, store.last())))
        .isLessThan(PRECISION);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2})
  void without_a_tolerance_every_point_is_kept(long seed) {
    LineStore store = new LineStore(Point.ZERO);
    ThinnedLine line = new ThinnedLine(store, 0);
    line.moveTo(0, 0, 0);
    List<double[]> points = path(seed);
    points.forEach(p -> line.lineTo(p[0], p[1], p[2], 3));
    int drawn = 0;
    for (int texel = 0; texel < store.size(); texel++) {
      drawn += store.styles()[texel] == 3 ? 1 : 0;
    }
    assertThat(drawn).isEqualTo(points.size());
  }
}
