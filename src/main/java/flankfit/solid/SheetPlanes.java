package flankfit.solid;

/** The crossings of one sheet, and the few directions that their normals fall into. */
final class SheetPlanes {
  /** Most directions told apart at one vertex. */
  static final int MOST = 4;

  /** Normals farther apart than 20 degrees belong to different faces; this is the cosine. */
  static final double CREASE = 0.9396926207859084;

  /** Cosines nearer to 1 than this are of normals that are alike (1). */
  private static final double FLAT = 1e-13;

  /** Normals nearer than 6 degrees to each other are those of a face that bends evenly (cosine). */
  private static final double EVEN = 0.9945218953682733;

  private static final int MOST_CROSSINGS = 48;

  private final Hermite hermite;
  private final int[] edges = new int[MOST_CROSSINGS];
  private final int[] seeds = new int[MOST];
  private final double[][] places = new double[MOST][3];
  private final double[][] normals = new double[MOST][3];
  private final double[] mass = new double[3];
  private final double[] mean = new double[3];
  private int count;
  private int groups;
  private boolean flat;
  private boolean even;

  SheetPlanes(Hermite hermite) {
    this.hermite = hermite;
  }

  void clear() {
    count = 0;
  }

  void add(int edge) {
    edges[count++] = edge;
  }

  /** Reckons means and groups of what was added. */
  void group() {
    for (int axis = 0; axis < 3; axis++) {
      mass[axis] = 0;
      mean[axis] = 0;
      for (int i = 0; i < count; i++) {
        mass[axis] += hermite.place(edges[i], axis) / count;
        mean[axis] += hermite.normal(edges[i], axis);
      }
    }
    unit(mean);
    findSeeds();
    flat = true;
    for (int g = 0; g < groups; g++) {
      average(g);
    }
  }

  private void findSeeds() {
    groups = 1;
    seeds[0] = 0;
    double least = 2;
    for (int i = 0; i < count; i++) {
      for (int j = i + 1; j < count; j++) {
        double dot = dot(edges[i], edges[j]);
        if (dot < least) {
          least = dot;
          seeds[0] = i;
          seeds[1] = j;
        }
      }
    }
    even = least >= EVEN;
    if (least >= CREASE) {
      return;
    }
    groups = 2;
    while (groups < MOST) {
      int farthest = -1;
      double farthestDot = CREASE;
      for (int i = 0; i < count; i++) {
        double nearest = -2;
        for (int g = 0; g < groups; g++) {
          nearest = Math.max(nearest, dot(edges[i], edges[seeds[g]]));
        }
        if (nearest < farthestDot) {
          farthestDot = nearest;
          farthest = i;
        }
      }
      if (farthest < 0) {
        return;
      }
      seeds[groups++] = farthest;
    }
  }

  private void average(int group) {
    double[] place = places[group];
    double[] normal = normals[group];
    int members = 0;
    for (int axis = 0; axis < 3; axis++) {
      place[axis] = 0;
      normal[axis] = 0;
    }
    for (int i = 0; i < count; i++) {
      if (groupOf(edges[i]) == group) {
        members++;
        for (int axis = 0; axis < 3; axis++) {
          place[axis] += hermite.place(edges[i], axis);
          normal[axis] += hermite.normal(edges[i], axis);
        }
      }
    }
    for (int axis = 0; axis < 3; axis++) {
      place[axis] /= members;
    }
    unit(normal);
    for (int i = 0; i < count; i++) {
      if (groupOf(edges[i]) == group) {
        int e = edges[i];
        double dot =
            normal[0] * hermite.normal(e, 0)
                + normal[1] * hermite.normal(e, 1)
                + normal[2] * hermite.normal(e, 2);
        flat &= dot > 1 - FLAT;
      }
    }
  }

  private int groupOf(int edge) {
    int best = 0;
    double bestDot = -2;
    for (int g = 0; g < groups; g++) {
      double dot = dot(edge, edges[seeds[g]]);
      if (dot > bestDot) {
        bestDot = dot;
        best = g;
      }
    }
    return best;
  }

  private double dot(int edgeA, int edgeB) {
    return hermite.normal(edgeA, 0) * hermite.normal(edgeB, 0)
        + hermite.normal(edgeA, 1) * hermite.normal(edgeB, 1)
        + hermite.normal(edgeA, 2) * hermite.normal(edgeB, 2);
  }

  /** Makes a vector a unit vector; leaves a zero vector. */
  static void unit(double[] vector) {
    double length =
        Math.sqrt(vector[0] * vector[0] + vector[1] * vector[1] + vector[2] * vector[2]);
    if (length > 0) {
      vector[0] /= length;
      vector[1] /= length;
      vector[2] /= length;
    }
  }

  /** Puts all crossings, as planes, into a fit whose base is the mean of the places. */
  void fill(Qef qef) {
    qef.clear(mass[0], mass[1], mass[2]);
    for (int i = 0; i < count; i++) {
      int e = edges[i];
      qef.add(
          hermite.place(e, 0),
          hermite.place(e, 1),
          hermite.place(e, 2),
          hermite.normal(e, 0),
          hermite.normal(e, 1),
          hermite.normal(e, 2));
    }
  }

  /** Greatest distance of a place from the planes through the crossings (mm). */
  double farthest(double x, double y, double z) {
    double most = 0;
    for (int i = 0; i < count; i++) {
      int e = edges[i];
      double off =
          hermite.normal(e, 0) * (x - hermite.place(e, 0))
              + hermite.normal(e, 1) * (y - hermite.place(e, 1))
              + hermite.normal(e, 2) * (z - hermite.place(e, 2));
      most = Math.max(most, Math.abs(off));
    }
    return most;
  }

  /** Mean height of a place above the planes through the crossings (mm). */
  double meanHeight(double x, double y, double z) {
    double sum = 0;
    for (int i = 0; i < count; i++) {
      int e = edges[i];
      sum +=
          hermite.normal(e, 0) * (x - hermite.place(e, 0))
              + hermite.normal(e, 1) * (y - hermite.place(e, 1))
              + hermite.normal(e, 2) * (z - hermite.place(e, 2));
    }
    return sum / count;
  }

  /** Whether all normals are so near that the face bends evenly within the cell. */
  boolean isEven() {
    return even;
  }

  /** Mean of the crossings (mm). */
  double[] mass() {
    return mass;
  }

  /** Unit mean of the normals, or zero where they cancel. */
  double[] mean() {
    return mean;
  }

  /** Whether all normals of each group are alike, as those of plane faces are. */
  boolean isFlat() {
    return flat;
  }

  /** Number of directions, 1 to {@link #MOST}. */
  int groups() {
    return groups;
  }

  /** Mean place of a group's crossings (mm). */
  double[] place(int group) {
    return places[group];
  }

  /** Unit mean normal of a group. */
  double[] normal(int group) {
    return normals[group];
  }
}
