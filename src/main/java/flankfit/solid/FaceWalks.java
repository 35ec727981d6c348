package flankfit.solid;

/**
 * Ways round the faces of a cell, as slots for the edges met. A cell has 27 places, three along
 * each axis; an edge of it starts at one of them and reaches one place (half an edge, where a finer
 * neighbour splits it) or two.
 */
final class FaceWalks {
  /** Number of slots for edges. */
  static final int SLOTS = 3 * 27 * 2;

  private final int[][] faces = new int[6][];
  private final int[][][] quarters = new int[6][4][];
  private final int[][] inner = new int[6][];

  FaceWalks() {
    for (int face = 0; face < 6; face++) {
      int axis = face / 2;
      int u = (axis + 1) % 3;
      int v = (axis + 2) % 3;
      int base = face % 2 * 2 * step(axis);
      faces[face] = whole(base, u, v);
      int middle = base + step(u) + step(v);
      inner[face] =
          new int[] {
            slot(u, base + step(v), 1), slot(u, middle, 1),
            slot(v, base + step(u), 1), slot(v, middle, 1)
          };
      for (int quarter = 0; quarter < 4; quarter++) {
        quarters[face][quarter] =
            quarter(base + quarter % 2 * step(u) + quarter / 2 * step(v), u, v);
      }
    }
  }

  private static int step(int axis) {
    return axis == 0 ? 1 : axis == 1 ? 3 : 9;
  }

  private static int[] whole(int base, int u, int v) {
    int[] walk = new int[12];
    side(walk, 0, base, u, false);
    side(walk, 3, base + 2 * step(u), v, false);
    side(walk, 6, base + 2 * step(v), u, true);
    side(walk, 9, base, v, true);
    return walk;
  }

  private static void side(int[] walk, int at, int low, int axis, boolean backwards) {
    int turn = backwards ? 1 : 0;
    walk[at] = slot(axis, low, 2) << 1 | turn;
    walk[at + 1] = slot(axis, backwards ? low + step(axis) : low, 1) << 1 | turn;
    walk[at + 2] = slot(axis, backwards ? low : low + step(axis), 1) << 1 | turn;
  }

  private static int[] quarter(int low, int u, int v) {
    return new int[] {
      slot(u, low, 1) << 1,
      slot(v, low + step(u), 1) << 1,
      slot(u, low + step(v), 1) << 1 | 1,
      slot(v, low, 1) << 1 | 1
    };
  }

  /** Slot of the edge that starts at a place and reaches one or two places. */
  static int slot(int axis, int place, int reach) {
    return (axis * 27 + place) * 2 + reach - 1;
  }

  /** Number of a place from its three coordinates, 0 to 2. */
  static int place(int x, int y, int z) {
    return x + 3 * y + 9 * z;
  }

  /** Way round a face, 2 times axis plus side: slots times 2, plus 1 where walked backwards. */
  int[] face(int face) {
    return faces[face];
  }

  /** Way round a quarter of a face, in the order u v = low low, high low, low high, high high. */
  int[] quarter(int face, int quarter) {
    return quarters[face][quarter];
  }

  /** Slots of the four half edges inside a face. */
  int[] inner(int face) {
    return inner[face];
  }
}
