package flankfit.metal;

/**
 * How far a point stays out of a profile that moves along an arc about the tool's direction, level
 * or a helix, measured across the axis. With the point at a distance r from the arc's centre and
 * the path at A, the distance from the tool's axis is {@code ρ² = r² + A² - 2 r A cos u}, u the
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

  /** Below this tangent an angle is read off a series (1): good to 1e-12 of it. */
  private static final double SMALL = 0.1;

  /** Up to this angle {@code u² (1 - u²/12)} grows, and is below {@code 2 - 2 cos u} (rad). */
  private static final double RISING = 2.4;

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
  private boolean turned;
  private double ox;
  private double oy;
  private double nearest;
  private double product;
  private boolean open;
  private double best;
  private double bestAngle;
  private double bestBeyond;
  private boolean bestAtEnd;
  private int bestBand;

  /** Of the turn under way: the window of angles beyond the point, and the height at the point. */
  private double from;

  private double to;
  private double height;

  /** The angle of contact last found, and for which size of slope. */
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

  /** Whether the path stays on one height. */
  boolean isLevel() {
    return perRadian == 0;
  }

  /** Share of the path at which the last excess was found (1). */
  double share() {
    double share = (bestAngle - first) / path.sweep;
    return Math.min(1, Math.max(0, share));
  }

  /** Takes a place in plan; false when the tool comes nowhere near it. */
  boolean column(Profile of, double x, double y) {
    profile = of;
    ox = x - path.centreU;
    oy = y - path.centreV;
    turned = false;
    radius(Math.sqrt(ox * ox + oy * oy));
    return nearest - of.widest() <= doubt;
  }

  /** Takes a place in plan of which distance and angle about the centre are known. */
  void polar(Profile of, double distance, double turn) {
    profile = of;
    angle = turn;
    turned = true;
    radius(distance);
  }

  /** Takes a place in plan beside one whose angle is known, from which a small one leads to it. */
  void beside(Profile of, double x, double y, double knownX, double knownY, double known) {
    double ax = knownX - path.centreU;
    double ay = knownY - path.centreV;
    ox = x - path.centreU;
    oy = y - path.centreV;
    profile = of;
    angle = known + angle(ax * oy - ay * ox, ax * ox + ay * oy);
    turned = true;
    radius(Math.sqrt(ox * ox + oy * oy));
  }

  private void radius(double distance) {
    r = distance;
    nearest = Math.abs(r - mean);
    product = r * mean;
    contactOf = Double.NaN;
  }

  /** Distance of the place last taken from the arc's centre (mm). */
  double distance() {
    return r;
  }

  /** Angle of the place last taken about the arc's centre (rad). */
  double angle() {
    if (!turned) {
      angle = r > 0 ? Math.atan2(oy, ox) : first;
      turned = true;
    }
    return angle;
  }

  /** Distance in plan between the place last taken and the path (mm). */
  double planDistance() {
    double found = Double.POSITIVE_INFINITY;
    if (end - begin >= TURN) {
      return nearest;
    }
    for (double at = firstTurn(); at <= end + Math.PI; at += TURN) {
      double low = Math.max(begin - at, -Math.PI);
      double high = Math.min(end - at, Math.PI);
      double u = Math.min(high, Math.max(low, 0));
      if (low <= high && apart(u) < found) {
        found = apart(u);
        bestAngle = at + u;
      }
    }
    return found;
  }

  /** Share of a level path that is nearest to the place last taken (1). */
  double nearestShare() {
    if (end - begin >= TURN) {
      double at = firstTurn();
      bestAngle = at < begin ? at + TURN : at;
    } else {
      planDistance();
    }
    return share();
  }

  /** The angle of the point, so many turns on that the path may be within half a turn of it. */
  private double firstTurn() {
    double least = begin - Math.PI;
    return angle() + TURN * Math.ceil((least - angle()) / TURN);
  }

  /**
   * The least excess of the distance from the axis over the radius there (mm) at the place last
   * taken, found where it is below a limit.
   *
   * @param enough the search may end at the first value not above this (mm)
   * @param limit nothing from here on matters (mm); infinite for all
   * @return the least, a value not above {@code enough}, or the limit when all else is not below
   */
  double excess(double z, double enough, double limit) {
    open = false;
    best = limit;
    bestAngle = first;
    if (nearest - profile.widest() >= best) {
      return best;
    }
    double rise = z - path.fromZ;
    for (double at = firstTurn(); at <= end + Math.PI && best > enough; at += TURN) {
      from = Math.max(begin - at, -Math.PI);
      to = Math.min(end - at, Math.PI);
      if (from <= to) {
        height = rise - perRadian * (at - first);
        turn(at, enough);
      }
    }
    return best;
  }

  /** One turn: from the band beside the point outwards, as long as bands may be nearer. */
  private void turn(double at, double enough) {
    Profile of = profile;
    double beside = Math.min(to, Math.max(from, 0));
    if (bound(beside) - of.widest() >= best) {
      return;
    }
    int middle = of.bandAt(height - perRadian * beside);
    for (int b = middle; b < of.bands() && best > enough; b++) {
      if (!band(b, at, true)) {
        break;
      }
    }
    for (int b = middle - 1; b >= 0 && best > enough; b--) {
      if (!band(b, at, false)) {
        break;
      }
    }
  }

  /** A lower bound of the distance from the axis at an angle (mm). */
  private double bound(double u) {
    double a = Math.min(RISING, Math.abs(u));
    double square = a * a;
    return Math.sqrt(nearest * nearest + product * square * (1 - square / 12));
  }

  /** Takes a band; false if none beyond it can be nearer. */
  private boolean band(int b, double at, boolean upwards) {
    double low = from;
    double high = to;
    if (perRadian != 0) {
      double a = (height - profile.low(b)) / perRadian;
      double c = (height - profile.high(b)) / perRadian;
      low = Math.max(low, Math.min(a, c));
      high = Math.min(high, Math.max(a, c));
      if (low > high) {
        // Bands short of the window, which begins beside a gap, may have others beyond them.
        return upwards ? profile.low(b) <= highest() : profile.high(b) >= lowest();
      }
    } else if (height < profile.low(b) || height > profile.high(b)) {
      return upwards ? profile.low(b) <= height : profile.high(b) >= height;
    }
    double near = bound(low > 0 ? low : high < 0 ? high : 0);
    if (near - profile.widest() >= best) {
      return low <= 0 && high >= 0;
    }
    if (near - profile.widest(b) < best) {
      least(b, low, high, at);
    }
    return true;
  }

  private double lowest() {
    return Math.min(height - perRadian * from, height - perRadian * to);
  }

  private double highest() {
    return Math.max(height - perRadian * from, height - perRadian * to);
  }

  private void least(int b, double low, double high, double at) {
    boolean arc = profile.isArc(b);
    open |= arc && perRadian != 0;
    double q = arc ? 0 : profile.slope(b) * perRadian;
    double inPoint = r * r - q * q;
    double inPath = mean * mean - q * q;
    if (q != 0 && (inPoint <= 0 || inPath <= 0)) {
      take(b, low, at);
      take(b, high, at);
      return;
    }
    // Both flanks of a symmetric tooth touch at the same angle, before and behind.
    double size = Math.abs(q);
    if (size != contactOf) {
      contactOf = size;
      contactAngle = q == 0 ? 0 : contact(size, inPoint, inPath);
    }
    double u = Math.copySign(1, q) * contactAngle;
    // There the distance is convex, so the contact or the end next to it is the least.
    double widest = Math.max(Math.max(-low, high), Math.abs(u));
    boolean convex = !arc && (1 - widest * widest / 2) * Math.max(r, mean) >= Math.min(r, mean);
    if (convex) {
      take(b, Math.min(high, Math.max(low, u)), at);
      return;
    }
    if (u >= low && u <= high) {
      take(b, u, at);
    }
    take(b, low, at);
    take(b, high, at);
  }

  /** Angle of the tool beyond the point where a sloped band touches (rad). */
  private static double contact(double q, double inPoint, double inPath) {
    double ofPoint = Math.sqrt(inPoint);
    double ofPath = Math.sqrt(inPath);
    double across = -q * Math.abs(ofPoint - ofPath);
    double along = q * q + ofPoint * ofPath;
    return angle(across, along);
  }

  /** The angle whose tangent is a ratio (rad), by a series where it is small. */
  private static double angle(double across, double along) {
    double t = across / along;
    if (!(along > 0) || Math.abs(t) > 2 * SMALL) {
      return Math.atan2(across, along);
    }
    if (Math.abs(t) > SMALL) {
      return 2 * series(t / (1 + Math.sqrt(1 + t * t)));
    }
    return series(t);
  }

  private static double series(double t) {
    double s = t * t;
    return t * (1 - s * (1.0 / 3 - s * (1.0 / 5 - s * (1.0 / 7 - s * (1.0 / 9 - s / 11)))));
  }

  private double apart(double u) {
    double half = Math.sin(u / 2);
    return Math.sqrt(nearest * nearest + 4 * product * half * half);
  }

  private void take(int b, double u, double at) {
    double h = height - perRadian * u;
    double radius = profile.radiusOf(b, Math.min(profile.high(b), Math.max(profile.low(b), h)));
    double excess = apart(u) - radius;
    if (excess < best) {
      best = excess;
      bestAngle = at + u;
      bestBeyond = u;
      bestAtEnd = u == from || u == to;
      bestBand = b;
    }
  }

  /**
   * The direction in which the last excess grows at a place, that of the surface where it is 0 and
   * the band's side is met.
   *
   * @param target takes the unit vector, 3 long
   */
  void direction(double x, double y, double[] target) {
    double dx = x - path.centreU - mean * Math.cos(bestAngle);
    double dy = y - path.centreV - mean * Math.sin(bestAngle);
    double across = Math.sqrt(dx * dx + dy * dy);
    double up = across > 0 ? up(across) : 0;
    double length = Math.sqrt(1 + up * up);
    double scale = across > 0 ? 1 / (across * length) : 0;
    target[0] = dx * scale;
    target[1] = dy * scale;
    target[2] = up / length;
  }

  /**
   * How fast the last excess grows upwards (1). Where a band or a corner of the profile touches on
   * its way, the axis must go on with the height, by the rise of the helix; at an end of the path
   * it stays, and the band's radius changes.
   */
  private double up(double across) {
    return perRadian == 0 || bestAtEnd
        ? -profile.slope(bestBand)
        : product * Math.sin(bestBeyond) / (across * perRadian);
  }
}
