package flankfit.solid;

/**
 * Puts the vertex of a sheet where surface is. A smooth sheet's vertex is the mean of its
 * crossings, moved along the mean normal onto the surface. At creases and corners it is the place
 * nearest to all planes of the crossings (least squares), then made better by asking the body for
 * the faces close beside it, so that creases of curved faces are met too. One placer for each
 * thread.
 */
final class VertexPlacer {
  /** How far beside a crease its faces are asked for, in sizes of the leaf, step by step. */
  private static final double[] BESIDE = {0.2, 0.05, 0.02};

  /** Shares of the largest eigenvalue below which a direction is left, one after the other. */
  private static final double[] TRUNCATIONS = {0.005, 0.05, 0.2};

  /** Planes of one crease deviate by no more than this (sizes of the leaf). */
  private static final double AGREEMENT = 0.02;

  /**
   * A crease may stand out of its leaf so far (sizes of the leaf): the tip of a wedge that crosses
   * no edge of the leaf it ends in. A wedge of 60 degrees reaches 0.87.
   */
  private static final double OVERHANG = 1;

  /** Planes that deviate so little are flat (sizes of the leaf). */
  private static final double FLAT = 1e-9;

  private final Solid solid;
  private final SurfaceCells cells;
  private final SheetPlanes planes;
  private final Qef qef = new Qef();
  private final Crossing crossing = new Crossing();
  private final double[] low = new double[3];
  private final double[] at = new double[3];
  private final double[] along = new double[3];
  private final double[][] facePlaces = new double[SheetPlanes.MOST][3];
  private final double[][] faceNormals = new double[SheetPlanes.MOST][3];
  private double size;
  private int faces;

  VertexPlacer(Solid solid, SurfaceCells cells, Hermite hermite) {
    this.solid = solid;
    this.cells = cells;
    planes = new SheetPlanes(hermite);
  }

  /** Takes in the crossings of a sheet. */
  void enter(Sheets sheets, int leaf, int sheet) {
    planes.clear();
    for (int entry = sheets.start(leaf); entry < sheets.start(leaf + 1); entry++) {
      if (sheets.sheet(entry) == sheet) {
        planes.add(sheets.crossing(entry));
      }
    }
    planes.group();
    size = cells.size(leaf) * cells.cell();
    low[0] = cells.originX() + cells.x(leaf) * cells.cell();
    low[1] = cells.originY() + cells.y(leaf) * cells.cell();
    low[2] = cells.originZ() + cells.z(leaf) * cells.cell();
  }

  /** Places the vertex of the sheet taken in. */
  void place() {
    if (planes.groups() > 1 && crease()) {
      return;
    }
    if (planes.groups() > 1 && faces != 1) {
      leastSquares();
    } else {
      smooth();
    }
  }

  private void smooth() {
    System.arraycopy(planes.mass(), 0, at, 0, 3);
    faces = 1;
    System.arraycopy(planes.mean(), 0, faceNormals[0], 0, 3);
    boolean flat = planes.isFlat() && planes.farthest(at[0], at[1], at[2]) < FLAT * size;
    if (flat || planes.isEven()) {
      // Half way between the crossings and their tangent planes: what bends evenly lies there.
      double down = flat ? 0 : planes.meanHeight(at[0], at[1], at[2]) / 2;
      for (int axis = 0; axis < 3; axis++) {
        at[axis] -= down * planes.mean()[axis];
      }
      return;
    }
    if (hit(at, planes.mean(), 0.25 * size) || hit(at, planes.mean(), 0.5 * size)) {
      take(crossing, at, faceNormals[0]);
    } else {
      takeGroups();
    }
  }

  private void leastSquares() {
    planes.fill(qef);
    qef.solve(0.1);
    answer(at);
    if (!within(0)) {
      System.arraycopy(planes.mass(), 0, at, 0, 3);
    }
    takeGroups();
  }

  private void takeGroups() {
    faces = planes.groups();
    for (int face = 0; face < faces; face++) {
      System.arraycopy(planes.normal(face), 0, faceNormals[face], 0, 3);
      System.arraycopy(planes.place(face), 0, facePlaces[face], 0, 3);
    }
  }

  /** True if faces meet at the vertex; else {@link #faces} is 1 where they turned out to be one. */
  private boolean crease() {
    takeGroups();
    if (meet() && refine()) {
      return true;
    }
    return faces > 1 && meetsFlat();
  }

  /**
   * Where plane faces are too small to be asked beside the vertex, their planes alone do. They
   * cannot be the first choice: one crossing of a curved face looks as flat.
   */
  private boolean meetsFlat() {
    planes.group();
    takeGroups();
    return planes.isFlat()
        && meet()
        && planes.farthest(at[0], at[1], at[2]) < FLAT * size
        && Math.abs(solid.value(at[0], at[1], at[2])) < 10 * FLAT * size;
  }

  /** Moves the vertex by what the faces close beside it say; false where they cannot be asked. */
  private boolean refine() {
    for (double beside : BESIDE) {
      for (int face = 0; face < faces; face++) {
        if (!look(face, beside * size)) {
          return false;
        }
      }
      merge();
      if (faces == 1) {
        return false;
      }
      qef.clear(at[0], at[1], at[2]);
      for (int face = 0; face < faces; face++) {
        double[] p = facePlaces[face];
        double[] n = faceNormals[face];
        qef.add(p[0], p[1], p[2], n[0], n[1], n[2]);
      }
      qef.solve(1e-3);
      answer(at);
      if (!within(OVERHANG)) {
        return false;
      }
    }
    for (int face = 0; face < faces; face++) {
      if (Math.abs(height(facePlaces[face], faceNormals[face])) > AGREEMENT * size) {
        return false;
      }
    }
    return true;
  }

  /** Where the planes of the crossings meet, leaving directions in which they say too little. */
  private boolean meet() {
    for (double truncation : TRUNCATIONS) {
      planes.fill(qef);
      qef.solve(truncation);
      answer(at);
      if (within(OVERHANG)) {
        return true;
      }
    }
    return false;
  }

  /** Asks for a face a step beside the vertex, away from the other faces. */
  private boolean look(int face, double step) {
    double[] n = faceNormals[face];
    along[0] = 0;
    along[1] = 0;
    along[2] = 0;
    for (int other = 0; other < faces; other++) {
      if (other != face) {
        double[] m = faceNormals[other];
        double dot = n[0] * m[0] + n[1] * m[1] + n[2] * m[2];
        double sine = Math.sqrt(Math.max(1e-6, 1 - dot * dot));
        double sign = bulges(face, other) ? -1 / sine : 1 / sine;
        for (int axis = 0; axis < 3; axis++) {
          along[axis] += sign * (m[axis] - dot * n[axis]);
        }
      }
    }
    SheetPlanes.unit(along);
    for (int axis = 0; axis < 3; axis++) {
      along[axis] = at[axis] + step * along[axis];
    }
    if (!hit(along, n, step) && !hit(along, n, step / 4)) {
      return false;
    }
    take(crossing, facePlaces[face], n);
    return true;
  }

  /** Whether two faces meet as at a block's edge, rather than as in a pocket's corner. */
  private boolean bulges(int face, int other) {
    double above = height(planes.place(face), faceNormals[other]);
    double otherAbove = height(planes.place(other), faceNormals[face]);
    return (Math.abs(above) > Math.abs(otherAbove) ? above : otherAbove) < 0;
  }

  /** Height of a place above the plane through the vertex (mm). */
  private double height(double[] place, double[] normal) {
    return normal[0] * (place[0] - at[0])
        + normal[1] * (place[1] - at[1])
        + normal[2] * (place[2] - at[2]);
  }

  /** Drops faces whose normals have come near to those of one before. */
  private void merge() {
    int kept = 0;
    for (int face = 0; face < faces; face++) {
      boolean isNew = true;
      double[] n = faceNormals[face];
      for (int other = 0; other < kept; other++) {
        double[] m = faceNormals[other];
        isNew &= n[0] * m[0] + n[1] * m[1] + n[2] * m[2] < SheetPlanes.CREASE;
      }
      if (isNew) {
        if (kept != face) {
          System.arraycopy(facePlaces[face], 0, facePlaces[kept], 0, 3);
          System.arraycopy(n, 0, faceNormals[kept], 0, 3);
          System.arraycopy(planes.place(face), 0, planes.place(kept), 0, 3);
        }
        kept++;
      }
    }
    faces = kept;
  }

  /** Crosses the surface near a place along a normal; false where metal does not end there. */
  private boolean hit(double[] place, double[] normal, double reach) {
    double mx = place[0] - reach * normal[0];
    double my = place[1] - reach * normal[1];
    double mz = place[2] - reach * normal[2];
    double ax = place[0] + reach * normal[0];
    double ay = place[1] + reach * normal[1];
    double az = place[2] + reach * normal[2];
    if (!solid.isMetal(mx, my, mz) || solid.isMetal(ax, ay, az)) {
      return false;
    }
    solid.edge(mx, my, mz, ax, ay, az, crossing);
    return crossing.normalX() * normal[0]
            + crossing.normalY() * normal[1]
            + crossing.normalZ() * normal[2]
        > 0.5;
  }

  private void answer(double[] target) {
    for (int axis = 0; axis < 3; axis++) {
      target[axis] = qef.answer(axis);
    }
  }

  private static void take(Crossing from, double[] place, double[] normal) {
    place[0] = from.x();
    place[1] = from.y();
    place[2] = from.z();
    normal[0] = from.normalX();
    normal[1] = from.normalY();
    normal[2] = from.normalZ();
  }

  private boolean within(double overhang) {
    boolean inside = true;
    for (int axis = 0; axis < 3; axis++) {
      double off = (at[axis] - low[axis]) / size;
      inside &= off >= -overhang && off <= 1 + overhang;
    }
    return inside;
  }

  /** Coordinate of the vertex (mm). */
  double at(int axis) {
    return at[axis];
  }

  /** Number of faces that meet at the vertex. */
  int faces() {
    return faces;
  }

  /** Coordinate of a face's unit normal at the vertex. */
  double normal(int face, int axis) {
    return faceNormals[face][axis];
  }
}
