package flankfit.solid;

/**
 * One point of an outline, where the plane cuts the edge between two triangles: moved along the
 * outline's normal to where metal ends, or, at a crease, to where the two faces meet on the plane.
 */
final class OutlinePoint {
  /** How far beside a corner its faces are asked for, in lengths of the edge, step by step. */
  private static final double[] BESIDE = {0.2, 0.05, 0.02};

  private final Mesh mesh;
  private final Solid solid;
  private final SectionPlane plane;
  private final Crossing crossing = new Crossing();
  private final double[] before = new double[2];
  private final double[] after = new double[2];
  private double right;
  private double up;

  /** Where a line was last met, and the normal there, on the plane. */
  private double metRight;

  private double metUp;
  private double metNormalRight;
  private double metNormalUp;

  OutlinePoint(Mesh mesh, Solid solid, SectionPlane plane) {
    this.mesh = mesh;
    this.solid = solid;
    this.plane = plane;
  }

  /**
   * Places the point between two triangles.
   *
   * @param t triangle before
   * @param corner its corner whose edge to the next is the common one
   * @param next triangle after
   * @param nextCorner the same of that
   */
  void place(int t, int corner, int next, int nextCorner) {
    int a = mesh.vertex(t, corner);
    int b = mesh.vertex(t, (corner + 1) % 3);
    double ha = plane.height(mesh.x(a), mesh.y(a), mesh.z(a));
    double hb = plane.height(mesh.x(b), mesh.y(b), mesh.z(b));
    double share = ha / (ha - hb);
    double x = mesh.x(a) + share * (mesh.x(b) - mesh.x(a));
    double y = mesh.y(a) + share * (mesh.y(b) - mesh.y(a));
    double z = mesh.z(a) + share * (mesh.z(b) - mesh.z(a));
    right = plane.right(x, y, z);
    up = plane.up(x, y, z);
    double dx = mesh.x(b) - mesh.x(a);
    double dy = mesh.y(b) - mesh.y(a);
    double dz = mesh.z(b) - mesh.z(a);
    double length = Math.sqrt(dx * dx + dy * dy + dz * dz);
    int pointA = mesh.point(t, corner);
    int pointB = mesh.point(t, (corner + 1) % 3);
    int nextA = mesh.point(next, (nextCorner + 1) % 3);
    int nextB = mesh.point(next, nextCorner);
    if (!normal(before, pointA, pointB, share) || !normal(after, nextA, nextB, share)) {
      return;
    }
    boolean sharp = before[0] * after[0] + before[1] * after[1] < SheetPlanes.CREASE;
    boolean onCrease = pointA != nextA && pointB != nextB;
    if (!((onCrease || sharp) && corner(length))) {
      double mr = before[0] + after[0];
      double mu = before[1] + after[1];
      double m = Math.sqrt(mr * mr + mu * mu);
      if (m > 0 && meet(right, up, mr / m, mu / m, 0.5 * length)) {
        right = metRight;
        up = metUp;
      }
    }
  }

  /** The unit normal on the plane between two points; false where the surface lies in the plane. */
  private boolean normal(double[] target, int a, int b, double share) {
    double nx = mesh.normalX(a) + share * (mesh.normalX(b) - mesh.normalX(a));
    double ny = mesh.normalY(a) + share * (mesh.normalY(b) - mesh.normalY(a));
    double nz = mesh.normalZ(a) + share * (mesh.normalZ(b) - mesh.normalZ(a));
    target[0] = plane.right(nx, ny, nz);
    target[1] = plane.up(nx, ny, nz);
    double length = Math.sqrt(target[0] * target[0] + target[1] * target[1]);
    target[0] /= length;
    target[1] /= length;
    return length > 1e-3;
  }

  /** Finds the corner where the faces before and after meet; false where they cannot be asked. */
  private boolean corner(double length) {
    double atRight = right;
    double atUp = up;
    for (double beside : BESIDE) {
      double step = beside * length;
      // the outline runs along normal x n on the plane, so forward of a normal (r, u) is (-u, r)
      if (!meet(atRight + step * before[1], atUp - step * before[0], before[0], before[1], step)) {
        return false;
      }
      double r1 = metRight;
      double u1 = metUp;
      before[0] = metNormalRight;
      before[1] = metNormalUp;
      if (!meet(atRight - step * after[1], atUp + step * after[0], after[0], after[1], step)) {
        return false;
      }
      after[0] = metNormalRight;
      after[1] = metNormalUp;
      double determinant = before[0] * after[1] - before[1] * after[0];
      if (Math.abs(determinant) < 1e-3) {
        return false;
      }
      double c1 = before[0] * r1 + before[1] * u1;
      double c2 = after[0] * metRight + after[1] * metUp;
      atRight = (c1 * after[1] - c2 * before[1]) / determinant;
      atUp = (before[0] * c2 - after[0] * c1) / determinant;
      if (Math.hypot(atRight - right, atUp - up) > length) {
        return false;
      }
    }
    right = atRight;
    up = atUp;
    return true;
  }

  /** Asks where metal ends along a normal on the plane; false where it does not. */
  private boolean meet(double r, double u, double nr, double nu, double reach) {
    double mr = r - reach * nr;
    double mu = u - reach * nu;
    double ar = r + reach * nr;
    double au = u + reach * nu;
    double mx = plane.x(mr, mu);
    double my = plane.y(mr, mu);
    double mz = plane.z(mr, mu);
    double ax = plane.x(ar, au);
    double ay = plane.y(ar, au);
    double az = plane.z(ar, au);
    if (solid.value(mx, my, mz) >= 0 || solid.value(ax, ay, az) < 0) {
      return false;
    }
    solid.crossing(mx, my, mz, ax, ay, az, crossing);
    metRight = plane.right(crossing.x(), crossing.y(), crossing.z());
    metUp = plane.up(crossing.x(), crossing.y(), crossing.z());
    double cr = plane.right(crossing.normalX(), crossing.normalY(), crossing.normalZ());
    double cu = plane.up(crossing.normalX(), crossing.normalY(), crossing.normalZ());
    double length = Math.sqrt(cr * cr + cu * cu);
    metNormalRight = cr / length;
    metNormalUp = cu / length;
    return metNormalRight * nr + metNormalUp * nu > 0.5;
  }

  /** Coordinate to the right on the plane (mm). */
  double right() {
    return right;
  }

  /** Coordinate upward on the plane (mm). */
  double up() {
    return up;
  }
}
