package flankfit.metal;

/**
 * Whether a profile that moves along a straight ramp passes over a point. Seen from the tool the
 * point moves on a line: its height changes evenly, its distance from the axis is a hyperbola of the
 * share. Within a band the distance less the band's radius is convex, so the least lies at an end of
 * the band's window or at the one place where both change alike, which has a closed form.
 */
final class RampSign {
  private ToolPath path;
  private double dx;
  private double dy;
  private double dz;
  private double run;

  void load(ToolPath along) {
    path = along;
    dx = along.toX - along.fromX;
    dy = along.toY - along.fromY;
    dz = along.toZ - along.fromZ;
    run = Math.sqrt(dx * dx + dy * dy);
  }

  boolean holds(Profile profile, double x, double y, double z) {
    double px = x - path.fromX;
    double py = y - path.fromY;
    double along = (px * dx + py * dy) / run;
    double aside = Math.abs(px * dy - py * dx) / run;
    if (aside > profile.widest()) {
      return false;
    }
    double h0 = z - path.fromZ;
    double h1 = h0 - dz;
    double lowest = Math.min(h0, h1);
    double highest = Math.max(h0, h1);
    for (int b = profile.bandAt(lowest); b < profile.bands() && profile.low(b) <= highest; b++) {
      if (aside <= profile.widest(b)) {
        double s0 = Math.max(0, share(dz > 0 ? profile.high(b) : profile.low(b), h0));
        double s1 = Math.min(1, share(dz > 0 ? profile.low(b) : profile.high(b), h0));
        if (s0 <= s1 && band(profile, b, along, aside, h0, s0, s1)) {
          return true;
        }
      }
    }
    return false;
  }

  private double share(double height, double h0) {
    return (h0 - height) / dz;
  }

  private boolean band(
      Profile profile, int b, double along, double aside, double h0, double s0, double s1) {
    if (profile.isArc(b)) {
      return arc(profile, b, along, aside, h0, s0, s1);
    }
    // Height falls by dz while the tool runs on: where the distance falls as the radius does.
    double m = -profile.slope(b) * dz / run;
    double s = along / run;
    if (m != 0) {
      s = Math.abs(m) < 1 ? (along + aside * m / Math.sqrt(1 - m * m)) / run : m > 0 ? s1 : s0;
    }
    s = Math.min(s1, Math.max(s0, s));
    return over(profile, b, along, aside, h0, s)
        || over(profile, b, along, aside, h0, s0)
        || over(profile, b, along, aside, h0, s1);
  }

  private boolean over(
      Profile profile, int b, double along, double aside, double h0, double share) {
    double u = along - share * run;
    double h = h0 - share * dz;
    double r = profile.radiusOf(b, Math.min(profile.high(b), Math.max(profile.low(b), h)));
    return u * u + aside * aside <= r * r;
  }

  /** On an arc's band the excess is convex too; a ball has its least in closed form. */
  private boolean arc(
      Profile profile, int b, double along, double aside, double h0, double s0, double s1) {
    double up = h0 - profile.centreHeight(b);
    double s = (along * run + up * dz) / (run * run + dz * dz);
    s = Math.min(s1, Math.max(s0, s));
    if (over(profile, b, along, aside, h0, s)) {
      return true;
    }
    return !profile.isBall(b) && narrowed(profile, b, along, aside, h0, s0, s1);
  }

  private boolean narrowed(
      Profile profile, int b, double along, double aside, double h0, double s0, double s1) {
    double low = s0;
    double high = s1;
    if (over(profile, b, along, aside, h0, low) || over(profile, b, along, aside, h0, high)) {
      return true;
    }
    for (int i = 0; i < 100 && high - low > 1e-15; i++) {
      double middle = (low + high) / 2;
      if (over(profile, b, along, aside, h0, middle)) {
        return true;
      }
      if (rises(profile, b, along, aside, h0, middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return false;
  }

  /** Whether the distance less the band's radius rises with the share. */
  private boolean rises(
      Profile profile, int b, double along, double aside, double h0, double share) {
    double u = along - share * run;
    double up = h0 - share * dz - profile.centreHeight(b);
    double q = profile.arcRadius(b);
    double across = Math.sqrt(Math.max(0, q * q - up * up));
    double out = Math.sqrt(u * u + aside * aside);
    return -u * run * across - up * dz * out > 0;
  }
}
