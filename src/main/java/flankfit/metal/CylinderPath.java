package flankfit.metal;

/** An upright cylinder, open at its top, and at its bottom unless its lower face stands out. */
final class CylinderPath extends BodyPath {
  private static final int HALVINGS = 50;
  private static final double ROUNDING = 1e-9;

  private final double radius;
  private final double low;
  private final double high;
  private final boolean stands;
  private double least;
  private double most;

  /**
   * A cylinder.
   *
   * @param low height of its lower end above the tip (mm)
   * @param high height of its upper end above the tip (mm)
   * @param stands whether its lower face stands out beyond what is below it
   */
  CylinderPath(PathPiece piece, double radius, double low, double high, boolean stands) {
    super(piece);
    this.radius = radius;
    this.low = low;
    this.high = high;
    this.stands = stands;
  }

  /** The shares at which heights between two (mm) are within the cylinder's; false if none. */
  private boolean reaches(double from, double to) {
    double rise = piece.z1() - piece.z0();
    double above = to - low - piece.z0();
    double below = from - high - piece.z0();
    if (rise == 0) {
      least = 0;
      most = 1;
      return below <= 0 && above >= 0;
    }
    double a = below / rise;
    double b = above / rise;
    least = Math.max(0, Math.min(a, b));
    most = Math.min(1, Math.max(a, b));
    return least <= most;
  }

  private double aside(double x, double y, double t) {
    double dx = piece.x(t) - x;
    double dy = piece.y(t) - y;
    return Math.sqrt(dx * dx + dy * dy);
  }

  @Override
  double depth(double x, double y, double z) {
    if (!reaches(z, z)) {
      return -1;
    }
    share = piece.nearest(x, y, least, most);
    double aside = aside(x, y, share);
    if (stands && z - piece.z(share) - low < radius - aside) {
      return overFace(x, y, z);
    }
    alongX = aside > 0 ? (piece.x(share) - x) / aside : 0;
    alongY = aside > 0 ? (piece.y(share) - y) / aside : 0;
    alongZ = 0;
    room = aside;
    return radius - aside;
  }

  /** The lower face is nearer where the side's depth is greatest: gives way to it. */
  private double overFace(double x, double y, double z) {
    alongX = 0;
    alongY = 0;
    alongZ = 1;
    double rise = piece.z1() - piece.z0();
    if (rise != 0) {
      double shallow = share;
      double deep = rise < 0 ? most : least;
      if (radius - aside(x, y, deep) >= z - piece.z(deep) - low) {
        share = deep;
      } else {
        for (int i = 0; i < HALVINGS; i++) {
          double middle = (shallow + deep) / 2;
          if (radius - aside(x, y, middle) >= z - piece.z(middle) - low) {
            shallow = middle;
          } else {
            deep = middle;
          }
        }
        share = shallow;
      }
    }
    double up = z - piece.z(share) - low;
    room = Math.max(0, radius - aside(x, y, share) - up);
    return up;
  }

  @Override
  boolean narrow(Clip clip, double deeper) {
    double greatest = stands ? Math.min(radius, high - low) : radius;
    if (deeper >= greatest || !reaches(clip.low[2], clip.high[2])) {
      return false;
    }
    double a = piece.z(least);
    double b = piece.z(most);
    double bottom = Math.min(a, b) + low + (stands ? deeper : 0);
    clip.low[2] = Math.max(clip.low[2], bottom);
    clip.high[2] = Math.min(clip.high[2], Math.max(a, b) + high);
    if (clip.low[2] > clip.high[2]) {
      return false;
    }
    return (piece.turns() || piece.z1() == piece.z0())
        ? narrowAside(clip, deeper)
        : narrowRamp(clip, deeper);
  }

  private boolean narrowAside(Clip clip, double deeper) {
    double x = clip.middle(0);
    double y = clip.middle(1);
    if (stands && piece.z1() != piece.z0()) {
      // Side and face are deepest at other places of the way; together they tell more.
      double z = clip.middle(2);
      share = piece.nearest(x, y, least, most);
      double face = z - piece.z(share) - low;
      double here = radius - aside(x, y, share);
      if (Math.min(here, face) <= deeper
          && (face >= here ? here : overFace(x, y, z)) + clip.half() <= deeper) {
        return false;
      }
    }
    double t = piece.nearest(x, y, least, most);
    double aside = aside(x, y, t);
    double half = Math.hypot(clip.high[0] - clip.low[0], clip.high[1] - clip.low[1]) / 2;
    double here = radius - aside;
    if (here + half <= deeper) {
      return false;
    }
    double beyond = bend(x, y, half);
    if (aside > 0 && beyond < half) {
      double nx = (piece.x(t) - x) / aside;
      double ny = (piece.y(t) - y) / aside;
      clip.plane(nx, ny, 0, nx * x + ny * y + deeper - here - beyond);
    }
    return true;
  }

  /**
   * On a straight way that rises or falls, the depth of the side and that of the face share the
   * work: with weights under which neither can be bettered by a step along the way, their sum
   * bounds the depth everywhere.
   */
  private boolean narrowRamp(Clip clip, double deeper) {
    double x = clip.middle(0);
    double y = clip.middle(1);
    double z = clip.middle(2);
    double t = piece.nearest(x, y, least, most);
    double face = z - piece.z(t) - low;
    double limit = stands ? radius - aside(x, y, t) : 0;
    double upwards = 0;
    double sideways = 1;
    double here = radius - aside(x, y, t);
    if (face < limit) {
      double deep = piece.z1() < piece.z0() ? most : least;
      double faceThere = z - piece.z(deep) - low;
      if (faceThere < (stands ? radius - aside(x, y, deep) : 0)) {
        if (!stands) {
          return here + clip.half() > deeper;
        }
        clip.plane(0, 0, 1, z + deeper - faceThere);
        return faceThere + clip.half() > deeper;
      }
      t = meeting(x, y, z, t, deep);
      double aside = aside(x, y, t);
      here = radius - aside;
      double along =
          aside > 0
              ? ((x - piece.x(t)) * (piece.x1() - piece.x0())
                      + (y - piece.y(t)) * (piece.y1() - piece.y0()))
                  / aside
              : 0;
      double fall = piece.z0() - piece.z1();
      double weight = stands ? Math.min(1, Math.max(0, fall / (fall - along))) : 1;
      sideways = weight;
      upwards = stands ? 1 - weight : Math.max(0, -along / fall);
    }
    double aside = aside(x, y, t);
    if (aside > 0) {
      double nx = sideways * (piece.x(t) - x) / aside;
      double ny = sideways * (piece.y(t) - y) / aside;
      clip.plane(nx, ny, upwards, nx * x + ny * y + upwards * z + deeper - here - ROUNDING);
    }
    return here + Math.max(1, upwards + 1) * clip.half() > deeper;
  }

  /** Where between two shares the face's depth becomes what the side's, or nothing, asks for. */
  private double meeting(double x, double y, double z, double shallow, double deep) {
    double from = shallow;
    double to = deep;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (from + to) / 2;
      double asked = stands ? radius - aside(x, y, middle) : 0;
      if (z - piece.z(middle) - low < asked) {
        from = middle;
      } else {
        to = middle;
      }
    }
    return to;
  }

  /** How far the depth may rise above its tangent within a distance of a place (mm). */
  private double bend(double x, double y, double half) {
    if (!piece.turns()) {
      return 0;
    }
    double slope = piece.growth() / Math.max(1e-9, piece.radius() * Math.abs(piece.sweep()));
    double spiral = Math.min(1, slope * slope) * radius;
    double fromCentre = Math.hypot(x - piece.centreX(), y - piece.centreY());
    if (fromCentre > piece.radius() + Math.abs(piece.growth()) + half) {
      return spiral;
    }
    double clear = fromCentre - half;
    return clear > 0 ? half * half / (2 * clear) + spiral : Double.POSITIVE_INFINITY;
  }
}
