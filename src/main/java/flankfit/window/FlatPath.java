package flankfit.window;

import flankfit.motion.Chords;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import java.util.Arrays;
import java.util.Optional;

/**
 * The path of the tip on the wall of a hole laid flat: chords between angle and height, cut where
 * they pass the seam. On the axis there is no angle, so such points have no place. Made anew when
 * hole, program or zoom change.
 */
final class FlatPath {
  /** So many chords at most: as many as a frame has time to draw. */
  static final int MOST_CHORDS = 15_000;

  private static final int NUMBERS = 4;

  private final WallFrame wall;
  private final Tape tape;
  private final double reach;
  private float[] chords = new float[NUMBERS * 256];
  private int[] moves = new int[256];
  private float[] shares = new float[256];
  private int count;
  private boolean complete = true;
  private final double[] p = new double[3];

  /**
   * Lays the path flat.
   *
   * @param boxes boxes round the moves of the tape
   * @param tolerance greatest distance of a chord from its arc (mm), above 0
   */
  FlatPath(WallFrame wall, Tape tape, MoveBoxes boxes, double tolerance) {
    this.wall = wall;
    this.tape = tape;
    reach = wall.radius() * 1.02;
    for (int group = 0; group < boxes.groups() && complete; group++) {
      if (isNear(boxes, group)) {
        for (int move = boxes.first(group); move < boxes.end(group) && complete; move++) {
          add(move, tolerance);
        }
      }
    }
  }

  private boolean isNear(MoveBoxes boxes, int group) {
    return Math.abs(boxes.middle(group, 0) - wall.x()) <= boxes.half(group, 0) + reach
        && Math.abs(boxes.middle(group, 1) - wall.y()) <= boxes.half(group, 1) + reach;
  }

  private void add(int move, double tolerance) {
    MoveKind kind = tape.kind(move);
    if (kind == MoveKind.DWELL) {
      return;
    }
    // A straight move is a curve on the flat wall: fine enough steps by angle.
    int steps = kind == MoveKind.ARC ? Math.max(8, Chords.count(tape, move, tolerance)) : 32;
    boolean known = false;
    double a0 = 0;
    double z0 = 0;
    for (int i = 0; i <= steps; i++) {
      tape.pointAt(move, (double) i / steps, p);
      double r = wall.distance(p[0], p[1]);
      boolean has = r > WallFrame.ON_AXIS && r <= reach;
      double a1 = has ? wall.angle(p[0], p[1]) : 0;
      if (has && known) {
        chord(move, (double) i / steps, a0, z0, a1, p[2]);
      }
      known = has;
      a0 = a1;
      z0 = p[2];
    }
  }

  private void chord(int move, double share, double a0, double z0, double a1, double z1) {
    double turn = a1 - a0;
    if (Math.abs(turn) <= Math.PI) {
      put(move, share, a0, z0, a1, z1);
      return;
    }
    boolean over = turn < 0; // past the seam with growing angle
    double end = over ? a1 + 2 * Math.PI : a1 - 2 * Math.PI;
    double seam = over ? 2 * Math.PI : 0;
    double zSeam = z0 + (z1 - z0) * (seam - a0) / (end - a0);
    put(move, share, a0, z0, seam, zSeam);
    put(move, share, 2 * Math.PI - seam, zSeam, a1, z1);
  }

  private void put(int move, double share, double a0, double z0, double a1, double z1) {
    if (count == MOST_CHORDS) {
      complete = false;
      return;
    }
    if (count == moves.length) {
      chords = Arrays.copyOf(chords, 2 * chords.length);
      moves = Arrays.copyOf(moves, 2 * count);
      shares = Arrays.copyOf(shares, 2 * count);
    }
    int at = NUMBERS * count;
    chords[at] = (float) (a0 * wall.radius());
    chords[at + 1] = (float) z0;
    chords[at + 2] = (float) (a1 * wall.radius());
    chords[at + 3] = (float) z1;
    moves[count] = move;
    shares[count] = (float) share;
    count++;
  }

  /** Number of chords. */
  int count() {
    return count;
  }

  /** Whether the whole path in the hole has its chords. */
  boolean isComplete() {
    return complete;
  }

  /**
   * A number of a chord (mm): 0 across and 1 height of its start, 2 across and 3 height of its end.
   */
  float number(int chord, int which) {
    return chords[NUMBERS * chord + which];
  }

  /** The move of a chord. */
  int move(int chord) {
    return moves[chord];
  }

  /** Whether the move of a chord is a rapid. */
  boolean isRapid(int chord) {
    return tape.kind(moves[chord]) == MoveKind.RAPID;
  }

  /** Whether the words of a chord's move were absolute. */
  boolean isAbsolute(int chord) {
    return tape.state(moves[chord]).distance() == Distance.ABSOLUTE;
  }

  /** Whether a chord lies beyond a move, or a share (1) of it. */
  boolean isBeyond(int chord, int move, double share) {
    return moves[chord] > move || (moves[chord] == move && shares[chord] > share + 1e-6);
  }

  /**
   * The nearest place to a point of the flat wall.
   *
   * @param across along the wall (mm)
   * @param height height (mm)
   * @param within greatest distance (mm)
   */
  Optional<Pick> nearest(double across, double height, double within) {
    int best = -1;
    double least = within;
    double share = 0;
    for (int i = 0; i < count; i++) {
      double x = number(i, 0);
      double y = number(i, 1);
      double dx = number(i, 2) - x;
      double dy = number(i, 3) - y;
      double square = dx * dx + dy * dy;
      double t = square > 0 ? ((across - x) * dx + (height - y) * dy) / square : 0;
      t = Math.max(0, Math.min(1, t));
      double distance = Math.hypot(x + t * dx - across, y + t * dy - height);
      if (distance < least) {
        least = distance;
        best = i;
        double before = i > 0 && moves[i - 1] == moves[i] ? shares[i - 1] : 0;
        share = before + t * (shares[i] - before);
      }
    }
    if (best < 0) {
      return Optional.empty();
    }
    int move = moves[best];
    for (int end = 0; end <= 1; end++) {
      tape.pointAt(move, end, p);
      Point flat = wall.flat(p[0], p[1], p[2]);
      if (Math.hypot(flat.x() - across, flat.z() - height) <= within) {
        return Optional.of(new Pick(Pick.Kind.END, move, end, new Point(p[0], p[1], p[2])));
      }
    }
    tape.pointAt(move, share, p);
    return Optional.of(new Pick(Pick.Kind.LINE, move, share, new Point(p[0], p[1], p[2])));
  }
}
