package flankfit.metal;

/**
 * How far a point stays out of a profile that moves along an arc about the tool's direction, level
 * or a helix, measured across the axis. With the point at a distance r from the arc's centre and
 * the path at A, the distance from the tool's axis is {@code ρ² = r² + A² - 2 r A cos ψ}, ψ the
 * angle of the axis beyond the point. On a straight band the distance less the band's radius is
 * least at an end of the band's window or where {@code ρ = |√(r² - q²) - √(A² - q²)|}, q the band's
 * slope times the rise for one radian: the contact of an involute helicoid.
 *
 * <p>A path whose radius changes is taken at its mean radius; {@link #doubt} says how far that may
 * be off. An arc's band on a helix has no closed form and is left open.
 *
 * @see "the contact of a straight flank follows from the derivative of the distance; an involute of
 *     the circle of radius q"
 */
final class RoundSign {
  private static final double TURN = 2 * Math.PI;

  /** What rounding may do to a distance (mm). */
  private static final double ROUNDING = 1e-12;

  private ToolPath path;
  private double mean;
  private double doubt;
  private double perRadian;
  private double first;
  private double begin;
  private double end;
  private Profile profile;
  private double r;
  private double angle;
  private double h0;
  private boolean open;
  private boolean turned;
  private double ox;
  private double oy;
  private double nearest;

  /** The angle of contact last found, and for which slope. */
  private double contactAngle;

  private double contactOf = Double.NaN;

  void load(ToolPath taken) {
    path = taken;
    mean = (taken.radius + taken.endRadius) / 2;
    double apart = Math.abs(taken.endRadius - taken.radius) / 2;
    doubt = apart == 0 ? 0 : apart + ROUNDING;
    perRadian = (taken.toZ - taken.fromZ) / taken.sweep;
    first = taken.startAngle;
    begin = Math.min(first, first + taken.sweep);
    end = Math.max(first, first + taken.sweep);
  }

  /** How far an excess may be off (mm). */
  double doubt() {
    return doubt;
  }

  /** Whether bands without a closed form may lie nearer than the last answer. */
  boolean isOpen() {
    return open;
  }

  /** Takes a place in plan; false when the tool comes nowhere near it. */
  boolean column(Profile of, double x, double y) {
    profile = of;
    ox = x - path.centreU;
    oy = y - path.centreV;
    r = Math.sqrt(ox * ox + oy * oy);
    nearest = Math.abs(r - mean);
    turned = false;
    contactOf = Double.NaN;
    return nearest - of.widest() <= doubt;
  }

  /**
   * The least excess of the distance from the axis over the radius there (mm) at the place last
   * taken; infinite where no band comes to the point's height.
   *
   * @param enough the search may end at the first value not above this (mm), and leaves out what is
   *     beyond it and the doubt; minus infinity to find the least
   */
  double excess(double z, double enough) {
    open = false;
    h0 = z - path.fromZ;
    double h1 = z - path.toZ;
    double lowest = Math.min(h0, h1);
    double highest = Math.max(h0, h1);
    double best = Double.POSITIVE_INFINITY;
    double most = enough > Double.NEGATIVE_INFINITY ? enough + 2 * doubt : best;
    Profile of = profile;
    for (int b = of.bandAt(lowest); b < of.bands() && of.low(b) <= highest; b++) {
      double bound = nearest - of.widest(b);
      if (bound < best && bound <= most) {
        if (!turned) {
          angle = r > 0 ? Math.atan2(oy, ox) : first;
          turned = true;
        }
        best = Math.min(best, band(b, enough));
        if (best <= enough) {
          return best;
        }
      }
    }
    return best;
  }

  private double band(int b, double enough) {
    double from = begin;
    double to = end;
    if (perRadian != 0) {
      // h = h0 - k (φ - first): the window in which the band is at the point's height.
      double a = first + (h0 - profile.low(b)) / perRadian;
      double c = first + (h0 - profile.high(b)) / perRadian;
      from = Math.max(begin, Math.min(a, c));
      to = Math.min(end, Math.max(a, c));
      if (from > to) {
        return Double.POSITIVE_INFINITY;
      }
    }
    boolean arc = profile.isArc(b);
    open |= arc && perRadian != 0;
    double q = arc ? 0 : profile.slope(b) * perRadian;
    double inPoint = r * r - q * q;
    double inPath = mean * mean - q * q;
    if (q != 0 && (inPoint <= 0 || inPath <= 0)) {
      return Math.min(at(b, from), at(b, to));
    }
    if (q != contactOf) {
      contactOf = q;
      contactAngle = q == 0 ? 0 : contact(q, inPoint, inPath);
    }
    double one = angle + contactAngle;
    double low = one + TURN * Math.ceil((from - one) / TURN);
    if (low > to) {
      return Math.min(at(b, from), at(b, to));
    }
    // Contacts are a turn apart; the first or the last is the deepest.
    double high = one + TURN * Math.floor((to - one) / TURN);
    double best = at(b, low);
    if (best > enough && high > low) {
      best = Math.min(best, at(b, high));
    }
    return best > enough ? Math.min(best, Math.min(at(b, from), at(b, to))) : best;
  }

  /** Angle of the tool beyond the point where a sloped band touches (rad). */
  private static double contact(double q, double inPoint, double inPath) {
    double distance = Math.abs(Math.sqrt(inPoint) - Math.sqrt(inPath));
    return Math.atan2(-q * distance, q * q + Math.sqrt(inPoint * inPath));
  }

  private double at(int b, double phi) {
    double half = Math.sin((phi - angle) / 2);
    double apart = r - mean;
    double distance = Math.sqrt(apart * apart + 4 * r * mean * half * half);
    double h = h0 - perRadian * (phi - first);
    return distance - profile.radiusOf(b, Math.min(profile.high(b), Math.max(profile.low(b), h)));
  }
}
