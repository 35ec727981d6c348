package flankfit.metal;

import flankfit.motion.Tape;

/**
 * The volume that a tool's cutting part sweeps in one move, loaded anew for each move. Which side a
 * point lies on is exact; so is the distance from outside. The distance from inside is the depth in
 * the tool at its deepest pass found, never more than the true one. Not thread-safe.
 */
public final class SweptCut {
  /** How exact distances from outside are (mm). */
  private static final double EXACT = 1e-10;

  private static final double LEAST = 1e-12;

  /** So near (mm) the closest pass in plan counts as the closest. */
  private static final double CLOSE = 2e-3;

  private final ToolPath path = new ToolPath();
  private final RampSign ramp = new RampSign();
  private final RoundSign round = new RoundSign();
  private final DistanceSearch search = new DistanceSearch();
  private final DepthSearch depth = new DepthSearch();
  private final Near near = new Near();
  private Profile profile = Profile.cylinder(1, 0, 1);
  private double share;
  private double columnX;
  private double columnY;
  private double columnRadius;

  /** Takes a move of a tape. */
  public void load(Tape tape, int move, Profile cutting) {
    profile = cutting;
    path.load(tape, move);
    if (path.kind == ToolPath.Kind.RAMP) {
      ramp.load(path);
    } else if (path.kind == ToolPath.Kind.ROUND) {
      round.load(path);
    }
  }

  ToolPath path() {
    return path;
  }

  /** Whether the tool passes over a point; its own surface belongs to it. */
  public boolean holds(double x, double y, double z) {
    return column(x, y) && columnHolds(z);
  }

  /** Takes a place in plan; false when the tool passes over no point there. */
  boolean column(double x, double y) {
    columnX = x;
    columnY = y;
    return switch (path.kind) {
      case REST, LEVEL, PLUNGE -> {
        columnRadius = straightNearest(x, y);
        yield columnRadius <= profile.widest();
      }
      case RAMP -> ramp.column(profile, x, y);
      case ROUND -> {
        boolean near = round.column(profile, x, y);
        if (near && isStack()) {
          columnRadius = round.planDistance();
          near = columnRadius <= profile.widest();
        }
        yield near;
      }
      case TILTED -> true;
    };
  }

  /** Takes a place in plan of which distance and angle about an arc's centre are known. */
  void place(double distance, double angle) {
    round.polar(profile, distance, angle);
  }

  /** Takes a place in plan beside one whose angle about an arc's centre is known. */
  void placeBeside(double x, double y, double knownX, double knownY, double angle) {
    round.beside(profile, x, y, knownX, knownY, angle);
  }

  /** Whether the tool passes over a point at the place in plan last taken. */
  boolean columnHolds(double z) {
    if (isStack()) {
      return columnRadius <= reach(z);
    }
    return switch (path.kind) {
      case RAMP -> ramp.excess(z, 0) <= 0;
      case ROUND -> turns(z);
      default -> searched(columnX, columnY, z);
    };
  }

  private boolean turns(double z) {
    double doubt = round.doubt();
    double found = round.excess(z, -doubt, doubt + EXACT);
    if (found <= -doubt) {
      return true;
    }
    return (round.isOpen() || found <= doubt) && searched(columnX, columnY, z);
  }

  /**
   * Whether all that the tool passes over at one height is what lies no farther from its path in
   * plan than one radius.
   */
  boolean isStack() {
    return switch (path.kind) {
      case REST, LEVEL, PLUNGE -> true;
      case ROUND -> round.isLevel() && round.doubt() == 0;
      case RAMP, TILTED -> false;
    };
  }

  /** Of a stack: the radius at a height (mm); below 0 where the tool does not come. */
  double reach(double z) {
    if (path.kind == ToolPath.Kind.PLUNGE) {
      double low = z - Math.max(path.fromZ, path.toZ);
      return profile.widestBetween(low, z - Math.min(path.fromZ, path.toZ));
    }
    return profile.radiusAt(z - path.fromZ);
  }

  /** Of a stack: distance in plan between a place and the path (mm). */
  double planDistance(double x, double y) {
    if (path.kind != ToolPath.Kind.ROUND) {
      return straightNearest(x, y);
    }
    round.column(profile, x, y);
    return round.planDistance();
  }

  /**
   * A measure of how far outside a point is that changes its sign where {@link #holds} does on most
   * paths, to help find that place; infinite where it says nothing (mm).
   */
  double excess(double x, double y, double z) {
    if (isStack()) {
      double reach = reach(z);
      return reach < 0 ? Double.POSITIVE_INFINITY : planDistance(x, y) - reach;
    }
    return switch (path.kind) {
      case RAMP -> {
        ramp.column(profile, x, y);
        yield ramp.excess(z, Double.NEGATIVE_INFINITY);
      }
      case ROUND -> {
        round.column(profile, x, y);
        yield round.excess(z, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
      }
      default -> Double.POSITIVE_INFINITY;
    };
  }

  /**
   * The measure of {@link #excess} at the place in plan last taken, as far as it matters. At one
   * height it changes no faster than the place (1).
   *
   * @param limit nothing from here on matters (mm)
   * @return the least, off by {@link #doubt} at most; the limit if it is no less
   */
  double columnExcess(double z, double limit) {
    if (path.kind == ToolPath.Kind.RAMP) {
      return Math.min(limit, ramp.excess(z, Double.NEGATIVE_INFINITY));
    }
    return round.excess(z, Double.NEGATIVE_INFINITY, limit);
  }

  /** Whether closed forms give the measure of {@link #excess} everywhere. */
  boolean isMeasured() {
    boolean open = path.kind == ToolPath.Kind.ROUND && !round.isLevel() && profile.hasArcs();
    return path.kind != ToolPath.Kind.TILTED && !open;
  }

  /** How far a measure may be off (mm). */
  double doubt() {
    return path.kind == ToolPath.Kind.ROUND ? round.doubt() : 0;
  }

  /**
   * A measure with the sign of {@link #holds}: where it is too near to tell, its size stays and its
   * sign is asked for.
   */
  double signed(double x, double y, double z, double found) {
    double doubt = doubt();
    if (doubt == 0 || Math.abs(found) > doubt) {
      return found;
    }
    double size = Math.max(Math.abs(found), Double.MIN_NORMAL);
    return holds(x, y, z) ? -size : size;
  }

  /** The closed forms of an arc, for loops that know a place's distance and angle already. */
  RoundSign round() {
    return round;
  }

  /** Whether the last {@link #excess} tells by its sign just what {@link #holds} does. */
  boolean isSure() {
    return switch (path.kind) {
      case REST, LEVEL, PLUNGE, RAMP -> true;
      case ROUND -> round.doubt() == 0 && !round.isOpen();
      case TILTED -> false;
    };
  }

  private boolean searched(double x, double y, double z) {
    return search.least(path, profile, x, y, z, EXACT, EXACT) <= 0;
  }

  /** Distance in plan from a level straight path (mm); notes where. */
  private double straightNearest(double x, double y) {
    double dx = path.toX - path.fromX;
    double dy = path.toY - path.fromY;
    double square = dx * dx + dy * dy;
    double s = square > 0 ? ((x - path.fromX) * dx + (y - path.fromY) * dy) / square : 0;
    share = Math.min(1, Math.max(0, s));
    double ex = x - path.fromX - share * dx;
    double ey = y - path.fromY - share * dy;
    return Math.sqrt(ex * ex + ey * ey);
  }

  /** Signed distance (mm), below 0 where the tool passes. */
  public double distance(double x, double y, double z) {
    if (path.kind == ToolPath.Kind.REST || path.kind == ToolPath.Kind.LEVEL) {
      profile.distance(straightNearest(x, y), z - path.fromZ, near);
      return near.distance;
    }
    if (holds(x, y, z)) {
      double found = depth.deepest(path, profile, x, y, z, Double.POSITIVE_INFINITY);
      share = depth.share();
      return Math.min(found, -LEAST);
    }
    double found = search.least(path, profile, x, y, z, Double.POSITIVE_INFINITY, EXACT);
    share = search.share();
    return Math.max(found, LEAST);
  }

  /**
   * The distance from outside as far as it matters (mm).
   *
   * @param limit distance beyond which nothing matters (mm)
   * @return the distance, at most a tenth of the limit too great; the limit if it is no less; 0
   *     inside
   */
  double within(double x, double y, double z, double limit) {
    if (path.kind == ToolPath.Kind.REST || path.kind == ToolPath.Kind.LEVEL) {
      profile.distance(straightNearest(x, y), z - path.fromZ, near);
      return Math.max(0, near.distance);
    }
    return Math.max(0, search.least(path, profile, x, y, z, limit, limit / 10));
  }

  /** The distance from outside (mm), or the limit if it is no less; 0 inside. */
  double exactWithin(double x, double y, double z, double limit) {
    return Math.max(0, search.least(path, profile, x, y, z, limit, EXACT));
  }

  /** Whether a ball lies in the volume; false may mean that it was not found. */
  boolean coversBall(double x, double y, double z, double radius) {
    if (path.kind == ToolPath.Kind.REST || path.kind == ToolPath.Kind.LEVEL) {
      profile.distance(straightNearest(x, y), z - path.fromZ, near);
      return near.distance <= -radius;
    }
    return depth.deepest(path, profile, x, y, z, radius) <= -radius;
  }

  /**
   * The outward direction of the volume's distance at a point outside or on its surface.
   *
   * @param target takes the unit vector, 3 long
   */
  void normal(double x, double y, double z, double[] target) {
    if (path.kind == ToolPath.Kind.REST || path.kind == ToolPath.Kind.LEVEL) {
      straightNearest(x, y);
    } else {
      search.least(path, profile, x, y, z, Double.POSITIVE_INFINITY, LEAST);
      share = search.share();
    }
    fill(x, y, z, target);
  }

  private void fill(double x, double y, double z, double[] target) {
    double dx = x - path.x(share);
    double dy = y - path.y(share);
    double r = Math.sqrt(dx * dx + dy * dy);
    profile.distance(r, z - path.z(share), near);
    double scale = r > 0 ? near.alongRadius / r : 0;
    target[0] = dx * scale;
    target[1] = dy * scale;
    target[2] = r > 0 ? near.alongAxis : Math.signum(near.alongAxis);
  }

  /**
   * The same close to the surface, good to what the point is off it. Quicker, since the place along
   * an arc that the measure names is near enough.
   */
  void closeNormal(double x, double y, double z, double[] target) {
    boolean near = excess(x, y, z) < CLOSE;
    if (near && path.kind == ToolPath.Kind.PLUNGE) {
      double low = Math.min(path.fromZ, path.toZ);
      double high = Math.max(path.fromZ, path.toZ);
      double at = z - profile.whereWidest(z - high, z - low);
      share = (at - path.fromZ) / (path.toZ - path.fromZ);
      fill(x, y, z, target);
    } else if (near && path.kind == ToolPath.Kind.ROUND && isMeasured()) {
      share = isStack() ? round.nearestShare() : round.share();
      fill(x, y, z, target);
    } else {
      normal(x, y, z, target);
    }
  }

  /**
   * Widens a box until it holds the volume.
   *
   * @param boxes takes low x, y, z and high x, y, z (mm) from {@code at} on
   */
  void include(double[] boxes, int at) {
    int pieces = path.pieces();
    double stray = path.stray(1.0 / pieces) + LEAST;
    double wide = profile.widest() + stray;
    for (int i = 0; i <= pieces; i++) {
      double s = (double) i / pieces;
      double x = path.x(s);
      double y = path.y(s);
      double z = path.z(s);
      boxes[at] = Math.min(boxes[at], x - wide);
      boxes[at + 1] = Math.min(boxes[at + 1], y - wide);
      boxes[at + 2] = Math.min(boxes[at + 2], z + profile.bottom() - stray);
      boxes[at + 3] = Math.max(boxes[at + 3], x + wide);
      boxes[at + 4] = Math.max(boxes[at + 4], y + wide);
      boxes[at + 5] = Math.max(boxes[at + 5], z + profile.top() + stray);
    }
  }
}
