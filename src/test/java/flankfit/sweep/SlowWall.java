package flankfit.sweep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The slow witness: stands the cutter at very many places of its path and asks of each which part
 * of a line parallel to the axis lies within it. Knows nothing of maxima, arcs or helices.
 */
final class SlowWall {
  private static final int BISECTIONS = 45;

  private final Sweep sweep;
  private final double x;
  private final double y;
  private final int positions;

  SlowWall(Sweep sweep, double x, double y, int positions) {
    this.sweep = sweep;
    this.x = x;
    this.y = y;
    this.positions = positions;
  }

  /** Lower and upper ends of what is open. */
  List<double[]> open(double theta, double radius) {
    double px = x + radius * Math.cos(theta);
    double py = y + radius * Math.sin(theta);
    List<double[]> all = new ArrayList<>();
    for (PathPiece piece : sweep.path().pieces()) {
      walk(piece, px, py, all);
    }
    return joined(all);
  }

  private void walk(PathPiece piece, double px, double py, List<double[]> all) {
    double outside = sweep.cutter().tooth().outsideRadius();
    double[] p = new double[3];
    double[] run = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
    double before = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= positions; i++) {
      double share = (double) i / positions;
      double distance = distance(piece, share, px, py, p);
      boolean in = distance <= outside;
      if (in) {
        take(distance, p[2], run);
      }
      if (i > 0 && in != before <= outside) {
        edge(piece, share - 1.0 / positions, share, px, py, run);
      }
      if (!in || i == positions) {
        close(run, all);
      }
      before = distance;
    }
  }

  /** While the line stays in the cutter what is opened hangs together: keep its ends only. */
  private void close(double[] run, List<double[]> all) {
    if (run[0] <= run[1]) {
      for (int row = 0; row < sweep.cutter().rows(); row++) {
        double height = sweep.cutter().height(row);
        all.add(new double[] {run[0] + height, run[1] + height});
      }
    }
    run[0] = Double.POSITIVE_INFINITY;
    run[1] = Double.NEGATIVE_INFINITY;
  }

  private static double distance(PathPiece piece, double share, double px, double py, double[] p) {
    piece.pointAt(share, p);
    return Math.hypot(p[0] - px, p[1] - py);
  }

  /** The very place between two positions where the line enters or leaves the cutter. */
  private void edge(PathPiece piece, double from, double to, double px, double py, double[] run) {
    double outside = sweep.cutter().tooth().outsideRadius();
    double[] p = new double[3];
    double low = from;
    double high = to;
    boolean in = distance(piece, low, px, py, p) <= outside;
    for (int i = 0; i < BISECTIONS; i++) {
      double middle = (low + high) / 2;
      if (distance(piece, middle, px, py, p) <= outside == in) {
        low = middle;
      } else {
        high = middle;
      }
    }
    distance(piece, low, px, py, p);
    take(outside, p[2], run);
  }

  private void take(double distance, double z, double[] run) {
    Cutter cutter = sweep.cutter();
    double up = cutter.tooth().halfWidth(distance, Flank.UP);
    double down = cutter.tooth().halfWidth(distance, Flank.DOWN);
    run[0] = Math.min(run[0], z - Math.min(cutter.rowReach(), down));
    run[1] = Math.max(run[1], z + Math.min(cutter.rowReach(), up));
  }

  private static List<double[]> joined(List<double[]> all) {
    all.sort(Comparator.comparingDouble(s -> s[0]));
    List<double[]> found = new ArrayList<>();
    for (double[] s : all) {
      double[] last = found.isEmpty() ? null : found.get(found.size() - 1);
      if (last != null && s[0] <= last[1] + 1e-9) {
        last[1] = Math.max(last[1], s[1]);
      } else {
        found.add(s.clone());
      }
    }
    return found;
  }
}
