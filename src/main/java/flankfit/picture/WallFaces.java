package flankfit.picture;

import flankfit.solid.Solid;
import flankfit.sweep.Wall;
import flankfit.sweep.WallGrid;
import java.util.Optional;

/**
 * The exact wall of a thread as triangles, in rows so low that crests stay crisp at the picture's
 * scale, in place of the cells that hold the rest of the body. Only where both are the same
 * surface.
 */
public final class WallFaces {
  /** Rows and columns at most: some 60 MB of vertices. */
  private static final int MOST_ROWS = 2400;

  private static final int MOST_COLUMNS = 720;
  private static final int LEAST_COLUMNS = 180;

  /** Accuracy of the wall's radii (mm). */
  private static final double ACCURACY = 5e-5;

  /** Distance from either side of the wall at which metal and air must lie (mm). */
  private static final double BOTH_SIDES = 0.012;

  /** Rows and columns between two places where that is looked at. */
  private static final int STRIDE = 7;

  /** Distance from the ends of the wall that is left to the cells (mm). */
  private static final double FROM_ENDS = 0.02;

  private final BodyFaces faces;
  private final Solid solid;
  private final Look look;

  /**
   * How the wall looks.
   *
   * @param mirror mirror colour (0xRRGGBB)
   * @param row height of a row (mm), such as half a pixel
   * @param sagitta greatest distance of a chord from its arc (mm)
   */
  public record Look(int mirror, double row, double sagitta) {}

  /** What share of the sky a place sees, 0 to 255. */
  public interface Sky {
    /** Of a place (mm) with a unit normal out of the metal. */
    int open(double x, double y, double z, double nx, double ny, double nz);
  }

  /** Adds walls to a body's faces. */
  public WallFaces(BodyFaces faces, Solid solid, Look look) {
    this.faces = faces;
    this.solid = solid;
    this.look = look;
  }

  /**
   * Adds a wall; nothing where another surface meets it, such as a cross hole, or where the body is
   * not cut as far.
   *
   * @param wall the wall, about the axis of its hole or boss
   * @param x axis (mm)
   * @param y axis (mm)
   * @param shallow radius of hole or boss before the thread (mm)
   * @param deep radius that the grooves do not reach beyond (mm)
   * @param pitch of the thread (mm)
   * @param perRadian rise of the helix (mm/rad), signed
   * @return where the body's own faces are not to be drawn
   */
  public Optional<ThreadRegion> add(
      Wall wall,
      double x,
      double y,
      double shallow,
      double deep,
      double pitch,
      double perRadian,
      Sky sky) {
    double low = wall.bottom() + FROM_ENDS;
    double high = highest(wall, deep);
    if (high - low < pitch) {
      return Optional.empty();
    }
    double[] z = evenly(low, high, rows(high - low));
    double[] theta = evenly(0, 2 * Math.PI, columns(Math.max(shallow, deep)));
    WallGrid grid = WallGrid.of(wall, theta, z, shallow, deep, ACCURACY);
    double sign = wall.isInternal() ? 1 : -1;
    double inner = wall.isInternal() ? 0.7 * Math.min(shallow, deep) : deep - pitch / 4;
    double outer = wall.isInternal() ? deep + pitch / 4 : shallow + pitch / 4;
    if (!isSame(grid, x, y, sign, wall.isInternal() ? outer : inner)) {
      return Optional.empty();
    }
    triangles(grid, x, y, sign, perRadian, sky);
    return Optional.of(new ThreadRegion(x, y, low, high, inner, outer));
  }

  private int rows(double length) {
    return (int) Math.min(MOST_ROWS, Math.max(8, Math.ceil(length / look.row())));
  }

  private int columns(double radius) {
    double turn = 2 * StrictMath.acos(Math.max(0.5, 1 - look.sagitta() / radius));
    return (int) Math.max(LEAST_COLUMNS, Math.min(MOST_COLUMNS, Math.ceil(2 * Math.PI / turn)));
  }

  private static double[] evenly(double from, double to, int pieces) {
    double[] all = new double[pieces + 1];
    for (int i = 0; i <= pieces; i++) {
      all[i] = from + (to - from) * i / pieces;
    }
    return all;
  }

  /** Below a countersink or chamfer, where the wall is no farther off than the grooves' bottom. */
  private static double highest(Wall wall, double deep) {
    double sign = wall.isInternal() ? 1 : -1;
    double high = wall.top() - FROM_ENDS;
    double step = (wall.top() - wall.bottom()) / 400;
    while (high > wall.bottom()) {
      boolean within = true;
      for (int k = 0; k < 8 && within; k++) {
        within = sign * (wall.radius(k * Math.PI / 4, high) - deep) <= ACCURACY;
      }
      if (within) {
        return high;
      }
      high -= step;
    }
    return high;
  }

  /** Whether metal and air lie on either side of the wall, and metal all along the shell. */
  private boolean isSame(WallGrid grid, double x, double y, double sign, double shell) {
    for (int i = 0; i < grid.angles(); i += STRIDE) {
      double c = StrictMath.cos(grid.theta(i));
      double s = StrictMath.sin(grid.theta(i));
      for (int j = 0; j < grid.heights(); j += STRIDE) {
        double within = grid.radius(i, j) - sign * BOTH_SIDES;
        double beyond = grid.radius(i, j) + sign * BOTH_SIDES;
        double z = grid.z(j);
        boolean slanting = bend(grid, i, j) > 0.5;
        boolean same =
            solid.isMetal(x + shell * c, y + shell * s, z)
                && (slanting || solid.isMetal(x + beyond * c, y + beyond * s, z))
                && (slanting || !solid.isMetal(x + within * c, y + within * s, z));
        if (!same) {
          return false;
        }
      }
    }
    return true;
  }

  /** How unlike the slopes above and below are (1): at a corner both sides lie close together. */
  private static double bend(WallGrid grid, int i, int j) {
    if (j == 0 || j + 1 == grid.heights()) {
      return 1;
    }
    double below = grid.radius(i, j) - grid.radius(i, j - 1);
    double above = grid.radius(i, j + 1) - grid.radius(i, j);
    return Math.abs(above - below) / (grid.z(j + 1) - grid.z(j));
  }

  private void triangles(
      WallGrid grid, double x, double y, double sign, double perRadian, Sky sky) {
    int angles = grid.angles();
    int[] lower = new int[angles];
    int[] upper = new int[angles];
    for (int j = 0; j + 1 < grid.heights(); j++) {
      for (int i = 0; i < angles; i++) {
        lower[i] = vertex(grid, i, j, j, x, y, sign, perRadian, sky);
        upper[i] = vertex(grid, i, j, j + 1, x, y, sign, perRadian, sky);
      }
      for (int i = 0; i + 1 < angles; i++) {
        if (sign > 0) {
          faces.triangle(lower[i], upper[i + 1], lower[i + 1]);
          faces.triangle(lower[i], upper[i], upper[i + 1]);
        } else {
          faces.triangle(lower[i], lower[i + 1], upper[i + 1]);
          faces.triangle(lower[i], upper[i + 1], upper[i]);
        }
      }
    }
  }

  /** A corner of row {@code j}, with the normal of that row, so that creases stay sharp. */
  private int vertex(
      WallGrid grid,
      int i,
      int j,
      int at,
      double x,
      double y,
      double sign,
      double perRadian,
      Sky sky) {
    double c = StrictMath.cos(grid.theta(i));
    double s = StrictMath.sin(grid.theta(i));
    double r = grid.radius(i, at);
    double slope = (grid.radius(i, j + 1) - grid.radius(i, j)) / (grid.z(j + 1) - grid.z(j));
    // along the helix the wall does not change, so it changes round as it changes along the axis
    double round = -slope * perRadian / r;
    double length = Math.sqrt(1 + slope * slope + round * round);
    double nr = -sign / length;
    double nt = sign * round / length;
    double nz = sign * slope / length;
    double nx = nr * c - nt * s;
    double ny = nr * s + nt * c;
    double px = x + r * c;
    double py = y + r * s;
    double pz = grid.z(at);
    int index = faces.vertex(px, py, pz, nx, ny, nz);
    double way = Math.hypot(1, perRadian / r);
    faces.grain(-s / way, c / way, perRadian / r / way);
    faces.tint(look.mirror(), sky.open(px, py, pz, nx, ny, nz));
    return index;
  }
}
