package flankfit.metal;

import java.util.List;

/**
 * A thread mill that moves along its axis by its pitch or more passes over a plain cylinder from
 * its first tooth to its last, and over that of its core.
 */
final class RowsAlong {
  private static final double SAME = 1e-9;

  /** Places along a piece, and round the tool, that are tried. */
  private static final int PLACES = 24;

  /** Depth of a cut that counts (mm). */
  private static final double FIRST = 1e-3;

  private RowsAlong() {}

  /** Whether a way is one along the axis that is long enough. */
  static boolean isFull(ToolBody body, PathPiece piece) {
    if (body.isConvex() || piece.turns() || piece.x0() != piece.x1() || piece.y0() != piece.y1()) {
      return false;
    }
    Profile profile = body.cutting();
    double way = Math.abs(piece.z1() - piece.z0());
    double last = firstCrest(profile);
    for (int b = 0; b < profile.bands(); b++) {
      if (reaches(profile, b)) {
        if (profile.low(b) - last > way) {
          return false;
        }
        last = profile.high(b);
      }
    }
    return true;
  }

  /** The two cylinders on their way. */
  static List<BodyPath> paths(ToolBody body, PathPiece piece) {
    Profile profile = body.cutting();
    double core = Double.POSITIVE_INFINITY;
    double low = firstCrest(profile);
    double high = low;
    for (int b = 0; b < profile.bands(); b++) {
      core = Math.min(core, profile.radiusOf(b, profile.low(b)));
      core = Math.min(core, profile.radiusOf(b, profile.high(b)));
      high = reaches(profile, b) ? crestEnd(profile, b) : high;
    }
    BodyPath teeth = new CylinderPath(piece, profile.widest(), low, high, true);
    return core > SAME
        ? List.of(teeth, new CylinderPath(piece, core, profile.bottom(), profile.top(), true))
        : List.of(teeth);
  }

  /** Whether the crests of the teeth pass over metal at one of many places of a move. */
  static boolean cut(Metal metal, int move, ToolBody body, List<PathPiece> pieces) {
    Profile profile = body.cutting();
    for (PathPiece piece : pieces) {
      for (int i = 0; i <= PLACES; i++) {
        double t = (double) i / PLACES;
        for (int b = 0; b < profile.bands(); b++) {
          double up = piece.z(t) + (profile.low(b) + profile.high(b)) / 2;
          if (reaches(profile, b)
              && isMetalRound(metal, move, piece.x(t), piece.y(t), up, profile.widest(b))) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private static boolean isMetalRound(
      Metal metal, int move, double x, double y, double z, double radius) {
    for (int i = 0; i < PLACES; i++) {
      double a = 2 * Math.PI * i / PLACES;
      double r = radius - FIRST;
      if (metal.isMetal(x + r * Math.cos(a), y + r * Math.sin(a), z, move)) {
        return true;
      }
    }
    return false;
  }

  private static boolean reaches(Profile profile, int b) {
    return profile.widest(b) >= profile.widest() - SAME;
  }

  private static double firstCrest(Profile profile) {
    for (int b = 0; b < profile.bands(); b++) {
      if (reaches(profile, b)) {
        boolean atLow = profile.radiusOf(b, profile.low(b)) >= profile.widest() - SAME;
        return atLow ? profile.low(b) : profile.high(b);
      }
    }
    throw new IllegalArgumentException("no band is the widest");
  }

  private static double crestEnd(Profile profile, int b) {
    boolean atHigh = profile.radiusOf(b, profile.high(b)) >= profile.widest() - SAME;
    return atHigh ? profile.high(b) : profile.low(b);
  }
}
