package flankfit.metal;

/**
 * How far a point stays out of a profile that moves along a straight ramp, measured across the
 * axis. Seen from the tool the point moves on a line: its height changes evenly, its distance from
 * the axis is a hyperbola of the share. Within a band the distance less the band's radius is
 * convex, so the least lies at an end of the band's window or at the one place where both change
 * alike; for straight bands that has a closed form.
 */
final class RampSign {
  private static final int HALVINGS = 60;

  private ToolPath path;
  private double dx;
  private double dy;
  private double dz;
  private double run;
  private Profile profile;
  private double along;
  private double aside;
  private double h0;

  void load(ToolPath taken) {
    path = taken;
    dx = taken.toX - taken.fromX;
    dy = taken.toY - taken.fromY;
    dz = taken.toZ - taken.fromZ;
    run = Math.sqrt(dx * dx + dy * dy);
  }

  /** Takes a place in plan; false when the tool comes nowhere near it. */
  boolean column(Profile of, double x, double y) {
    profile = of;
    double px = x - path.fromX;
    double py = y - path.fromY;
    along = (px * dx + py * dy) / run;
    aside = Math.abs(px * dy - py * dx) / run;
    return aside <= of.widest();
  }

  /**
   * The least excess of the distance from the axis over the radius there (mm) at the place last
   * taken, at or below 0 just where the tool passes; infinite where no band comes to the point's
   * height.
   *
   * @param enough the search may end at the first value not above this (mm)
   */
  double excess(double z, double enough) {
    h0 = z - path.fromZ;
    double h1 = h0 - dz;
    double lowest = Math.min(h0, h1);
    double highest = Math.max(h0, h1);
    double best = Double.POSITIVE_INFINITY;
    Profile of = profile;
    for (int b = of.bandAt(lowest); b < of.bands() && of.low(b) <= highest && best > enough; b++) {
      if (aside - of.widest(b) < best) {
        double s0 = Math.max(0, share(dz > 0 ? of.high(b) : of.low(b)));
        double s1 = Math.min(1, share(dz > 0 ? of.low(b) : of.high(b)));
        if (s0 <= s1) {
          best = Math.min(best, band(b, s0, s1, enough));
        }
      }
    }
    return best;
  }

  /** Share of the way at which the point is at a height of the tool. */
  private double share(double height) {
    return (h0 - height) / dz;
  }

  private double band(int b, double s0, double s1, double enough) {
    double ends = Math.min(at(b, s0), at(b, s1));
    if (ends <= enough) {
      return ends;
    }
    if (profile.isArc(b)) {
      return Math.min(ends, arc(b, s0, s1, enough));
    }
    // The distance changes as the radius does where u / ρ equals this.
    double m = profile.slope(b) * dz / run;
    if (Math.abs(m) >= 1) {
      return ends;
    }
    double s = (along - aside * m / Math.sqrt(1 - m * m)) / run;
    return s > s0 && s < s1 ? Math.min(ends, at(b, s)) : ends;
  }

  private double at(int b, double share) {
    double u = along - share * run;
    double h = h0 - share * dz;
    double r = profile.radiusOf(b, Math.min(profile.high(b), Math.max(profile.low(b), h)));
    return Math.sqrt(u * u + aside * aside) - r;
  }

  /** On an arc's band the excess is convex too; the nearest place to its circle is a good start. */
  private double arc(int b, double s0, double s1, double enough) {
    double up = h0 - profile.centreHeight(b);
    double s = (along * run + up * dz) / (run * run + dz * dz);
    double best = at(b, Math.min(s1, Math.max(s0, s)));
    double low = s0;
    double high = s1;
    for (int i = 0; i < HALVINGS && best > enough; i++) {
      double middle = (low + high) / 2;
      best = Math.min(best, at(b, middle));
      if (rises(b, middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return best;
  }

  /** Whether the distance less an arc's radius rises with the share. */
  private boolean rises(int b, double share) {
    double u = along - share * run;
    double up = h0 - share * dz - profile.centreHeight(b);
    double q = profile.arcRadius(b);
    double across = Math.sqrt(Math.max(0, q * q - up * up));
    double out = Math.sqrt(u * u + aside * aside);
    return -u * run * across - up * dz * out > 0;
  }
}
