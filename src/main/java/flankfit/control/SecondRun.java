package flankfit.control;

import flankfit.control.RunComparison.Difference;
import flankfit.finding.Code;
import flankfit.finding.Findings;
import flankfit.finding.Place;
import flankfit.motion.Point;
import flankfit.nc.SourceText;
import flankfit.setup.ControlSwitches;
import flankfit.setup.SetupSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Runs a program once more from the state that it left, and tells the first block that does
 * something else: AS06. Which part of that state is at fault is found by trying: parts are given to
 * further runs one after the other, the likeliest culprit last, and those that bring the difference
 * about are named.
 */
final class SecondRun {
  private final SourceText program;
  private final SetupSheet setup;
  private final List<SourceText> subprograms;
  private final FinishedRun before;
  private final double clear;

  /**
   * @param before a run from power-up that nothing stopped
   */
  SecondRun(
      SourceText program, SetupSheet setup, List<SourceText> subprograms, FinishedRun before) {
    this.program = program;
    this.setup = setup;
    this.subprograms = subprograms;
    this.before = before;
    double top =
        setup.stock().map(stock -> stock.top()).orElse(before.machine().frame.unshifted(2));
    clear = top + setup.control().places().clearance();
  }

  /** Reports AS06 when the second run does something else. */
  void report(Findings findings) {
    differenceWith(Left.ALL, true).ifPresent(d -> report(d, findings));
  }

  private void report(Difference difference, Findings findings) {
    List<String> left = new ArrayList<>();
    List<String> mended = new ArrayList<>();
    causes(difference, left, mended);
    findings.add(
        Code.AS06,
        new Place(program.file(), difference.line(), 0, 0),
        "second run differs from line " + difference.line() + " on: " + difference.what(),
        "the first run leaves " + String.join(", and ", left),
        "state " + String.join(", ", mended) + " at the start");
  }

  /** A smallest set of parts of the state without which the second run comes farther. */
  private void causes(Difference difference, List<String> left, List<String> mended) {
    FinishedRun fresh = start(setup, List.of()).finished();
    List<Left> carried = new ArrayList<>();
    boolean place = !isFarther(differenceWith(carried, true), difference);
    for (int i = Left.ALL.size() - 1; i >= 0; i--) {
      Left part = Left.ALL.get(i);
      if (!part.differs(before, fresh)) {
        continue;
      }
      carried.add(part);
      if (!isFarther(differenceWith(carried, !place), difference)) {
        carried.remove(part);
        left.add(0, part.told(before));
        mended.add(0, part.mended());
      }
    }
    if (place) {
      left.add("the tool at " + place(end()) + " instead of " + place(before.tape().start()));
      mended.add("X, Y and Z in G90");
    }
  }

  private static boolean isFarther(Optional<Difference> now, Difference than) {
    return now.map(d -> d.passed() > than.passed()).orElse(true);
  }

  private String place(Point p) {
    Machine machine = before.machine();
    return "X"
        + machine.coordinate(p.x())
        + " Y"
        + machine.coordinate(p.y())
        + " Z"
        + machine.coordinate(p.z());
  }

  /** Where the tool stands after the first run. */
  private Point end() {
    int size = before.tape().size();
    return size == 0 ? before.tape().start() : before.tape().to(size - 1);
  }

  /** How a run that is given some parts of the state differs, and the place of the tool or not. */
  private Optional<Difference> differenceWith(List<Left> parts, boolean place) {
    FinishedRun after = start(place ? startingAt(end()) : setup, parts).again();
    Optional<Difference> moves =
        RunComparison.of(before.tape(), after.tape(), clear, before.machine().modes.unit());
    boolean stops = moves.map(Difference::atEnd).orElse(true);
    Optional<Difference> stop = after.stop().map(s -> stopped(s, after.tape().size()));
    return stops && stop.isPresent() ? stop : moves;
  }

  /** A run that stops, taken to be as far as the moves it made. */
  private static Difference stopped(Stop stop, int moves) {
    String what = "stops with " + stop.code() + " (" + stop.code().inWords() + ")";
    return new Difference(stop.line(), moves, true, what);
  }

  private ProgramRun start(SetupSheet sheet, List<Left> parts) {
    ProgramRun run = new ProgramRun(program, sheet, subprograms, Optional.empty(), false, true);
    FinishedRun into = run.finished();
    parts.stream().filter(p -> p.differs(before, into)).forEach(p -> p.carry(before, into));
    into.machine().findLengthDifference();
    return run;
  }

  private SetupSheet startingAt(Point start) {
    ControlSwitches.Places p = setup.control().places();
    return setup.withControl(
        setup
            .control()
            .with(
                new ControlSwitches.Places(
                    p.reference(),
                    p.reference2(),
                    p.reference3(),
                    p.reference4(),
                    p.machineZero(),
                    Optional.of(start),
                    p.clearance())));
  }
}
