package flankfit.metal;

import flankfit.motion.Chords;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Tape;
import java.util.ArrayList;
import java.util.List;

/**
 * A piece of the tip's path that is straight, or a part of a flat arc or helix about Z of a quarter
 * turn at most, on which the height is steady. Places on it go by a share of the piece, 0 to 1.
 *
 * @param x0 start (mm), and so on
 * @param turns whether it is an arc; the fields from {@code centreX} on mean nothing otherwise
 * @param centreX centre (mm)
 * @param centreY centre (mm)
 * @param radius radius at the start (mm)
 * @param growth change of the radius over the piece (mm)
 * @param start angle at the start (rad)
 * @param sweep signed sweep (rad)
 * @param from share of the move at which the piece begins (1)
 * @param to share of the move at which it ends (1)
 */
record PathPiece(
    double x0,
    double y0,
    double z0,
    double x1,
    double y1,
    double z1,
    boolean turns,
    double centreX,
    double centreY,
    double radius,
    double growth,
    double start,
    double sweep,
    double from,
    double to) {
  /** How far chords may leave a path that has no closed form here (mm). */
  static final double CHORD = 2e-4;

  /** Change of radius over radius up to which a spiral is read as an arc at each angle (1). */
  private static final double NEARLY_ROUND = 5e-3;

  /** Rise within one piece of a helix that is aimed at (mm). */
  private static final double STEP = 0.1;

  private static final int MOST_STEPS = 64;

  /** The pieces of a move, in order; none of a dwell. */
  static List<PathPiece> of(Tape tape, int move) {
    List<PathPiece> pieces = new ArrayList<>();
    if (tape.kind(move) == MoveKind.DWELL) {
      return pieces;
    }
    if (tape.kind(move) != MoveKind.ARC) {
      pieces.add(
          straight(
              tape.fromX(move),
              tape.fromY(move),
              tape.fromZ(move),
              tape.toX(move),
              tape.toY(move),
              tape.toZ(move),
              0,
              1));
      return pieces;
    }
    double growth = tape.endRadius(move) - tape.radius(move);
    boolean round = Math.abs(growth) <= NEARLY_ROUND * tape.radius(move);
    if (tape.state(move).plane() == Plane.XY && round) {
      addArcs(tape, move, growth, pieces);
    } else {
      addChords(tape, move, pieces);
    }
    return pieces;
  }

  /** Whether a move is one whose height may rise and fall within it. */
  static boolean isTilted(Tape tape, int move) {
    return tape.kind(move) == MoveKind.ARC && tape.state(move).plane() != Plane.XY;
  }

  private static PathPiece straight(
      double x0, double y0, double z0, double x1, double y1, double z1, double from, double to) {
    return new PathPiece(x0, y0, z0, x1, y1, z1, false, 0, 0, 0, 0, 0, 0, from, to);
  }

  private static void addArcs(Tape tape, int move, double growth, List<PathPiece> pieces) {
    double sweep = tape.sweep(move);
    double quarters = Math.abs(sweep) / (Math.PI / 2) - 1e-9;
    double steps = Math.min(MOST_STEPS, Math.abs(tape.rise(move)) / STEP);
    int count = (int) Math.max(1, Math.ceil(Math.max(quarters, steps)));
    double[] a = new double[3];
    double[] b = new double[3];
    tape.pointAt(move, 0, a);
    for (int i = 0; i < count; i++) {
      double from = (double) i / count;
      double to = (i + 1.0) / count;
      tape.pointAt(move, to, b);
      pieces.add(
          new PathPiece(
              a[0],
              a[1],
              a[2],
              b[0],
              b[1],
              b[2],
              true,
              tape.centreU(move),
              tape.centreV(move),
              tape.radius(move) + from * growth,
              growth / count,
              tape.startAngle(move) + from * sweep,
              sweep / count,
              from,
              to));
      System.arraycopy(b, 0, a, 0, 3);
    }
  }

  private static void addChords(Tape tape, int move, List<PathPiece> pieces) {
    int count = Chords.count(tape, move, CHORD);
    double[] ends = new double[3 * count];
    Chords.write(tape, move, count, ends, 0);
    double[] a = new double[3];
    tape.pointAt(move, 0, a);
    for (int i = 0; i < count; i++) {
      double x = ends[3 * i];
      double y = ends[3 * i + 1];
      double z = ends[3 * i + 2];
      double from = (double) i / count;
      pieces.add(straight(a[0], a[1], a[2], x, y, z, from, (i + 1.0) / count));
      System.arraycopy(ends, 3 * i, a, 0, 3);
    }
  }

  /** The pieces as far as a share of the move. */
  static List<PathPiece> upTo(List<PathPiece> pieces, double share) {
    List<PathPiece> kept = new ArrayList<>();
    for (PathPiece piece : pieces) {
      if (piece.to <= share) {
        kept.add(piece);
      } else if (piece.from <= share) {
        kept.add(piece.cut((share - piece.from) / (piece.to - piece.from)));
      }
    }
    return kept;
  }

  private PathPiece cut(double t) {
    return new PathPiece(
        x0,
        y0,
        z0,
        x(t),
        y(t),
        z(t),
        turns,
        centreX,
        centreY,
        radius,
        growth * t,
        start,
        sweep * t,
        from,
        from + t * (to - from));
  }

  double x(double t) {
    return turns
        ? centreX + (radius + t * growth) * Math.cos(start + t * sweep)
        : x0 + t * (x1 - x0);
  }

  double y(double t) {
    return turns
        ? centreY + (radius + t * growth) * Math.sin(start + t * sweep)
        : y0 + t * (y1 - y0);
  }

  double z(double t) {
    return z0 + t * (z1 - z0);
  }

  /** Share of the move at a share of the piece (1). */
  double moveShare(double t) {
    return from + t * (to - from);
  }

  /** An upper bound of the piece's length (mm). */
  double length() {
    double plan =
        turns
            ? (radius + Math.abs(growth)) * Math.abs(sweep) + Math.abs(growth)
            : Math.sqrt((x1 - x0) * (x1 - x0) + (y1 - y0) * (y1 - y0));
    return Math.sqrt(plan * plan + (z1 - z0) * (z1 - z0));
  }

  /** The share between two others that is nearest to a place in plan. */
  double nearest(double px, double py, double least, double most) {
    return turns ? nearestTurn(px, py, least, most) : nearestLine(px, py, least, most);
  }

  private double nearestLine(double px, double py, double least, double most) {
    double dx = x1 - x0;
    double dy = y1 - y0;
    double square = dx * dx + dy * dy;
    double t = square > 0 ? ((px - x0) * dx + (py - y0) * dy) / square : least;
    return Math.min(most, Math.max(least, t));
  }

  private double nearestTurn(double px, double py, double least, double most) {
    if (sweep == 0) {
      return least;
    }
    double angle = Math.atan2(py - centreY, px - centreX) - start - least * sweep;
    double turn = 2 * Math.PI;
    double signed = sweep > 0 ? angle : -angle;
    double along = signed - turn * Math.floor(signed / turn);
    double span = Math.abs(sweep) * (most - least);
    if (along <= span) {
      return Math.min(most, least + along / Math.abs(sweep));
    }
    // Beyond both ends: the nearer one in angle is the nearer one.
    return along - span < turn - along ? most : least;
  }
}
