package flankfit.metal;

/**
 * Whether a profile that moves along an arc about the tool's direction, level or a helix, passes
 * over a point. With the point at a distance r from the arc's centre and the path at A, the distance
 * from the tool's axis is {@code ρ² = r² + A² - 2 r A cos ψ}, ψ the angle of the axis beyond the
 * point. On a straight band the distance less the band's radius is least at an end of the band's
 * window or where {@code ρ = |√(r² - q²) - √(A² - q²)|}, q the band's slope times the rise for one
 * radian: the contact of an involute helicoid.
 *
 * <p>A path whose radius changes is taken at its mean radius; what that leaves open is open.
 */
final class RoundSign {
  static final int NO = 0;
  static final int OPEN = 1;
  static final int YES = 2;

  private ToolPath path;
  private double mean;
  private double doubt;
  private double perRadian;
  private double first;
  private double last;

  void load(ToolPath along) {
    path = along;
    mean = (along.radius + along.endRadius) / 2;
    doubt = Math.abs(along.endRadius - along.radius) / 2;
    // What rounding may do to the distances; the search decides on the rest.
    doubt = doubt == 0 ? 0 : doubt + 1e-12;
    perRadian = (along.toZ - along.fromZ) / along.sweep;
    first = along.startAngle;
    last = along.startAngle + along.sweep;
  }

  /** {@link #YES}, {@link #NO}, or {@link #OPEN}. */
  int holds(Profile profile, double x, double y, double z) {
    double ox = x - path.centreU;
    double oy = y - path.centreV;
    double r = Math.sqrt(ox * ox + oy * oy);
    double nearest = Math.abs(r - mean);
    if (nearest > profile.widest() + doubt) {
      return NO;
    }
    double h0 = z - path.fromZ;
    double h1 = z - path.toZ;
    double lowest = Math.min(h0, h1);
    double highest = Math.max(h0, h1);
    int answer = NO;
    double angle = Double.NaN;
    for (int b = profile.bandAt(lowest); b < profile.bands() && profile.low(b) <= highest; b++) {
      if (nearest <= profile.widest(b) + doubt) {
        if (Double.isNaN(angle)) {
          angle = r > 0 ? Math.atan2(oy, ox) : first;
        }
        int found = band(profile, b, r, angle, h0);
        if (found == YES) {
          return YES;
        }
        answer = Math.max(answer, found);
      }
    }
    return answer;
  }

  private int band(Profile profile, int b, double r, double angle, double h0) {
    double from = first;
    double to = last;
    if (perRadian != 0) {
      // h = h0 - k (φ - first): the window in which the band is at the point's height.
      double a = first + (h0 - profile.low(b)) / perRadian;
      double c = first + (h0 - profile.high(b)) / perRadian;
      from = Math.max(Math.min(first, last), Math.min(a, c));
      to = Math.min(Math.max(first, last), Math.max(a, c));
      if (from > to) {
        return NO;
      }
    } else {
      from = Math.min(first, last);
      to = Math.max(first, last);
    }
    if (profile.isArc(b) && perRadian != 0) {
      return OPEN;
    }
    double slope = profile.isArc(b) ? 0 : profile.slope(b);
    int answer = Math.max(at(profile, b, r, angle, h0, from), at(profile, b, r, angle, h0, to));
    double q = slope * perRadian;
    double inPoint = r * r - q * q;
    double inPath = mean * mean - q * q;
    boolean contact = q == 0 || (inPoint > 0 && inPath > 0);
    if (answer == YES || !contact) {
      return answer;
    }
    double least = q == 0 ? 0 : contactAngle(q, inPoint, inPath);
    return Math.max(answer, contacts(profile, b, r, angle, h0, angle + least, from, to));
  }

  /** Angle of the tool beyond the point where a sloped band touches (rad). */
  private static double contactAngle(double q, double inPoint, double inPath) {
    double root = Math.sqrt(inPoint * inPath);
    double distance = Math.abs(Math.sqrt(inPoint) - Math.sqrt(inPath));
    return Math.atan2(-q * distance, q * q + root);
  }

  /** The contacts in a window are a turn apart; the first or the last is the deepest. */
  private int contacts(
      Profile profile, int b, double r, double angle, double h0, double one, double from, double to) {
    double turn = 2 * Math.PI;
    double low = one + turn * Math.ceil((from - one) / turn);
    if (low > to) {
      return NO;
    }
    double high = one + turn * Math.floor((to - one) / turn);
    int answer = at(profile, b, r, angle, h0, low);
    return answer == YES || high <= low ? answer : Math.max(answer, at(profile, b, r, angle, h0, high));
  }

  private int at(Profile profile, int b, double r, double angle, double h0, double phi) {
    double half = Math.sin((phi - angle) / 2);
    double apart = r - mean;
    double distance = Math.sqrt(apart * apart + 4 * r * mean * half * half);
    double h = h0 - perRadian * (phi - first);
    double reach = profile.radiusOf(b, Math.min(profile.high(b), Math.max(profile.low(b), h)));
    if (doubt == 0) {
      return distance <= reach ? YES : NO;
    }
    return distance <= reach - doubt ? YES : distance <= reach + doubt ? OPEN : NO;
  }
}
