package flankfit.metal;

import flankfit.motion.Tape;
import java.util.ArrayList;
import java.util.List;

/** The runs of moves of one tool, of those that take metal away. */
final class Runs {
  private final List<Removed> runs;

  private Runs(List<Removed> runs) {
    this.runs = runs;
  }

  static Runs of(Workpiece piece, int moves) {
    Tape tape = piece.cuts().tape();
    List<Removed> runs = new ArrayList<>();
    int tool = 0;
    int from = -1;
    int to = -1;
    for (int move : piece.tree().moves()) {
      if (move >= moves) {
        break;
      }
      int number = tape.state(move).tool();
      if (from >= 0 && number != tool) {
        runs.add(new Removed(tool, from, to, 0));
        from = -1;
      }
      if (from < 0) {
        from = move;
        tool = number;
      }
      to = move + 1;
    }
    if (from >= 0) {
      runs.add(new Removed(tool, from, to, 0));
    }
    return new Runs(runs);
  }

  /** Numbers of moves before the first run and after each. */
  int[] moments() {
    int[] moments = new int[runs.size() + 1];
    for (int i = 0; i < runs.size(); i++) {
      moments[i + 1] = runs.get(i).to();
    }
    return moments;
  }

  /** The runs with what they took away, from the volumes at the moments. */
  List<Removed> removed(double[] volumes) {
    List<Removed> found = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      Removed run = runs.get(i);
      found.add(new Removed(run.tool(), run.from(), run.to(), volumes[i] - volumes[i + 1]));
    }
    return found;
  }
}
