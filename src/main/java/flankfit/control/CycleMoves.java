package flankfit.control;

import flankfit.motion.ModalState.Spindle;
import flankfit.setup.ControlSwitches;

/** The moves of one hole. Levels are program coordinates of the plane's normal (mm). */
final class CycleMoves {
  /** A peck that stops this close to the depth goes all the way (mm). */
  private static final double NEAR = 1e-9;

  private final Machine machine;
  private final Modes modes;
  private final CycleState state;
  private final ControlSwitches.Cycles switches;
  private final Mover mover;
  private final double[] target = new double[3];
  private final double[] hole = new double[3];

  CycleMoves(Machine machine, Mover mover) {
    this.machine = machine;
    this.modes = machine.modes;
    this.state = machine.cycle;
    this.switches = machine.switches.cycles();
    this.mover = mover;
  }

  private int normal() {
    return modes.plane().n();
  }

  /** Level at which the tool stands. */
  double level() {
    return machine.frame.coordinate(normal(), machine.tip[normal()]);
  }

  /** Level at which the run began. */
  double initial() {
    return machine.frame.coordinate(normal(), state.initial());
  }

  /** A rapid along the normal. */
  void rapidTo(double level) {
    mover.rapid(along(level));
  }

  private void feedTo(double level) {
    mover.line(along(level));
  }

  private double[] along(double level) {
    System.arraycopy(machine.tip, 0, target, 0, 3);
    target[normal()] = machine.frame.level(normal(), level);
    return target;
  }

  /** A rapid to the hole in the plane, wherever the tool stands along the normal. */
  private void overHole() {
    System.arraycopy(hole, 0, target, 0, 3);
    target[normal()] = machine.tip[normal()];
    mover.rapid(target);
  }

  private void aside() {
    System.arraycopy(machine.tip, 0, target, 0, 3);
    target[0] += state.shiftX();
    target[1] += state.shiftY();
    mover.rapid(target);
  }

  private void dwell() {
    if (state.seconds() > 0) {
      mover.dwell(state.seconds());
    }
  }

  /**
   * Makes a hole.
   *
   * @param at where, part frame (mm); the coordinate along the normal is not looked at
   */
  void hole(CycleKind kind, double[] at) {
    System.arraycopy(at, 0, hole, 0, 3);
    if (kind == CycleKind.G87) {
      backBore();
      return;
    }
    overHole();
    rapidTo(state.clearance());
    Spindle before = modes.spindle();
    work(kind);
    rapidTo(out());
    overHole();
    turn(before);
  }

  private double out() {
    return state.returnsToClearance() ? state.clearance() : Math.max(initial(), state.clearance());
  }

  private void turn(Spindle way) {
    if (modes.spindle() != way) {
      modes.spindle(way);
    }
  }

  /** From the R level to where the rapid out begins. */
  private void work(CycleKind kind) {
    if (kind.isPecking()) {
      peck(kind == CycleKind.G83);
      return;
    }
    feedTo(state.depth());
    if (kind.reads('P')) {
      dwell();
    }
    switch (kind) {
      case G74, G84 -> {
        Spindle before = modes.spindle();
        turn(before == Spindle.CLOCKWISE ? Spindle.COUNTER_CLOCKWISE : Spindle.CLOCKWISE);
        feedTo(state.clearance());
        turn(before);
      }
      case G85, G89 -> feedTo(state.clearance());
      case G86 -> turn(Spindle.OFF);
      case G88 -> {
        turn(Spindle.OFF);
        rapidTo(state.clearance());
      }
      case G76 -> {
        turn(Spindle.OFF);
        aside();
      }
      case G73, G81, G82, G83, G87 -> {}
    }
  }

  private void peck(boolean full) {
    double top = state.clearance();
    double depth = state.depth();
    for (int pecks = 1; ; pecks++) {
      double next = top - pecks * state.peck();
      if (next <= depth + NEAR) {
        feedTo(depth);
        return;
      }
      feedTo(next);
      if (full) {
        rapidTo(top);
        rapidTo(Math.min(next + switches.peckClearance(), top));
      } else {
        rapidTo(Math.min(next + switches.chipBreakRetract(), top));
      }
    }
  }

  private void backBore() {
    Spindle before = modes.spindle();
    boolean fromDepth = switches.backBoreFromDepth();
    double above = fromDepth ? state.clearance() : initial();
    double below = fromDepth ? state.depth() : state.clearance();
    if (!fromDepth && level() < above) {
      rapidTo(above);
    }
    overHole();
    if (fromDepth) {
      rapidTo(above);
    }
    turn(Spindle.OFF);
    aside();
    rapidTo(below);
    overHole();
    turn(before);
    feedTo(fromDepth ? state.top() : state.depth());
    dwell();
    if (fromDepth) {
      feedTo(below);
    }
    turn(Spindle.OFF);
    aside();
    rapidTo(fromDepth ? out() : above);
    overHole();
    turn(before);
  }
}
