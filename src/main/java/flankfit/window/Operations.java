package flankfit.window;

import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Tape;
import flankfit.setup.Hole;
import flankfit.setup.SetupSheet;
import flankfit.setup.Tool;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a program does one after the other. A run of moves ends at a tool change and before a rapid
 * that shifts the axis of the spindle; neighbouring runs of one tool at one place are one
 * operation. A run is at a hole when its first feed move ends within the hole's diameter.
 */
final class Operations {
  static final Operations NONE = new Operations(List.of());

  /** A shift of the spindle's axis above this (mm) is one. */
  private static final double SHIFT = 1e-3;

  /** A helix turns at least so far (rad) to be a thread where no hole tells: three quarters. */
  private static final double TURN = 1.5 * Math.PI;

  private final List<Operation> all;
  private final int[] toolChanges;
  private final int[] threads;

  private Operations(List<Operation> all) {
    this.all = List.copyOf(all);
    List<Integer> changes = new ArrayList<>();
    int tool = 0;
    for (Operation operation : all) {
      if (operation.tool() != tool) {
        changes.add(operation.first());
      }
      tool = operation.tool();
    }
    toolChanges = changes.stream().mapToInt(Integer::intValue).toArray();
    threads =
        all.stream()
            .filter(o -> o.kind() == Operation.Kind.THREAD)
            .mapToInt(Operation::first)
            .toArray();
  }

  /** The operations of a tape with its sheet; takes time in proportion to the moves. */
  static Operations of(Tape tape, SetupSheet setup) {
    List<Operation> found = new ArrayList<>();
    Run run = null;
    for (int move = 0; move < tape.size(); move++) {
      if (run == null || run.endsBefore(move)) {
        if (run != null) {
          join(found, run.operation());
        }
        run = new Run(tape, setup, move);
      }
      run.take(move);
    }
    if (run != null) {
      join(found, run.operation());
    }
    return new Operations(found);
  }

  private static void join(List<Operation> found, Operation next) {
    int end = found.size() - 1;
    if (end >= 0) {
      Operation last = found.get(end);
      if (last.tool() == next.tool()
          && last.kind() == next.kind()
          && last.name().equals(next.name())) {
        found.set(
            end, new Operation(last.first(), next.last(), last.tool(), last.kind(), last.name()));
        return;
      }
    }
    found.add(next);
  }

  /** All of them in order; together they are all moves. */
  List<Operation> all() {
    return all;
  }

  /** Moves with which another tool begins. */
  int[] toolChanges() {
    return toolChanges.clone();
  }

  /** Moves with which a thread begins. */
  int[] threads() {
    return threads.clone();
  }

  /** A run of moves. */
  private static final class Run {
    private final Tape tape;
    private final SetupSheet setup;
    private final List<Hole> holes;
    private final int first;
    private final int tool;
    private int last;
    private boolean feeds;
    private int hole = -1;
    private boolean helix;

    Run(Tape tape, SetupSheet setup, int first) {
      this.tape = tape;
      this.setup = setup;
      this.holes = setup.holes();
      this.first = first;
      this.tool = tape.state(first).tool();
    }

    boolean endsBefore(int move) {
      return tape.state(move).tool() != tool
          || (tape.kind(move) == MoveKind.RAPID
              && Math.hypot(tape.toX(move) - tape.fromX(move), tape.toY(move) - tape.fromY(move))
                  > SHIFT);
    }

    void take(int move) {
      last = move;
      MoveKind kind = tape.kind(move);
      if (kind == MoveKind.RAPID || kind == MoveKind.DWELL) {
        return;
      }
      if (!feeds) {
        feeds = true;
        hole = holeAt(tape.toX(move), tape.toY(move));
      }
      helix |=
          kind == MoveKind.ARC
              && tape.state(move).plane() == Plane.XY
              && Math.abs(tape.sweep(move)) >= TURN
              && Math.abs(tape.rise(move)) > 0;
    }

    private int holeAt(double x, double y) {
      for (int i = 0; i < holes.size(); i++) {
        Hole h = holes.get(i);
        double reach = h.boss() ? h.diameter() : h.diameter() / 2;
        if (Math.hypot(x - h.x(), y - h.y()) <= reach) {
          return i;
        }
      }
      return -1;
    }

    Operation operation() {
      if (!feeds) {
        return new Operation(first, last, tool, Operation.Kind.TRAVEL, "");
      }
      Optional<Tool> mill = setup.tool(tool);
      boolean threads = mill.isPresent() && mill.get().teeth().isPresent();
      if (hole < 0) {
        // Where neither hole nor tool is known, a helix is taken for a thread.
        boolean thread = helix && holes.isEmpty() && (mill.isEmpty() || threads);
        Operation.Kind kind = thread ? Operation.Kind.THREAD : Operation.Kind.CUT;
        return new Operation(first, last, tool, kind, thread ? "helix" : "");
      }
      boolean thread = helix && (threads || holes.get(hole).thread().isPresent());
      Operation.Kind kind = thread ? Operation.Kind.THREAD : Operation.Kind.HOLE;
      return new Operation(first, last, tool, kind, holes.get(hole).name());
    }
  }
}
