package flankfit.motion;

import java.util.List;

/**
 * The moves of a program in order of execution, as columns: at most 40 bytes a move and, for arcs
 * and compensated moves, a few numbers more in a shared pool. Made by {@link TapeBuilder}, never
 * changed after. Every move begins where the one before it ends; the first begins at {@link
 * #start()}.
 *
 * <p>An arc is a spiral-helix about a centre in its plane: at share t of the sweep the radius is
 * {@code r0 + (r1 - r0) t}, the angle {@code a0 + sweep t}, the normal coordinate linear in t.
 * Sweep is positive anticlockwise seen from the tip of the plane's normal and may exceed a turn.
 */
public final class Tape {
  /** Numbers in the pool for an arc: centre u, centre v, radius at start, radius at end, sweep. */
  static final int ARC_NUMBERS = 5;

  static final int KIND_BITS = 0b11;
  static final int INSERTED_BIT = 1 << 2;
  static final int PROGRAMMED_BIT = 1 << 3;
  static final int FLAG_BITS = 4;
  static final int FLAG_MASK = (1 << FLAG_BITS) - 1;

  /** Memory that a move takes in the columns (bytes). */
  static final int BYTES = 3 * Double.BYTES + 3 * Integer.BYTES;

  /** Memory that a move may take, room that is not used included (bytes). */
  static final int MOST_BYTES = 40;

  /** Halvings that bring half a turn below the last digit of an angle. */
  private static final int HALVINGS = 55;

  private final Point start;
  private final int size;
  private final double[] x;
  private final double[] y;
  private final double[] z;
  private final int[] line;
  private final int[] block;
  private final int[] flags;
  private final double[] pool;
  private final List<ModalState> states;
  private final double[] rapidRates;

  Tape(
      Point start,
      int size,
      double[] x,
      double[] y,
      double[] z,
      int[] line,
      int[] block,
      int[] flags,
      double[] pool,
      List<ModalState> states,
      double[] rapidRates) {
    this.start = start;
    this.size = size;
    this.x = x;
    this.y = y;
    this.z = z;
    this.line = line;
    this.block = block;
    this.flags = flags;
    this.pool = pool;
    this.states = List.copyOf(states);
    this.rapidRates = rapidRates.clone();
  }

  /** Number of moves. */
  public int size() {
    return size;
  }

  /** Memory that columns and pool take (bytes): 36 to 40 a move, 8 for each number in the pool. */
  public long columnBytes() {
    long doubles = (long) x.length + y.length + z.length + pool.length;
    long ints = (long) line.length + block.length + flags.length;
    return doubles * Double.BYTES + ints * Integer.BYTES;
  }

  /** Where the first move begins. */
  public Point start() {
    return start;
  }

  /** What kind of move. */
  public MoveKind kind(int move) {
    return MoveKind.ofBits(flags[move] & KIND_BITS);
  }

  /**
   * Line of the program that made the move, from 1; for a move of a subprogram in another file the
   * line of the call that led there.
   */
  public int line(int move) {
    return line[move];
  }

  /** Number of the executed block that made the move, from 1, counted in order of execution. */
  public int block(int move) {
    return block[move];
  }

  /** State of the control during the move. */
  public ModalState state(int move) {
    return states.get(stateIndex(move));
  }

  /** Index of the state within {@link #states()}. */
  public int stateIndex(int move) {
    int upper = flags[move] >>> FLAG_BITS;
    return isPooled(move) ? (int) pool[upper] : upper;
  }

  /** The distinct states. */
  public List<ModalState> states() {
    return states;
  }

  /** Whether compensation put this move in at a corner. */
  public boolean inserted(int move) {
    return (flags[move] & INSERTED_BIT) != 0;
  }

  /** X where the move begins (mm). */
  public double fromX(int move) {
    return move == 0 ? start.x() : x[move - 1];
  }

  /** Y where the move begins (mm). */
  public double fromY(int move) {
    return move == 0 ? start.y() : y[move - 1];
  }

  /** Z where the move begins (mm). */
  public double fromZ(int move) {
    return move == 0 ? start.z() : z[move - 1];
  }

  /** X where the move ends (mm). */
  public double toX(int move) {
    return x[move];
  }

  /** Y where the move ends (mm). */
  public double toY(int move) {
    return y[move];
  }

  /** Z where the move ends (mm). */
  public double toZ(int move) {
    return z[move];
  }

  /** Where the move begins. */
  public Point from(int move) {
    return move == 0 ? start : to(move - 1);
  }

  /** Where the move ends. */
  public Point to(int move) {
    return new Point(x[move], y[move], z[move]);
  }

  /** Where the block told the tool to be, before radius compensation. */
  public Point programmedTo(int move) {
    if ((flags[move] & PROGRAMMED_BIT) == 0) {
      return to(move);
    }
    int at = offset(move) + ownNumbers(kind(move));
    return new Point(pool[at], pool[at + 1], pool[at + 2]);
  }

  /** Numbers that a kind of move keeps in the pool before its programmed end. */
  private static int ownNumbers(MoveKind kind) {
    return switch (kind) {
      case RAPID, LINE -> 0;
      case ARC -> ARC_NUMBERS;
      case DWELL -> 1;
    };
  }

  /** Whether the pool holds the index of the state and then the numbers of a move. */
  private boolean isPooled(int move) {
    return (flags[move] & PROGRAMMED_BIT) != 0 || ownNumbers(kind(move)) > 0;
  }

  private int offset(int move) {
    return (flags[move] >>> FLAG_BITS) + 1;
  }

  private int arcOffset(int move) {
    if (kind(move) != MoveKind.ARC) {
      throw new IllegalArgumentException("move " + move + " is no arc: " + kind(move));
    }
    return offset(move);
  }

  /** First plane coordinate of an arc's centre (mm), on axis {@code state(move).plane().u()}. */
  public double centreU(int move) {
    return pool[arcOffset(move)];
  }

  /** Second plane coordinate of an arc's centre (mm). */
  public double centreV(int move) {
    return pool[arcOffset(move) + 1];
  }

  /** Radius of an arc at its start (mm). */
  public double radius(int move) {
    return pool[arcOffset(move) + 2];
  }

  /** Radius of an arc at its end (mm); differs from {@link #radius} for a spiral only. */
  public double endRadius(int move) {
    return pool[arcOffset(move) + 3];
  }

  /** Signed sweep of an arc (rad), positive anticlockwise. */
  public double sweep(int move) {
    return pool[arcOffset(move) + 4];
  }

  /** Polar angle of an arc's first point about its centre (rad), in (-π, π]. */
  public double startAngle(int move) {
    Plane plane = state(move).plane();
    double u = coordinate(move - 1, plane.u()) - centreU(move);
    double v = coordinate(move - 1, plane.v()) - centreV(move);
    return Math.atan2(v, u);
  }

  /** Travel of an arc along its plane's normal (mm). */
  public double rise(int move) {
    int n = state(move).plane().n();
    return coordinate(move, n) - coordinate(move - 1, n);
  }

  private double coordinate(int move, int axis) {
    if (move < 0) {
      return start.axis(axis);
    }
    return axis == 0 ? x[move] : axis == 1 ? y[move] : z[move];
  }

  /** Length of the move (mm); 0 for a dwell. */
  public double length(int move) {
    return switch (kind(move)) {
      case RAPID, LINE -> {
        double dx = toX(move) - fromX(move);
        double dy = toY(move) - fromY(move);
        double dz = toZ(move) - fromZ(move);
        yield Math.sqrt(dx * dx + dy * dy + dz * dz);
      }
      case ARC -> Math.hypot((radius(move) + endRadius(move)) / 2 * sweep(move), rise(move));
      case DWELL -> 0;
    };
  }

  /** Time the move takes without acceleration (s); infinite for a feed move without feed. */
  public double seconds(int move) {
    return switch (kind(move)) {
      case RAPID ->
          60
              * Math.max(
                  Math.abs(toX(move) - fromX(move)) / rapidRates[0],
                  Math.max(
                      Math.abs(toY(move) - fromY(move)) / rapidRates[1],
                      Math.abs(toZ(move) - fromZ(move)) / rapidRates[2]));
      case LINE, ARC -> 60 * length(move) / state(move).feed();
      case DWELL -> pool[offset(move)];
    };
  }

  /**
   * The tip at a share of a move.
   *
   * @param move index of the move
   * @param share 0 at the start to 1 at the end (1)
   * @param target takes x, y, z (mm); at least 3 long
   */
  public void pointAt(int move, double share, double[] target) {
    if (share >= 1) {
      target[0] = x[move];
      target[1] = y[move];
      target[2] = z[move];
      return;
    }
    target[0] = fromX(move) + share * (toX(move) - fromX(move));
    target[1] = fromY(move) + share * (toY(move) - fromY(move));
    target[2] = fromZ(move) + share * (toZ(move) - fromZ(move));
    if (kind(move) == MoveKind.ARC && share > 0) {
      Plane plane = state(move).plane();
      double r = radius(move) + share * (endRadius(move) - radius(move));
      double a = startAngle(move) + share * sweep(move);
      target[plane.u()] = centreU(move) + r * Math.cos(a);
      target[plane.v()] = centreV(move) + r * Math.sin(a);
    }
  }

  /** The box of all moves, arcs exact; the start point alone for an empty tape. */
  public Extents extents() {
    double[] low = {start.x(), start.y(), start.z()};
    double[] high = low.clone();
    double[] p = new double[3];
    for (int i = 0; i < size; i++) {
      p[0] = x[i];
      p[1] = y[i];
      p[2] = z[i];
      include(low, high, p);
      if (kind(i) == MoveKind.ARC) {
        if (radius(i) == endRadius(i)) {
          includeQuadrants(i, low, high, p);
        } else {
          includeTurningPoints(i, state(i).plane().u(), 0, low, high, p);
          includeTurningPoints(i, state(i).plane().v(), Math.PI / 2, low, high, p);
        }
      }
    }
    return new Extents(new Point(low[0], low[1], low[2]), new Point(high[0], high[1], high[2]));
  }

  private void includeQuadrants(int move, double[] low, double[] high, double[] p) {
    double a0 = startAngle(move);
    double sweep = sweep(move);
    double quarter = Math.PI / 2;
    double first = Math.min(a0, a0 + sweep);
    double last = Math.max(a0, a0 + sweep);
    long from = (long) Math.ceil(first / quarter);
    long to = Math.min((long) Math.floor(last / quarter), from + 7);
    for (long q = from; q <= to; q++) {
      pointAt(move, (q * quarter - a0) / sweep, p);
      include(low, high, p);
    }
  }

  /**
   * Includes the points where a spiral turns back along one axis, on which its coordinate is {@code
   * r cos(a - shift)}. They lie where {@code tan(a - shift) = dr/da / r}: at most one in each half
   * turn, since the left side rises and the right side falls.
   */
  private void includeTurningPoints(
      int move, int axis, double shift, double[] low, double[] high, double[] p) {
    double a0 = startAngle(move) - shift;
    double sweep = sweep(move);
    double first = Math.min(a0, a0 + sweep);
    double last = Math.max(a0, a0 + sweep);
    long from = (long) Math.floor((first + Math.PI / 2) / Math.PI);
    long to = (long) Math.floor((last + Math.PI / 2) / Math.PI);
    for (long half = from; half <= to; half++) {
      double below = Math.max(first, (half - 0.5) * Math.PI);
      double above = Math.min(last, (half + 0.5) * Math.PI);
      if (slope(move, a0, below) * slope(move, a0, above) < 0) {
        pointAt(move, (turningAngle(move, a0, below, above) - a0) / sweep, p);
        low[axis] = Math.min(low[axis], p[axis]);
        high[axis] = Math.max(high[axis], p[axis]);
      }
    }
  }

  /** Derivative of {@code r cos a} by a, along a spiral that begins at a0 (mm/rad). */
  private double slope(int move, double a0, double a) {
    double perRadian = (endRadius(move) - radius(move)) / sweep(move);
    double r = radius(move) + perRadian * (a - a0);
    return perRadian * Math.cos(a) - r * Math.sin(a);
  }

  /** Where the slope changes its sign between two angles (rad), by halving. */
  private double turningAngle(int move, double a0, double below, double above) {
    double low = below;
    double high = above;
    boolean rises = slope(move, a0, low) > 0;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (slope(move, a0, middle) > 0 == rises) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  private static void include(double[] low, double[] high, double[] p) {
    for (int k = 0; k < 3; k++) {
      low[k] = Math.min(low[k], p[k]);
      high[k] = Math.max(high[k], p[k]);
    }
  }
}
