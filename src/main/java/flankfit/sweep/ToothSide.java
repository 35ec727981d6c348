package flankfit.sweep;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** One side of a tooth made of straight lines, from the crest's corner down. */
final class ToothSide implements FlankShape {
  private final double[] radius;
  private final double[] width;

  /**
   * One side.
   *
   * @param radius distance from the cutter's axis (mm), not rising
   * @param width axial distance from the middle (mm), not falling; as long as the radii
   */
  ToothSide(double[] radius, double[] width) {
    this.radius = radius.clone();
    this.width = width.clone();
  }

  double top() {
    return radius[0];
  }

  /** The outermost boundary of a measured profile towards one side. */
  static ToothSide of(List<List<Double>> profile, int sign) {
    List<double[]> inwards = new ArrayList<>();
    for (List<Double> row : profile) {
      inwards.add(new double[] {sign * row.get(0), row.get(1)});
    }
    inwards.sort(Comparator.comparingDouble((double[] p) -> p[0]).reversed());
    List<double[]> kept = new ArrayList<>();
    double[] before = {Double.POSITIVE_INFINITY, 0};
    for (double[] p : inwards) {
      if (kept.isEmpty() || p[1] > last(kept)[1]) {
        addCrossing(kept, before, p);
        kept.add(p);
      }
      before = p;
    }
    return inwardsReversed(kept);
  }

  /** Behind a hollow the boundary goes on where the rising line passes the height before it. */
  private static void addCrossing(List<double[]> kept, double[] before, double[] p) {
    if (!kept.isEmpty() && before[1] < last(kept)[1]) {
      double height = last(kept)[1];
      double share = (height - before[1]) / (p[1] - before[1]);
      kept.add(new double[] {before[0] + share * (p[0] - before[0]), height});
    }
  }

  private static double[] last(List<double[]> kept) {
    return kept.get(kept.size() - 1);
  }

  private static ToothSide inwardsReversed(List<double[]> kept) {
    int n = kept.size();
    double[] radius = new double[n];
    double[] width = new double[n];
    for (int i = 0; i < n; i++) {
      radius[i] = kept.get(n - 1 - i)[1];
      width[i] = kept.get(n - 1 - i)[0];
    }
    return new ToothSide(radius, width);
  }

  double root() {
    return radius[radius.length - 1];
  }

  @Override
  public double width(double r) {
    for (int i = 1; i < radius.length; i++) {
      if (r >= radius[i] && radius[i - 1] > radius[i]) {
        double share = (radius[i - 1] - r) / (radius[i - 1] - radius[i]);
        return width[i - 1] + share * (width[i] - width[i - 1]);
      }
    }
    return width[width.length - 1];
  }

  double radiusAt(double s) {
    if (s <= width[0]) {
      return radius[0];
    }
    for (int i = 1; i < width.length; i++) {
      if (s <= width[i]) {
        double share = (s - width[i - 1]) / (width[i] - width[i - 1]);
        return radius[i - 1] + share * (radius[i] - radius[i - 1]);
      }
    }
    return 0;
  }

  @Override
  public double reach(Meeting meeting, double low, double high) {
    double best = Double.NaN;
    for (int i = 1; i < radius.length; i++) {
      double far = Math.min(radius[i - 1], high);
      double near = Math.max(radius[i], low);
      if (far >= near && radius[i - 1] > radius[i]) {
        best = larger(best, reachOfLine(meeting, i, near, far));
      }
    }
    if (low < root()) {
      best = larger(best, meeting.risen(Math.min(high, root())) + width[width.length - 1]);
    }
    return best;
  }

  private double reachOfLine(Meeting meeting, int i, double low, double high) {
    double tangent = (width[i] - width[i - 1]) / (radius[i - 1] - radius[i]);
    double best =
        Math.max(
            meeting.risen(low) + along(i, tangent, low),
            meeting.risen(high) + along(i, tangent, high));
    if (tangent > 0) {
      double contact = meeting.contact(tangent);
      if (contact > low && contact < high) {
        best = Math.max(best, meeting.risen(contact) + along(i, tangent, contact));
      }
    }
    return best;
  }

  private double along(int i, double tangent, double r) {
    return width[i - 1] + (radius[i - 1] - r) * tangent;
  }

  @Override
  public FlankShape endingAt(double widest) {
    int n = 0;
    while (n < width.length && width[n] < widest) {
      n++;
    }
    if (n == width.length) {
      return this;
    }
    double end = n == 0 ? radius[0] : endOf(n, widest);
    double[] radii = Arrays.copyOf(radius, n + 2);
    double[] widths = Arrays.copyOf(width, n + 2);
    radii[n] = end;
    widths[n] = widest;
    // A last level stretch keeps the flank as wide down to the axis.
    radii[n + 1] = 0;
    widths[n + 1] = widest;
    return new ToothSide(radii, widths);
  }

  private double endOf(int n, double widest) {
    double share = (widest - width[n - 1]) / (width[n] - width[n - 1]);
    return radius[n - 1] + share * (radius[n] - radius[n - 1]);
  }

  private static double larger(double best, double candidate) {
    return Double.isNaN(best) ? candidate : Math.max(best, candidate);
  }
}
