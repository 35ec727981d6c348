package flankfit.gauge;

import flankfit.cutting.EdgeLine;
import flankfit.sweep.Flank;
import flankfit.sweep.PolylineTooth;
import flankfit.sweep.Tooth;
import java.util.ArrayList;
import java.util.List;

/** The edge of one row as lines, as far as it can meet the metal. */
final class CutEdges {
  /** Lines of a flank: a ground flank departs from them by a hundredth of a micrometre. */
  private static final int LINES = 5;

  /** Lines of a flank that may have been measured point by point. */
  private static final int FINE_LINES = 24;

  private CutEdges() {}

  /**
   * The edge.
   *
   * @param least distance from the cutter's axis below which no metal is met (mm)
   * @param half axial distance from the middle at which the next row takes over (mm)
   */
  static EdgeLine of(Tooth tooth, double least, double half) {
    List<double[]> down = flank(tooth, Flank.DOWN, least, half);
    List<double[]> up = flank(tooth, Flank.UP, least, half);
    int n = down.size() + up.size();
    double[] height = new double[n];
    double[] radius = new double[n];
    for (int i = 0; i < down.size(); i++) {
      double[] point = down.get(down.size() - 1 - i);
      height[i] = -point[0];
      radius[i] = point[1];
    }
    for (int i = 0; i < up.size(); i++) {
      height[down.size() + i] = up.get(i)[0];
      radius[down.size() + i] = up.get(i)[1];
    }
    return EdgeLine.through(height, radius);
  }

  /** Points of a flank from the crest's corner inwards. */
  private static List<double[]> flank(Tooth tooth, Flank flank, double least, double half) {
    double outside = tooth.outsideRadius();
    double end = Math.max(tooth.rootRadius(), Math.min(least, outside));
    int lines = tooth instanceof PolylineTooth && !tooth.isSymmetric() ? FINE_LINES : LINES;
    List<double[]> points = new ArrayList<>();
    double widest = 0;
    for (int i = 0; i <= lines; i++) {
      double r = outside + (end - outside) * i / lines;
      double width = Math.max(widest, tooth.halfWidth(r, flank));
      if (width >= half) {
        double[] before =
            points.isEmpty() ? new double[] {0, outside} : points.get(points.size() - 1);
        double share = (half - before[0]) / (width - before[0]);
        points.add(new double[] {half, before[1] + share * (r - before[1])});
        break;
      }
      points.add(new double[] {width, r});
      widest = width;
    }
    return points;
  }
}
