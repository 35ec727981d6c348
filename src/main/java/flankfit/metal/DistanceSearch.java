package flankfit.metal;

/**
 * The least signed distance from a point to a profile that moves along a path. Each band of the
 * profile is convex, and so is its signed distance along a chord: between two places the tangents
 * there bound it from below, less what the path strays from the chord. So the search may leave out
 * what cannot hold the least, and its answer is within the tolerance for certain.
 *
 * <p>Inside the volume the answer is below 0 and otherwise means little.
 */
final class DistanceSearch {
  private static final int FIELDS = 8;
  private static final int T = 0;
  private static final int X = 1;
  private static final int Y = 2;
  private static final int Z = 3;
  private static final int F = 4;
  private static final int GX = 5;
  private static final int GY = 6;
  private static final int GZ = 7;

  /** Halvings after which two places are one. */
  private static final int DEEPEST = 60;

  private final Near near = new Near();
  private final double[] left = new double[FIELDS];
  private final double[] stack = new double[FIELDS * (DEEPEST + 2)];
  private ToolPath path;
  private Profile profile;
  private double px;
  private double py;
  private double pz;
  private double tolerance;
  private double best;
  private double bestShare;
  private int bestBand;

  /** Where along the path the least was found, 0 to 1. */
  double share() {
    return bestShare;
  }

  /** The band that it belongs to; below 0 when none came within the limit. */
  int band() {
    return bestBand;
  }

  /**
   * The least distance, or the limit when there is none below it.
   *
   * @param limit nothing beyond matters (mm)
   * @param within how exact the answer shall be (mm), above 0
   * @return at most {@code within} above the least; the first value below 0 that was met inside
   */
  double least(
      ToolPath along, Profile of, double x, double y, double z, double limit, double within) {
    path = along;
    profile = of;
    px = x;
    py = y;
    pz = z;
    tolerance = within;
    best = limit;
    bestShare = 0;
    bestBand = -1;
    int pieces = path.pieces();
    double to = reach(0);
    for (int i = 0; i < pieces && best >= 0; i++) {
      double from = to;
      to = reach((i + 1.0) / pieces);
      double bound = (from + to - path.length(1.0 / pieces)) / 2;
      if (bound < best) {
        bands((double) i / pieces, (i + 1.0) / pieces);
      }
    }
    return best;
  }

  /** A lower bound of the distance to the whole profile, from its box alone (mm). */
  private double reach(double share) {
    double dx = px - path.x(share);
    double dy = py - path.y(share);
    double h = pz - path.z(share);
    double out = Math.sqrt(dx * dx + dy * dy) - profile.widest();
    double up = Math.max(profile.bottom() - h, h - profile.top());
    return out > 0 && up > 0 ? Math.sqrt(out * out + up * up) : Math.max(out, up);
  }

  private void bands(double from, double to) {
    double stray = path.stray(to - from);
    double h0 = pz - path.z(from);
    double h1 = pz - path.z(to);
    double lowest = Math.min(h0, h1) - stray;
    double highest = Math.max(h0, h1) + stray;
    double nearest = nearest(from, to) - stray;
    for (int b = Math.min(profile.bandAt(lowest), profile.bands() - 1); b >= 0; b--) {
      if (lowest - profile.high(b) >= best) {
        break;
      }
      band(b, from, to, lowest, highest, nearest);
    }
    for (int b = profile.bandAt(lowest) + 1; b < profile.bands() && best >= 0; b++) {
      if (profile.low(b) - highest >= best) {
        break;
      }
      band(b, from, to, lowest, highest, nearest);
    }
  }

  /** Least distance in plan between the point and the chord (mm). */
  private double nearest(double from, double to) {
    double ax = path.x(from);
    double ay = path.y(from);
    double dx = path.x(to) - ax;
    double dy = path.y(to) - ay;
    double square = dx * dx + dy * dy;
    double s = square > 0 ? ((px - ax) * dx + (py - ay) * dy) / square : 0;
    s = Math.min(1, Math.max(0, s));
    double ex = px - ax - s * dx;
    double ey = py - ay - s * dy;
    return Math.sqrt(ex * ex + ey * ey);
  }

  private void band(int b, double from, double to, double lowest, double highest, double nearest) {
    double out = nearest - profile.widest(b);
    double up = Math.max(profile.low(b) - highest, lowest - profile.high(b));
    double bound = out > 0 && up > 0 ? Math.sqrt(out * out + up * up) : Math.max(out, up);
    if (best < 0 || bound >= best - tolerance) {
      return;
    }
    evaluate(b, from, left, 0);
    evaluate(b, to, stack, 0);
    int top = 1;
    while (top > 0 && best >= 0) {
      int at = (top - 1) * FIELDS;
      double width = stack[at + T] - left[T];
      double between = bound(at, path.stray(width));
      if (between >= best - tolerance || top > DEEPEST) {
        System.arraycopy(stack, at, left, 0, FIELDS);
        top--;
      } else {
        evaluate(b, left[T] + width * split, stack, at + FIELDS);
        top++;
      }
    }
  }

  /** Share of the interval at which to split it, from the last bound. */
  private double split;

  /** The lower bound between the left place and one on the stack. */
  private double bound(int at, double stray) {
    double dx = stack[at + X] - left[X];
    double dy = stack[at + Y] - left[Y];
    double dz = stack[at + Z] - left[Z];
    double fa = left[F];
    double fb = stack[at + F];
    double ga = -(left[GX] * dx + left[GY] * dy + left[GZ] * dz);
    double gb = -(stack[at + GX] * dx + stack[at + GY] * dy + stack[at + GZ] * dz);
    split = 0.5;
    if (ga >= 0) {
      return fa - stray;
    }
    if (gb <= 0) {
      return fb - stray;
    }
    double s = (fb - gb - fa) / (ga - gb);
    s = Math.min(1, Math.max(0, s));
    if (path.stray(1) == 0) {
      split = Math.min(0.9, Math.max(0.1, s));
    }
    return Math.min(Math.min(fa, fb), Math.max(fa + ga * s, fb - gb * (1 - s))) - stray;
  }

  private void evaluate(int b, double share, double[] target, int at) {
    double x = path.x(share);
    double y = path.y(share);
    double z = path.z(share);
    double dx = px - x;
    double dy = py - y;
    double r = Math.sqrt(dx * dx + dy * dy);
    profile.bandDistance(b, r, pz - z, near);
    double scale = r > 0 ? near.alongRadius / r : 0;
    target[at + T] = share;
    target[at + X] = x;
    target[at + Y] = y;
    target[at + Z] = z;
    target[at + F] = near.distance;
    target[at + GX] = dx * scale;
    target[at + GY] = dy * scale;
    target[at + GZ] = near.alongAxis;
    if (near.distance < best) {
      best = near.distance;
      bestShare = share;
      bestBand = b;
    }
  }
}
