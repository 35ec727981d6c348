package flankfit.gauge;

import flankfit.motion.MoveKind;
import flankfit.motion.Tape;
import flankfit.setup.Hole;
import flankfit.sweep.Blank;
import flankfit.sweep.Cutter;
import flankfit.sweep.CutterPath;
import flankfit.sweep.GroovePhase;
import flankfit.sweep.Sweep;
import flankfit.sweep.SweptWall;
import java.util.ArrayList;
import java.util.List;

/**
 * The wall that the motion of a thread's passes leaves as it is: approach, entry and exit arcs,
 * incomplete turns, each row pushed off by bending as far as that is known.
 */
final class RealPath {
  /** Bending nearer than this is one (mm). */
  private static final double SAME_BENDING = 1e-4;

  private final FoundThread found;
  private final Tape tape;
  private final List<CutPass> passes;

  RealPath(FoundThread found, Tape tape) {
    this.found = found;
    this.tape = tape;
    this.passes = found.model().passes();
  }

  /** The wall about the hole's axis, over the length of the hole or of what is cut. */
  SweptWall wall() {
    Hole hole = found.hole();
    double bottom = bottom();
    List<Sweep> sweeps = new ArrayList<>();
    for (int i = 0; i < passes.size(); i++) {
      CutPass cut = passes.get(i);
      sweeps.add(
          new Sweep(
              Cutter.of(cut.tool(), cut.tooth()),
              CutterPath.of(tape, first(i), last(i)),
              inward(i)));
    }
    return new SweptWall(
        !hole.boss(),
        hole.x(),
        hole.y(),
        new SweptWall.Range(bottom, hole.top()),
        List.of(Blank.of(hole, bottom)),
        sweeps);
  }

  /** Where the finishing pass lays the grooves. */
  GroovePhase phase() {
    CutPass finish = found.model().finish();
    return new GroovePhase(
        finish.lowestRow(finish.pass().phase()),
        finish.pass().perRadian(),
        found.model().spacing());
  }

  /** Whether gauges may leave at the lower end. */
  boolean isThrough() {
    return found.hole().depth().isEmpty();
  }

  private double bottom() {
    Hole hole = found.hole();
    double lowest = found.model().zBottom() - 2 * found.spec().lead();
    return hole.depth()
        .map(depth -> hole.top() - depth)
        .or(found::partBottom)
        .filter(low -> low < hole.top())
        .orElse(Math.min(lowest, hole.top() - found.spec().lead()));
  }

  /** The first feed move that leads to a pass without a rapid or another pass between. */
  private int first(int i) {
    int first = passes.get(i).pass().first();
    int free = i == 0 ? 0 : passes.get(i - 1).pass().last() + 1;
    while (first > free && isFeed(first - 1, passes.get(i).pass())) {
      first--;
    }
    return first;
  }

  private int last(int i) {
    int last = passes.get(i).pass().last();
    int free = i + 1 < passes.size() ? passes.get(i + 1).pass().first() - 1 : tape.size() - 1;
    while (last < free && isFeed(last + 1, passes.get(i).pass())) {
      last++;
    }
    return last;
  }

  private boolean isFeed(int move, Pass pass) {
    return tape.kind(move) != MoveKind.RAPID && tape.state(move).tool() == pass.state().tool();
  }

  /** Rows that bend alike are swept as one; forces are good to a third at best. */
  private static double told(double bending) {
    return Math.rint(bending / SAME_BENDING) * SAME_BENDING;
  }

  /** How far each row is pushed off towards the axis (mm). */
  private List<Double> inward(int i) {
    List<Double> inward = new ArrayList<>();
    for (int row = 0; row < passes.get(i).teeth().rows(); row++) {
      int number = row;
      double off = found.bending().map(b -> told(b.cutShort(i, number))).orElse(0.0);
      inward.add(found.spec().internal() ? off : -off);
    }
    return inward;
  }
}
