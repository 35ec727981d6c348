package flankfit.metal;

/**
 * How deep a point lies in a profile on its way along a path: the least signed distance to the
 * whole profile. It changes no faster than the tool moves, which leaves out most of the path.
 */
final class DepthSearch {
  private static final int DEEPEST = 24;

  /** An answer may miss the deepest place by this share of the depth (1). */
  private static final double SHARE = 0.05;

  /** Less than this (mm), or this share of what is enough (1), is not searched for. */
  private static final double FINEST = 1e-2;

  private final Near near = new Near();
  private final double[] shares = new double[DEEPEST + 2];
  private final double[] values = new double[DEEPEST + 2];
  private ToolPath path;
  private Profile profile;
  private double px;
  private double py;
  private double pz;
  private double best;
  private double bestShare;

  double share() {
    return bestShare;
  }

  /**
   * The least signed distance found (mm); the search ends once it is at or below {@code -enough}.
   */
  double deepest(ToolPath along, Profile of, double x, double y, double z, double enough) {
    path = along;
    profile = of;
    px = x;
    py = y;
    pz = z;
    best = Double.POSITIVE_INFINITY;
    int pieces = 2 * path.pieces();
    double from = value(0);
    for (int i = 0; i < pieces && best > -enough; i++) {
      double to = value((i + 1.0) / pieces);
      piece((double) i / pieces, from, (i + 1.0) / pieces, to, enough);
      from = to;
    }
    return best;
  }

  private void piece(double start, double startValue, double end, double endValue, double enough) {
    double left = start;
    double leftValue = startValue;
    shares[0] = end;
    values[0] = endValue;
    int top = 1;
    while (top > 0 && best > -enough) {
      double right = shares[top - 1];
      double rightValue = values[top - 1];
      double bound = (leftValue + rightValue - path.length(right - left)) / 2;
      double wanted =
          enough < Double.POSITIVE_INFINITY ? -enough : Math.min(best, 0) * (1 + SHARE) - FINEST;
      boolean fine = path.length(right - left) < Math.min(enough, 1) * FINEST;
      if (bound > wanted || fine || top > DEEPEST) {
        left = right;
        leftValue = rightValue;
        top--;
      } else {
        double middle = (left + right) / 2;
        shares[top] = middle;
        values[top] = value(middle);
        top++;
      }
    }
  }

  private double value(double share) {
    double dx = px - path.x(share);
    double dy = py - path.y(share);
    profile.distance(Math.sqrt(dx * dx + dy * dy), pz - path.z(share), near);
    if (near.distance < best) {
      best = near.distance;
      bestShare = share;
    }
    return near.distance;
  }
}
