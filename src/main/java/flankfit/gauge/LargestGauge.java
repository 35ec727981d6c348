package flankfit.gauge;

import java.util.Arrays;

/**
 * The largest gauge of a form that stands in a stretch of a wall: a linear program in four unknowns
 * by the dual simplex. The unknowns, all as lengths along the axis (mm), are the gauge's pitch
 * depth times tan α, the height by which it is turned off the helix, and its shift sideways times
 * tan α. The contacts found are those of the optimum: what the gauge touches.
 *
 * <p>Sideways and along the axis the gauge moves freely but stays upright: it does not tilt. The
 * rows are linear in the shift. Left out are the shift's square over the diameter, a tenth of a
 * micrometre for 0.05 mm on an M20, and that a shift across turns the helix a little more at the
 * minor than at the major diameter: about a hundredth of the shift.
 */
final class LargestGauge {
  static final int UP = 0;
  static final int DOWN = 1;
  static final int CREST = 2;

  /** Kinds of rows an element has. */
  static final int KINDS = 3;

  private static final int N = 4;
  private static final int BOXES = 7;

  /** A row counts as broken from here (mm). */
  private static final double BROKEN = 2e-10;

  /** What counts as none in a ratio test (1). */
  private static final double NONE = 1e-11;

  /** Weights that make the optimum a single point; far below every figure told (1). */
  private static final double[] GOAL = {1, 1.0e-9, 1.3e-9, 1.7e-9};

  private static final int MOST_PIVOTS = 5000;
  private static final int NOTHING = Integer.MIN_VALUE;

  private final Rooms rooms;
  private final boolean free;
  private final boolean crestGrows;
  private final double[] box = new double[BOXES];
  private final int[] basis = new int[N];

  /** Pitch depth less that of the form itself: near 0, so that few digits are lost. */
  private final double[] place = new double[N];

  private final double[] weight = new double[N];
  private final double[] row = new double[N];
  private double[][] inverse = new double[N][N];
  private int[] known = new int[64];
  private int knownCount;

  /**
   * An empty stretch.
   *
   * @param free whether the gauge may shift sideways
   * @param crestGrows whether a larger gauge has a larger crest; otherwise its crest stays
   */
  LargestGauge(Rooms rooms, boolean free, boolean crestGrows) {
    this.rooms = rooms;
    this.free = free;
    this.crestGrows = crestGrows;
    double far = rooms.winding().pitch() / 2;
    box[0] = rooms.winding().pitch();
    for (int i = 1; i < BOXES; i++) {
      box[i] = far;
    }
    clear();
  }

  /** Lets go of everything touched. */
  void clear() {
    basis[0] = -1;
    basis[1] = -2;
    basis[2] = -3;
    basis[3] = -4;
    settle();
  }

  /** Pitch depth of the largest gauge times tan α (mm). */
  double height() {
    return rooms.pitchHeight() + place[0];
  }

  /** Sideways shift along X (0) or Y (1) times tan α (mm). */
  double shift(int axis) {
    return free ? place[2 + axis] : 0;
  }

  /** Whether an element of the wall is met by the gauge as it stands. */
  boolean isBrokenBy(int element) {
    for (int kind = 0; kind < KINDS; kind++) {
      if (excess(element * KINDS + kind) > BROKEN) {
        return true;
      }
    }
    return false;
  }

  /** Whether an element outside a range is among those touched. */
  boolean touchesOutside(int low, int high) {
    for (int i = 0; i < N; i++) {
      if (basis[i] >= 0 && (basis[i] / KINDS < low || basis[i] / KINDS > high)) {
        return true;
      }
    }
    return false;
  }

  /** Rows touched with their weight above a share, by element and kind. */
  int[] contacts(double share) {
    int[] found = new int[N];
    int count = 0;
    for (int i = 0; i < N; i++) {
      if (basis[i] >= 0 && weight[i] > share) {
        found[count++] = basis[i];
      }
    }
    return Arrays.copyOf(found, count);
  }

  /**
   * Makes the gauge as large as a range of elements allows, from where it stands.
   *
   * @return false when not even the smallest gauge stands there: its crest does not pass
   */
  boolean fit(int low, int high) {
    for (int pivot = 0; pivot < MOST_PIVOTS; pivot++) {
      int worst = worstKnown(low, high);
      if (worst == NOTHING) {
        worst = worst(low, high);
        if (worst == NOTHING) {
          return true;
        }
        know(worst);
      }
      if (!enter(worst)) {
        return false;
      }
    }
    throw new UnsettledGaugeException(
        "the largest gauge is not found in " + MOST_PIVOTS + " steps");
  }

  private void know(int id) {
    if (knownCount == known.length) {
      known = Arrays.copyOf(known, 2 * knownCount);
    }
    known[knownCount++] = id;
  }

  /** The worst of the rows that were ever met: few, and nearly always those that matter. */
  private int worstKnown(int low, int high) {
    int worst = NOTHING;
    double most = BROKEN;
    for (int b = 0; b < BOXES; b++) {
      double excess = excess(-1 - b);
      if (excess > most) {
        most = excess;
        worst = -1 - b;
      }
    }
    for (int i = 0; i < knownCount; i++) {
      double excess = isIn(known[i] / KINDS, low, high) ? excess(known[i]) : 0;
      if (excess > most) {
        most = excess;
        worst = known[i];
      }
    }
    return worst;
  }

  /** Whether an element lies in a range or is a place taken in beside the elements. */
  private boolean isIn(int element, int low, int high) {
    boolean beside = element >= rooms.size() && element < rooms.size() + rooms.extras();
    return beside || (element >= low && element <= high);
  }

  /** The worst of the rows of a range and of the places beside. */
  private int worst(int low, int high) {
    int worst = worstAmong(low, high, NOTHING);
    return worstAmong(rooms.size(), rooms.size() + rooms.extras() - 1, worst);
  }

  private int worstAmong(int low, int high, int than) {
    int worst = than;
    double most = than == NOTHING ? BROKEN : excess(than);
    double[] cos = rooms.cos();
    double[] sin = rooms.sin();
    double slip = rooms.slip();
    double h = place[0];
    double a = place[1];
    double x = free ? place[2] : 0;
    double y = free ? place[3] : 0;
    for (int e = low; e <= high; e++) {
      double along = x * cos[e] + y * sin[e];
      double turned = a + slip * (x * sin[e] - y * cos[e]);
      double up = h + along + turned - rooms.up(e);
      double down = h + along - turned - rooms.down(e);
      double crest = (crestGrows ? h + along : along) - rooms.crest(e);
      double broken = Math.max(crest, Math.max(up, down));
      if (broken > most) {
        most = broken;
        worst = e * KINDS + (broken == crest ? CREST : broken == up ? UP : DOWN);
      }
    }
    return worst;
  }

  /** How far the gauge as it stands breaks a row (mm). */
  private double excess(int id) {
    double bound = read(id);
    double sum = -bound;
    for (int i = 0; i < N; i++) {
      sum += row[i] * place[i];
    }
    return sum;
  }

  /** Puts the coefficients of a row into {@link #row} and returns its bound. */
  private double read(int id) {
    if (id < 0) {
      int b = -1 - id;
      Arrays.fill(row, 0);
      row[b < N ? b : b - N + 1] = b < N ? 1 : -1;
      return box[b];
    }
    int e = id / KINDS;
    double cos = free ? rooms.cos()[e] : 0;
    double sin = free ? rooms.sin()[e] : 0;
    int kind = id % KINDS;
    if (kind == CREST) {
      row[0] = crestGrows ? 1 : 0;
      row[1] = 0;
      row[2] = cos;
      row[3] = sin;
      return rooms.crest(e);
    }
    double sense = kind == UP ? 1 : -1;
    row[0] = 1;
    row[1] = sense;
    row[2] = cos + sense * rooms.slip() * sin;
    row[3] = sin - sense * rooms.slip() * cos;
    return kind == UP ? rooms.up(e) : rooms.down(e);
  }

  /** Lets a broken row into the basis; false when none can leave, so that nothing stands there. */
  private boolean enter(int id) {
    read(id);
    int leaving = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < N; i++) {
      double share = 0;
      for (int k = 0; k < N; k++) {
        share += row[k] * inverse[k][i];
      }
      if (share > NONE) {
        double ratio = weight[i] / share;
        if (ratio < least || (ratio == least && basis[i] < basis[leaving])) {
          least = ratio;
          leaving = i;
        }
      }
    }
    if (leaving < 0) {
      return false;
    }
    basis[leaving] = id;
    settle();
    return true;
  }

  /** Place and weights of the basis. */
  private void settle() {
    double[][] rows = new double[N][];
    double[] bounds = new double[N];
    for (int i = 0; i < N; i++) {
      bounds[i] = read(basis[i]);
      rows[i] = row.clone();
    }
    inverse = Inverse.of(rows);
    for (int k = 0; k < N; k++) {
      place[k] = 0;
      weight[k] = 0;
    }
    for (int k = 0; k < N; k++) {
      for (int i = 0; i < N; i++) {
        place[k] += inverse[k][i] * bounds[i];
        weight[i] += GOAL[k] * inverse[k][i];
      }
    }
  }
}
