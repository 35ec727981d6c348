package flankfit.control;

import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.unit.LengthUnit;
import flankfit.unit.Tolerance;
import java.util.Optional;

/**
 * Finds the first block that does something else in a second run. Both runs are walked block by
 * block; blocks that move the tool in one run only are let pass when they lead to where it stands
 * in the other. That the tool comes from elsewhere is no difference in itself: an axis on which it
 * stands elsewhere at the start may do so until a block names it, as long as nothing is cut. Only
 * where a move is made or ends elsewhere, in another kind, or with another feed, tool or speed, the
 * runs differ.
 */
final class RunComparison {
  private static final double NEAR = Tolerance.MODEL.value();

  /** How many blocks with moves one run may have and the other not before both meet again. */
  private static final int APART = 16;

  private static final String[] AXES = {"X", "Y", "Z"};

  private final Run first;
  private final Run second;
  private final double clear;
  private final LengthUnit unit;

  /** Axes on which the tool has stood at the same place in both runs. */
  private final boolean[] settled = new boolean[3];

  /** For an axis that a block named and that stood elsewhere after. */
  private final Difference[] open = new Difference[3];

  private Optional<Difference> found = Optional.empty();

  /**
   * What differs.
   *
   * @param line line of the program
   * @param passed moves of the first run before it
   * @param atEnd whether the second run makes no more moves after it
   * @param what what the second run does there, in words
   */
  record Difference(int line, int passed, boolean atEnd, String what) {}

  /** A run as far as it has been walked. */
  private static final class Run {
    private final Tape tape;
    private final double[] at = new double[3];
    private final boolean[] moved = new boolean[3];
    private int next;
    private int block;
    private boolean rapids;

    Run(Tape tape) {
      this.tape = tape;
      for (int axis = 0; axis < 3; axis++) {
        at[axis] = tape.start().axis(axis);
      }
    }

    boolean isOver() {
      return next == tape.size();
    }

    int line() {
      return tape.line(next);
    }

    /** Begins the block of the next move. */
    void begin() {
      block = tape.block(next);
    }

    /** Whether the next move belongs to the block that was begun. */
    boolean goesOn() {
      return next < tape.size() && tape.block(next) == block;
    }

    /** Whether one of the next blocks stands in a line. */
    boolean comesTo(int line) {
      int blocks = 0;
      for (int i = next; i < tape.size() && blocks < APART; i++) {
        if (tape.line(i) == line) {
          return true;
        }
        blocks += i > next && tape.block(i) != tape.block(i - 1) ? 1 : 0;
      }
      return false;
    }

    MoveKind kind() {
      return tape.kind(next);
    }

    /** Makes the next move. */
    void go() {
      double[] to = {tape.toX(next), tape.toY(next), tape.toZ(next)};
      for (int axis = 0; axis < 3; axis++) {
        moved[axis] |= Math.abs(to[axis] - at[axis]) > NEAR;
        at[axis] = to[axis];
      }
      next++;
    }

    void rapids() {
      rapids = false;
      while (goesOn() && kind() == MoveKind.RAPID) {
        go();
        rapids = true;
      }
    }
  }

  private RunComparison(Tape first, Tape second, double clear, LengthUnit unit) {
    this.first = new Run(first);
    this.second = new Run(second);
    this.clear = clear;
    this.unit = unit;
  }

  /**
   * The first difference.
   *
   * @param clear height above which a feed motion cuts nothing (mm)
   * @param unit unit in which coordinates are worded
   */
  static Optional<Difference> of(Tape first, Tape second, double clear, LengthUnit unit) {
    return new RunComparison(first, second, clear, unit).find();
  }

  private Optional<Difference> find() {
    for (int axis = 0; axis < 3; axis++) {
      settled[axis] = agree(axis);
    }
    while (found.isEmpty() && !(first.isOver() && second.isOver())) {
      block();
    }
    return found.isPresent() ? found : earliestOpen();
  }

  private boolean agree(int axis) {
    return Math.abs(first.at[axis] - second.at[axis]) <= NEAR;
  }

  private boolean agree() {
    return agree(0) && agree(1) && agree(2);
  }

  /** The next block of both runs, or of one that the other does without. */
  private void block() {
    boolean both = !first.isOver() && !second.isOver();
    int line = first.isOver() ? second.line() : first.line();
    if (!both || first.line() == second.line()) {
      begin(first);
      begin(second);
    } else if (second.comesTo(first.line())) {
      line = second.line();
      begin(second);
    } else if (first.comesTo(second.line())) {
      begin(first);
    } else {
      differ(line, "executes line " + second.line() + " instead");
    }
    while (found.isEmpty() && (first.goesOn() || second.goesOn())) {
      first.rapids();
      second.rapids();
      arrive(line, false);
      if (found.isEmpty()) {
        feeds(line);
      }
    }
  }

  private static void begin(Run run) {
    if (!run.isOver()) {
      run.begin();
    }
  }

  /** The next move of both runs that is no rapid. */
  private void feeds(int line) {
    if (first.goesOn() && second.goesOn()) {
      pair(line);
    } else if (first.goesOn()) {
      alone(first, second, line);
    } else if (second.goesOn()) {
      alone(second, first, line);
    }
  }

  /** A move of one run only: it may lead to where the other one stands already. */
  private void alone(Run has, Run lacks, int line) {
    String verb = has == first ? "does not " : "does ";
    if (has.kind() == MoveKind.DWELL) {
      differ(line, verb + "dwell");
    } else if (has.kind() == MoveKind.ARC) {
      differ(line, verb + "make the arc");
    } else if (lacks.rapids) {
      differ(line, has == first ? "goes in rapid" : "goes at feed");
    } else {
      boolean cuts = has.tape.toZ(has.next) < clear;
      has.go();
      arrive(line, cuts);
    }
  }

  private void pair(int line) {
    MoveKind kind = first.kind();
    if (second.kind() != kind) {
      differ(line, "makes " + named(second.kind()) + " instead of " + named(kind));
      return;
    }
    if (kind == MoveKind.DWELL) {
      compare(line, "dwells", seconds(first), seconds(second), " s");
    } else {
      how(line);
    }
    if (kind == MoveKind.ARC && found.isEmpty()) {
      arc(line);
    }
    boolean cuts =
        kind == MoveKind.ARC
            || (kind == MoveKind.LINE && Math.min(endZ(first), endZ(second)) < clear);
    first.go();
    second.go();
    if (found.isEmpty()) {
      arrive(line, cuts);
    }
  }

  private static double seconds(Run run) {
    return run.tape.seconds(run.next);
  }

  private static double endZ(Run run) {
    return run.tape.toZ(run.next);
  }

  private static String named(MoveKind kind) {
    return switch (kind) {
      case RAPID -> "a rapid";
      case LINE -> "a line";
      case ARC -> "an arc";
      case DWELL -> "a dwell";
    };
  }

  /** Feed, tool, spindle, coolant and side of a feed motion. */
  private void how(int line) {
    var a = first.tape.state(first.next);
    var b = second.tape.state(second.next);
    if (a.compensation() != b.compensation()) {
      found = earliestOpen(); // where it began to lead elsewhere
      differ(line, "runs with compensation " + b.compensation().word());
    }
    if (a.tool() != b.tool()) {
      differ(line, "cuts with tool " + b.tool() + instead("tool " + a.tool()));
    }
    if (a.spindle() != b.spindle()) {
      differ(line, "runs with the spindle " + b.spindle().word());
    }
    compare(line, "turns at", a.rpm(), b.rpm(), " 1/min");
    if (a.coolant() != b.coolant()) {
      differ(line, "runs with coolant " + (b.coolant() ? "on" : "off"));
    }
    if (agree()) { // in inverse time the feed follows from the length of the path
      compare(line, "feeds", a.feed(), b.feed(), " mm/min");
    }
  }

  private void arc(int line) {
    Tape a = first.tape;
    Tape b = second.tape;
    int i = first.next;
    int j = second.next;
    if (a.state(i).plane() != b.state(j).plane()) {
      differ(line, "turns in plane " + Wording.plane(b.state(j).plane()));
      return;
    }
    compare(line, "turns at radius", a.radius(i), b.radius(j), " mm");
    compare(line, "turns to radius", a.endRadius(i), b.endRadius(j), " mm");
    compare(line, "turns about", a.centreU(i), b.centreU(j), " mm");
    compare(line, "turns about", a.centreV(i), b.centreV(j), " mm");
    if (Math.abs(a.sweep(i) - b.sweep(j)) * Math.max(1, a.radius(i)) > NEAR) {
      differ(
          line, "turns by " + Wording.degrees(b.sweep(j)) + instead(Wording.degrees(a.sweep(i))));
    }
  }

  private void compare(int line, String does, double a, double b, String unitText) {
    if (Math.abs(a - b) > NEAR) {
      String now = Wording.number(b) + unitText;
      differ(line, does + " " + now + instead(Wording.number(a) + unitText));
    }
  }

  private static String instead(String text) {
    return " instead of " + text;
  }

  /** Both runs have come to the end of a motion. */
  private void arrive(int line, boolean cuts) {
    boolean differs = false;
    for (int axis = 0; axis < 3; axis++) {
      boolean named = first.moved[axis] || second.moved[axis];
      if (agree(axis)) {
        settled[axis] = true;
        open[axis] = null;
      } else if (settled[axis] || cuts) {
        differs = true;
      }
      if (!agree(axis) && open[axis] == null && (named || settled[axis] || cuts)) {
        open[axis] =
            new Difference(
                line, first.next, second.isOver(), "goes to " + AXES[axis] + place(axis));
      }
      first.moved[axis] = false;
      second.moved[axis] = false;
    }
    if (differs) {
      found = earliestOpen();
    }
  }

  private String place(int axis) {
    return Wording.coordinate(second.at[axis], unit)
        + instead(AXES[axis] + Wording.coordinate(first.at[axis], unit));
  }

  /** The first place where an axis was named that still stands elsewhere. */
  private Optional<Difference> earliestOpen() {
    Optional<Difference> earliest = Optional.empty();
    for (Difference of : open) {
      boolean earlier = of != null && earliest.map(e -> of.passed() < e.passed()).orElse(true);
      earliest = earlier ? Optional.of(of) : earliest;
    }
    return earliest;
  }

  private void differ(int line, String what) {
    if (found.isEmpty()) {
      found = Optional.of(new Difference(line, first.next, second.isOver(), what));
    }
  }
}
