package flankfit.gauge;

import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Tape;
import flankfit.unit.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;

/**
 * Finds passes on a tape: runs of arcs of a thread mill about one axis along Z, one sense, one
 * radius, rise in proportion to sweep. A full turn may be split in several arcs.
 */
final class PassFinder {
  /** Centres nearer than this are one axis; radii and rises likewise. */
  static final Tolerance ONE_AXIS =
      new Tolerance(
          0.005, "mm", "least increments of inch programs move a centre by 2.5 micrometres");

  /** Sweep above which a run counts as a pass: more than the half turn of an entry arc. */
  private static final double LEAST_SWEEP = 1.02 * Math.PI;

  private final Tape tape;
  private final IntPredicate threadMill;
  private final List<Pass> passes = new ArrayList<>();
  private final List<Integer> otherPlanes = new ArrayList<>();
  private int first = -1;
  private int last = -1;
  private double sweep;

  private PassFinder(Tape tape, IntPredicate threadMill) {
    this.tape = tape;
    this.threadMill = threadMill;
  }

  /**
   * What was found.
   *
   * @param passes passes in order of execution
   * @param otherPlanes moves of thread mills that wind about another axis than Z
   */
  record Result(List<Pass> passes, List<Integer> otherPlanes) {
    Result {
      passes = List.copyOf(passes);
      otherPlanes = List.copyOf(otherPlanes);
    }
  }

  /**
   * Finds the passes.
   *
   * @param threadMill whether the tool of a number may cut threads by helical interpolation
   */
  static Result find(Tape tape, IntPredicate threadMill) {
    PassFinder finder = new PassFinder(tape, threadMill);
    for (int move = 0; move < tape.size(); move++) {
      finder.take(move);
    }
    finder.close();
    return new Result(finder.passes, finder.otherPlanes);
  }

  private void take(int move) {
    MoveKind kind = tape.kind(move);
    if (kind == MoveKind.DWELL) {
      return;
    }
    if (kind != MoveKind.ARC || !threadMill.test(tape.state(move).tool())) {
      close();
      return;
    }
    if (tape.state(move).plane() != Plane.XY) {
      close();
      if (Math.abs(tape.sweep(move)) > LEAST_SWEEP && tape.rise(move) != 0) {
        otherPlanes.add(move);
      }
      return;
    }
    if (first >= 0 && continues(move)) {
      last = move;
      sweep += tape.sweep(move);
      return;
    }
    close();
    if (ONE_AXIS.near(tape.radius(move), tape.endRadius(move)) && tape.radius(move) > 0) {
      first = move;
      last = move;
      sweep = tape.sweep(move);
    }
  }

  private boolean continues(int move) {
    double perRadian = tape.rise(first) / tape.sweep(first);
    return tape.state(move).tool() == tape.state(first).tool()
        && ONE_AXIS.near(tape.centreU(move), tape.centreU(first))
        && ONE_AXIS.near(tape.centreV(move), tape.centreV(first))
        && ONE_AXIS.near(tape.radius(move), tape.radius(first))
        && ONE_AXIS.near(tape.endRadius(move), tape.radius(first))
        && tape.sweep(move) > 0 == tape.sweep(first) > 0
        && ONE_AXIS.near(tape.rise(move), perRadian * tape.sweep(move));
  }

  private void close() {
    if (first >= 0 && Math.abs(sweep) > LEAST_SWEEP) {
      passes.add(pass());
    }
    first = -1;
  }

  private Pass pass() {
    return new Pass(
        first,
        last,
        tape.line(first),
        tape.state(first),
        tape.centreU(first),
        tape.centreV(first),
        (tape.radius(first) + tape.endRadius(first)) / 2,
        tape.startAngle(first),
        sweep,
        tape.toZ(last) - tape.fromZ(first),
        tape.fromZ(first));
  }

  /** Passes about one axis, in order. */
  static List<List<Pass>> byAxis(List<Pass> passes) {
    List<List<Pass>> groups = new ArrayList<>();
    for (Pass pass : passes) {
      Optional<List<Pass>> known =
          groups.stream().filter(group -> onOneAxis(group.get(0), pass)).findFirst();
      known.orElseGet(() -> opened(groups)).add(pass);
    }
    return groups;
  }

  private static List<Pass> opened(List<List<Pass>> groups) {
    List<Pass> group = new ArrayList<>();
    groups.add(group);
    return group;
  }

  private static boolean onOneAxis(Pass a, Pass b) {
    return Math.hypot(a.x() - b.x(), a.y() - b.y()) <= ONE_AXIS.value();
  }
}
