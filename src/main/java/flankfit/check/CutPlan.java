package flankfit.check;

import flankfit.motion.Chords;
import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.setup.SetupSheet;
import flankfit.setup.Tool;
import flankfit.unit.Tolerance;
import java.util.List;
import java.util.Optional;

/**
 * What moves at feed have certainly left uncut. Over each cell of a grid in X and Y stands the
 * least height that a tool can have reached, a cell being reached when any part of it is touched; a
 * tool counts as a cylinder from its tip upwards. Metal below that height is certain, above it is
 * not.
 *
 * <p>A tool that the sheet does not know may be of any width: {@link #metalAlong} takes all metal
 * down to its depth as cut. {@link #highestAlong} counts its axis alone.
 *
 * <p>Moves are entered only when a rule asks, and up to the move asked about. Past {@value
 * #CELLS_A_MOVE} cells for each move on the tape, and some more, all counts as cut.
 */
final class CutPlan {
  private static final int CELLS_A_MOVE = 1000;
  private static final long CELLS_FREE = 200_000_000L;
  private static final int MOST_PIECES = 64;
  private static final int MOST_SAMPLES = 2000;

  private final Tape tape;
  private final double[] radii;
  private final CellGrid grid;
  private final Capsule capsule = new Capsule();
  private double[] chords = new double[3];
  private int next;
  private long budget;

  /** Depth down to which tools of unknown width may have cut everything (mm). */
  private double unknownDepth = Double.POSITIVE_INFINITY;

  CutPlan(Tape tape, SetupSheet sheet, List<Optional<Tool>> tools) {
    this.tape = tape;
    grid = CellGrid.of(tape, sheet);
    radii = tools.stream().mapToDouble(t -> t.map(Tool::radius).orElse(Double.NaN)).toArray();
    budget = CELLS_FREE + (long) CELLS_A_MOVE * tape.size();
  }

  /** Side of the cells (mm): nothing narrower is told apart. */
  double cell() {
    return grid.cell();
  }

  /** Enters all moves before one. */
  void advance(int move) {
    for (; next < move; next++) {
      if (tape.kind(next) == MoveKind.LINE || tape.kind(next) == MoveKind.ARC) {
        enter(next);
      }
    }
  }

  /** Enters a move whatever its kind: what it ran into is gone, and is told once. */
  void enter(int move) {
    int count = Chords.count(tape, move, grid.cell() / 8);
    if (chords.length < 3 * count) {
      chords = new double[3 * count];
    }
    Chords.write(tape, move, count, chords, 0);
    double x = tape.fromX(move);
    double y = tape.fromY(move);
    double z = tape.fromZ(move);
    double radius = radii[tape.stateIndex(move)];
    for (int i = 0; i < 3 * count; i += 3) {
      enter(x, y, z, chords[i], chords[i + 1], chords[i + 2], radius);
      x = chords[i];
      y = chords[i + 1];
      z = chords[i + 2];
    }
  }

  private void enter(
      double x0, double y0, double z0, double x1, double y1, double z1, double radius) {
    if (Math.min(z0, z1) >= grid.uncut()) {
      return;
    }
    if (Double.isNaN(radius)) {
      unknownDepth = Math.min(unknownDepth, Math.min(z0, z1));
    }
    double wide = (Double.isNaN(radius) ? 0 : radius) + grid.halfDiagonal();
    double length = Math.hypot(x1 - x0, y1 - y0);
    boolean level = Tolerance.MODEL.near(z0, z1);
    int pieces = level ? 1 : (int) Math.min(MOST_PIECES, Math.ceil(length / wide) + 1);
    for (int i = 0; i < pieces; i++) {
      double a = (double) i / pieces;
      double b = (i + 1.0) / pieces;
      double low = Math.min(z0 + a * (z1 - z0), z0 + b * (z1 - z0));
      capsule.set(
          x0 + a * (x1 - x0), y0 + a * (y1 - y0), x0 + b * (x1 - x0), y0 + b * (y1 - y0), wide);
      if (budget > 0) {
        budget -= grid.lower(capsule, low);
      } else {
        unknownDepth = Double.NEGATIVE_INFINITY;
      }
    }
  }

  /**
   * Where a tool on its way along a straight line first is in metal for certain.
   *
   * @param from start of the line (mm), 3 long
   * @param to end of the line (mm), 3 long
   * @param radius radius of the tool (mm)
   * @param met takes the point of the tip there (mm), 3 long
   * @return whether it is anywhere
   */
  boolean metalAlong(double[] from, double[] to, double radius, double[] met) {
    double ceiling = Math.min(grid.uncut(), unknownDepth);
    if (!grid.isStock() || Math.min(from[2], to[2]) >= ceiling - Tolerance.MODEL.value()) {
      return false;
    }
    double length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    if (Tolerance.MODEL.near(from[2], to[2])) {
      return levelMetal(from, to, radius, met);
    }
    if (length <= Tolerance.MODEL.value()) {
      return metalBelow(from, to, radius, met);
    }
    int samples = (int) Math.min(MOST_SAMPLES, Math.ceil(length / grid.cell()) + 1);
    for (int i = 0; i <= samples; i++) {
      double share = (double) i / samples;
      for (int axis = 0; axis < 3; axis++) {
        met[axis] = from[axis] + share * (to[axis] - from[axis]);
      }
      capsule.set(met[0], met[1], met[0], met[1], radius);
      if (certain(grid.highest(capsule)) > met[2] + Tolerance.MODEL.value()) {
        return true;
      }
    }
    return false;
  }

  private boolean levelMetal(double[] from, double[] to, double radius, double[] met) {
    double z = from[2] + Tolerance.MODEL.value();
    capsule.set(from[0], from[1], to[0], to[1], radius);
    if (unknownDepth <= z) {
      return false;
    }
    double share = grid.firstAbove(capsule, z);
    if (share > 1) {
      return false;
    }
    for (int axis = 0; axis < 3; axis++) {
      met[axis] = from[axis] + share * (to[axis] - from[axis]);
    }
    return true;
  }

  /** A move along Z meets the highest metal below it. */
  private boolean metalBelow(double[] from, double[] to, double radius, double[] met) {
    capsule.set(to[0], to[1], to[0], to[1], radius);
    double metal = certain(grid.highest(capsule));
    double low = Math.min(from[2], to[2]);
    met[0] = to[0];
    met[1] = to[1];
    met[2] = to[2] < from[2] ? Math.min(from[2], metal) : from[2];
    return metal > low + Tolerance.MODEL.value();
  }

  private double certain(double height) {
    return Math.min(height, unknownDepth);
  }

  /** The highest metal that is certain below a tool at a place (mm); no number below any. */
  double certainBelow(double x, double y, double radius) {
    capsule.set(x, y, x, y, radius);
    return grid.isStock() ? certain(grid.highest(capsule)) : Double.NEGATIVE_INFINITY;
  }

  /**
   * The greatest height that may be left under a tool along a straight line (mm): that of the stock
   * where nothing has been cut, or infinite without a stock; below any where the stock does not
   * reach.
   */
  double highestAlong(double x0, double y0, double x1, double y1, double radius) {
    capsule.set(x0, y0, x1, y1, radius);
    return grid.highest(capsule);
  }
}
