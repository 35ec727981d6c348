package flankfit.control;

import flankfit.finding.Code;
import flankfit.finding.Place;
import java.util.Optional;

/** HZ12: a run of incremental moves that nearly comes back to where it began. */
final class IncrementalRun {
  private static final double NEARLY = 0.05;
  private static final double CLOSED = 1e-6;

  /** A run that goes no farther than this is a small shift, not a closed figure (mm). */
  private static final double GOES_FAR = 1;

  private final Machine machine;
  private final double[] start = new double[3];
  private boolean running;
  private double farthest;
  private int lastLine;
  private Optional<Place> last = Optional.empty();

  IncrementalRun(Machine machine) {
    this.machine = machine;
  }

  /** After a motion made in incremental mode, which began at these coordinates. */
  void moved(double x, double y, double z) {
    double[] tip = machine.tip;
    if (!running) {
      running = true;
      farthest = 0;
      start[0] = x;
      start[1] = y;
      start[2] = z;
    }
    farthest = Math.max(farthest, distance(tip));
    lastLine = machine.report.line();
    last = Optional.empty();
    if (Math.abs(distance(tip)) <= NEARLY) {
      last = Optional.of(machine.report.place());
    }
  }

  private double distance(double[] tip) {
    return Math.hypot(Math.hypot(tip[0] - start[0], tip[1] - start[1]), tip[2] - start[2]);
  }

  /** The absolute mode is back, or the program ends. */
  void ends() {
    if (!running) {
      return;
    }
    running = false;
    double gap = distance(machine.tip);
    if (gap <= CLOSED || gap > NEARLY || farthest < GOES_FAR || last.isEmpty()) {
      return;
    }
    machine.report.add(
        Code.HZ12,
        last.get(),
        "incremental moves end "
            + machine.coordinate(machine.tip[0] - start[0])
            + ", "
            + machine.coordinate(machine.tip[1] - start[1])
            + ", "
            + machine.coordinate(machine.tip[2] - start[2])
            + " from where they began",
        "one of them is off",
        "correct line " + lastLine + " or one before it");
  }
}
