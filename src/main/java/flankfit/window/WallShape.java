package flankfit.window;

import flankfit.gauge.RealAnswer;
import flankfit.gauge.ThreadAnswer;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.RegularThread;
import flankfit.sweep.Wall;
import flankfit.sweep.WallGrid;
import flankfit.unit.Angles;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;

/**
 * The wall of the path as moved, read for drawing: its section in the direction of +X, and the
 * pitch diameter that it has at each place along the depth. Never changes.
 */
final class WallShape {
  private static final int HEIGHTS = 900;
  private static final double ACCURACY = 2e-4;

  /** Directions in which the width of grooves is read. */
  private static final int DIRECTIONS = 24;

  private static final int MOST_STRETCHES = 512;

  private final double[] z;
  private final double[] radius;
  private final double[] sizeZ;
  private final double[] size;

  private WallShape(double[] z, double[] radius, double[] sizeZ, double[] size) {
    this.z = z;
    this.radius = radius;
    this.sizeZ = sizeZ;
    this.size = size;
  }

  /** The wall of a thread; empty where there is none. */
  static Optional<WallShape> of(ThreadAnswer thread) {
    if (thread.real().isEmpty() || thread.surface().isEmpty()) {
      return Optional.empty();
    }
    RealAnswer real = thread.real().get();
    RegularThread surface = thread.surface().get();
    Wall wall = real.wall();
    double[] heights = new double[HEIGHTS];
    for (int i = 0; i < HEIGHTS; i++) {
      heights[i] = wall.bottom() + (wall.top() - wall.bottom()) * i / (HEIGHTS - 1);
    }
    WallGrid grid =
        WallGrid.of(
            wall,
            new double[] {0},
            heights,
            surface.blankRadius(),
            surface.groove().bottom(),
            ACCURACY);
    double[] radii = new double[HEIGHTS];
    for (int i = 0; i < HEIGHTS; i++) {
      radii[i] = grid.radius(0, i);
    }
    double[][] sizes = sizes(thread.spec(), wall);
    return Optional.of(new WallShape(heights, radii, sizes[0], sizes[1]));
  }

  /** Widths of the grooves on the basic pitch cylinder, as the pitch diameters they make. */
  private static double[][] sizes(ThreadSpec spec, Wall wall) {
    double at = spec.basicPitch() / 2;
    double sign = spec.internal() ? 1 : -1;
    double[] stretches = new double[2 * MOST_STRETCHES];
    double[][] found = new double[DIRECTIONS * MOST_STRETCHES][];
    int count = 0;
    for (int i = 0; i < DIRECTIONS; i++) {
      int open = wall.open(Angles.TURN * i / DIRECTIONS, at, stretches);
      for (int k = 0; k < Math.min(open, MOST_STRETCHES); k++) {
        double low = stretches[2 * k];
        double high = stretches[2 * k + 1];
        double wide = high - low;
        if (low > wall.bottom() && high < wall.top() && wide < 0.9 * spec.pitch()) {
          double pitch = 2 * at + sign * (wide - spec.pitch() / 2) / Math.tan(spec.halfAngle());
          found[count++] = new double[] {(low + high) / 2, pitch};
        }
      }
    }
    double[][] points = Arrays.copyOf(found, count);
    Arrays.sort(points, Comparator.comparingDouble(p -> p[0]));
    double[][] columns = new double[2][count];
    for (int i = 0; i < count; i++) {
      columns[0][i] = points[i][0];
      columns[1][i] = points[i][1];
    }
    return columns;
  }

  /** Number of heights at which the section is known, from below. */
  int heights() {
    return z.length;
  }

  /** A height (mm). */
  double z(int i) {
    return z[i];
  }

  /** Radius of the wall there (mm). */
  double radius(int i) {
    return radius[i];
  }

  /** Number of places at which the pitch diameter is known, from below. */
  int places() {
    return size.length;
  }

  /** Height of such a place (mm). */
  double placeZ(int i) {
    return sizeZ[i];
  }

  /** Pitch diameter there (mm). */
  double pitch(int i) {
    return size[i];
  }
}
