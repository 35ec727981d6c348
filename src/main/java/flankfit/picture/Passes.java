package flankfit.picture;

import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.setup.Hole;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which pass each move belongs to. A run of feed moves ends at a rapid, at a tool change, and
 * wherever the tip comes back to the axis of a hole. A run that holds an arc is a pass over the
 * hole in which the middle of its box lies; the passes of one tool over one hole count in order of
 * execution. A straight run in or out goes with the next pass of the same tool over the same hole.
 * Runs outside of all holes are a pass of their own.
 */
final class Passes {
  /** The tip is on an axis when nearer than this (mm): a tenth of any offset a person would cut. */
  private static final double ON_AXIS = 1e-3;

  private final byte[] before;
  private final boolean known;

  private Passes() {
    before = new byte[0];
    known = false;
  }

  /** Passes that are not known yet: every move counts as one of the last. */
  static Passes unknown() {
    return new Passes();
  }

  /** Whether the moves of the whole tape were told apart. */
  boolean areKnown() {
    return known;
  }

  /** Counts the passes of a tape over holes. */
  Passes(Tape tape, List<Hole> holes) {
    before = new byte[tape.size()];
    known = true;
    List<Run> runs = runs(tape, holes);
    Map<Long, Integer> later = new HashMap<>();
    Map<Long, Integer> levels = new HashMap<>();
    for (int r = runs.size() - 1; r >= 0; r--) {
      Run run = runs.get(r);
      int level = 0;
      if (run.hole >= 0) {
        long seat = (long) run.tool << 32 | run.hole;
        if (run.hasArc) {
          level = later.merge(seat, 1, Integer::sum) - 1;
          levels.put(seat, level);
        } else {
          level = levels.getOrDefault(seat, 0);
        }
      }
      byte kept = (byte) Math.min(level, Byte.MAX_VALUE);
      for (int move = run.first; move <= run.last; move++) {
        before[move] = kept;
      }
    }
  }

  /**
   * How many passes over the same hole with the same tool follow the one of this move, up to 127.
   */
  int following(int move) {
    return move < before.length ? before[move] : 0;
  }

  /** Whether any move has a pass after its own. */
  boolean several() {
    for (byte b : before) {
      if (b > 0) {
        return true;
      }
    }
    return false;
  }

  private static List<Run> runs(Tape tape, List<Hole> holes) {
    List<Run> runs = new ArrayList<>();
    Run open = null;
    for (int move = 0; move < tape.size(); move++) {
      MoveKind kind = tape.kind(move);
      if (kind == MoveKind.RAPID) {
        open = finish(open, runs, holes);
        continue;
      }
      int tool = tape.state(move).tool();
      if (open != null && open.tool != tool) {
        open = finish(open, runs, holes);
      }
      if (open == null) {
        open = new Run(move, tool);
      }
      open.take(tape, move);
      if (onAxis(tape.toX(move), tape.toY(move), holes)) {
        open = finish(open, runs, holes);
      }
    }
    finish(open, runs, holes);
    return runs;
  }

  private static Run finish(Run open, List<Run> runs, List<Hole> holes) {
    if (open != null) {
      open.sit(holes);
      runs.add(open);
    }
    return null;
  }

  private static boolean onAxis(double x, double y, List<Hole> holes) {
    for (Hole hole : holes) {
      if (Math.hypot(x - hole.x(), y - hole.y()) < ON_AXIS) {
        return true;
      }
    }
    return false;
  }

  /** A run of feed moves. */
  private static final class Run {
    private final int first;
    private final int tool;
    private int last;
    private int hole = -1;
    private boolean hasArc;
    private double lowX = Double.MAX_VALUE;
    private double lowY = Double.MAX_VALUE;
    private double highX = -Double.MAX_VALUE;
    private double highY = -Double.MAX_VALUE;

    Run(int first, int tool) {
      this.first = first;
      this.tool = tool;
    }

    void take(Tape tape, int move) {
      last = move;
      include(tape.fromX(move), tape.fromY(move));
      include(tape.toX(move), tape.toY(move));
      if (tape.kind(move) == MoveKind.ARC) {
        hasArc = true;
        double[] p = new double[3];
        for (int i = 1; i < 8; i++) {
          tape.pointAt(move, i / 8.0, p);
          include(p[0], p[1]);
        }
      }
    }

    private void include(double x, double y) {
      lowX = Math.min(lowX, x);
      highX = Math.max(highX, x);
      lowY = Math.min(lowY, y);
      highY = Math.max(highY, y);
    }

    void sit(List<Hole> holes) {
      double x = (lowX + highX) / 2;
      double y = (lowY + highY) / 2;
      for (int i = 0; i < holes.size() && hole < 0; i++) {
        Hole h = holes.get(i);
        if (Math.hypot(x - h.x(), y - h.y()) <= h.diameter() / 2) {
          hole = i;
        }
      }
    }
  }
}
