package flankfit.sweep;

import flankfit.motion.Chords;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.unit.Tolerance;
import java.util.ArrayList;
import java.util.List;

/**
 * The path of a cutter's lowest point, part frame.
 *
 * @param pieces its pieces in order; each begins where the one before ends
 */
public record CutterPath(List<PathPiece> pieces) {
  /** Distance of chords from arcs that do not lie in the XY plane (mm). */
  private static final double CHORD = 1e-5;

  /** Steps of rounded lengths in a millimetre, of rounded angles in a radian: powers of two. */
  private static final double LENGTHS = 0x1p30;

  private static final double ANGLES = 0x1p36;

  /** Arcs whose centres lie as near to the thread's axis are its turns. */
  private static final Tolerance CONCENTRIC =
      new Tolerance(0.1, "mm", "an axis off by more is no wear or play but another thread's");

  public CutterPath {
    pieces = List.copyOf(pieces);
  }

  /**
   * The path of some moves of a tape. Dwells are left out; arcs in other planes become chords
   * within 1e-5 mm.
   *
   * @param first index of the first move
   * @param last index of the last move, included
   */
  public static CutterPath of(Tape tape, int first, int last) {
    List<PathPiece> pieces = new ArrayList<>();
    for (int move = first; move <= last; move++) {
      MoveKind kind = tape.kind(move);
      if (kind == MoveKind.ARC && tape.state(move).plane() == Plane.XY) {
        pieces.add(
            new PathPiece.Arc(
                tape.centreU(move),
                tape.centreV(move),
                tape.radius(move),
                tape.endRadius(move),
                tape.startAngle(move),
                tape.sweep(move),
                tape.fromZ(move),
                tape.toZ(move),
                move));
      } else if (kind != MoveKind.DWELL) {
        addChords(tape, move, pieces);
      }
    }
    return new CutterPath(pieces);
  }

  private static void addChords(Tape tape, int move, List<PathPiece> pieces) {
    int chords = Chords.count(tape, move, CHORD);
    double[] ends = new double[3 * chords];
    Chords.write(tape, move, chords, ends, 0);
    Point from = new Point(tape.fromX(move), tape.fromY(move), tape.fromZ(move));
    for (int i = 0; i < ends.length; i += 3) {
      Point to = new Point(ends[i], ends[i + 1], ends[i + 2]);
      pieces.add(new PathPiece.Line(from, to, move));
      from = to;
    }
  }

  /** The path moved as a whole (mm). */
  public CutterPath shifted(double dx, double dy, double dz) {
    List<PathPiece> moved = new ArrayList<>(pieces.size());
    for (PathPiece piece : pieces) {
      moved.add(mapped(piece, p -> new Point(p.x() + dx, p.y() + dy, p.z() + dz), 1));
    }
    return new CutterPath(moved);
  }

  /**
   * The path made larger or smaller about an axis along Z; unequal factors make circles oval.
   *
   * @param x axis (mm)
   * @param y axis (mm)
   * @param factorX along X (1), above 0
   * @param factorY along Y (1), above 0
   */
  public CutterPath stretched(double x, double y, double factorX, double factorY) {
    List<PathPiece> changed = new ArrayList<>(pieces.size());
    for (PathPiece piece : pieces) {
      if (factorX != factorY && piece instanceof PathPiece.Arc arc) {
        CircularArcs.along(
            (share, target) -> {
              arc.pointAt(share, target);
              target[0] = x + (target[0] - x) * factorX;
              target[1] = y + (target[1] - y) * factorY;
            },
            arc.sweep(),
            arc.move(),
            changed);
      } else {
        changed.add(
            mapped(
                piece,
                p -> new Point(x + (p.x() - x) * factorX, y + (p.y() - y) * factorY, p.z()),
                factorX));
      }
    }
    return new CutterPath(changed);
  }

  /**
   * The path as seen from an axis along Z, its moves counted from its first. Figures are rounded to
   * a nanometre and less, so that the same moves about two axes are the same path to the last bit.
   *
   * @param x axis, part frame (mm)
   * @param y axis, part frame (mm)
   */
  public CutterPath seenFrom(double x, double y) {
    int first = pieces.isEmpty() ? 0 : pieces.get(0).move();
    List<PathPiece> seen = new ArrayList<>(pieces.size());
    for (PathPiece piece : pieces) {
      if (piece instanceof PathPiece.Line line) {
        Point from = seenFrom(line.from(), x, y);
        seen.add(new PathPiece.Line(from, seenFrom(line.to(), x, y), line.move() - first));
      } else {
        seen.add(seenFrom((PathPiece.Arc) piece, x, y, first));
      }
    }
    return new CutterPath(seen);
  }

  private static Point seenFrom(Point p, double x, double y) {
    return new Point(rounded(p.x() - x), rounded(p.y() - y), rounded(p.z()));
  }

  private static PathPiece seenFrom(PathPiece.Arc arc, double x, double y, int first) {
    double sweep = roundedAngle(arc.sweep());
    return new PathPiece.Arc(
        rounded(arc.x() - x),
        rounded(arc.y() - y),
        rounded(arc.radius()),
        rounded(arc.endRadius()),
        roundedAngle(arc.startAngle()),
        sweep == 0 ? arc.sweep() : sweep,
        rounded(arc.zStart()),
        rounded(arc.zEnd()),
        arc.move() - first);
  }

  /** A length to the nearest nanometre or so (mm). */
  public static double rounded(double length) {
    return Math.rint(length * LENGTHS) / LENGTHS + 0.0;
  }

  private static double roundedAngle(double angle) {
    return Math.rint(angle * ANGLES) / ANGLES + 0.0;
  }

  /** A change that leaves circles circles. */
  private interface Change {
    Point of(Point point);
  }

  private static PathPiece mapped(PathPiece piece, Change change, double factor) {
    if (piece instanceof PathPiece.Line line) {
      return new PathPiece.Line(change.of(line.from()), change.of(line.to()), line.move());
    }
    PathPiece.Arc arc = (PathPiece.Arc) piece;
    Point start = change.of(new Point(arc.x(), arc.y(), arc.zStart()));
    Point end = change.of(new Point(arc.x(), arc.y(), arc.zEnd()));
    return new PathPiece.Arc(
        start.x(),
        start.y(),
        arc.radius() * factor,
        arc.endRadius() * factor,
        arc.startAngle(),
        arc.sweep(),
        start.z(),
        end.z(),
        arc.move());
  }

  /** Least and greatest distance of the path's arcs about an axis from it (mm); empty if none. */
  double[] arcRadii(double x, double y) {
    double least = Double.POSITIVE_INFINITY;
    double greatest = 0;
    for (PathPiece piece : pieces) {
      if (piece instanceof PathPiece.Arc arc
          && Math.hypot(arc.x() - x, arc.y() - y) <= CONCENTRIC.value()) {
        least = Math.min(least, Math.min(arc.radius(), arc.endRadius()));
        greatest = Math.max(greatest, Math.max(arc.radius(), arc.endRadius()));
      }
    }
    return greatest == 0 ? new double[0] : new double[] {least, greatest};
  }
}
