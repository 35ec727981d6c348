package flankfit.gauge;

import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Tape;
import flankfit.setup.Hole;
import flankfit.setup.Tool;
import flankfit.standard.ThreadSpec;
import flankfit.sweep.Blank;
import flankfit.sweep.Cutter;
import flankfit.sweep.CutterPath;
import flankfit.sweep.GroovePhase;
import flankfit.sweep.Sweep;
import flankfit.sweep.SweptWall;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The wall that the motion of a thread's passes leaves as it is: approach, entry and exit arcs,
 * incomplete turns, each row pushed off by bending as far as that is known. Seen from the axis of
 * its hole, so that holes cut by the same moves have the same wall.
 */
final class RealPath {
  /** Bending nearer than this is one (mm): a tenth of a micrometre off on a diameter at most. */
  private static final double SAME_BENDING = 1e-4;

  /**
   * The same as a share of the greatest (1), which rules from a hundredth of a millimetre on:
   * diameters are then off by no more than a fiftieth of the greatest bending.
   */
  private static final double SAME_SHARE = 1.0 / 100;

  /** Turns of a thread that are read at most, for the time and memory that it takes (1). */
  private static final int MOST_TURNS = 500;

  /** Moves of a pass with its approach and departure that are swept at most. */
  private static final int MOST_MOVES = 4000;

  private final FoundThread found;
  private final Tape tape;
  private final List<CutPass> passes;
  private final double[] outwards;
  private final List<Stretch> stretches = new ArrayList<>();

  /** A pass with its approach and departure, by the tape's moves. */
  private record Stretch(int first, int last) {}

  /** One pass as its hole sees it: what its wall depends on. */
  private record Seen(CutPass cut, CutterPath path, List<Double> inward) {
    Sweep sweep() {
      return new Sweep(Cutter.of(cut.tool(), cut.tooth()), path, inward);
    }

    Likeness likeness() {
      return new Likeness(cut.tool(), path, inward);
    }
  }

  /** What two passes that leave the same metal have in common. */
  private record Likeness(Object tool, CutterPath path, List<Double> inward) {}

  /**
   * What two threads have in common whose real answers are the same: hole but for its name and
   * place, thread and its gauges, ends, passes.
   */
  record Key(
      Hole hole, ThreadSpec spec, double bottom, double wanted, boolean bare, List<?> passes) {}

  RealPath(FoundThread found, Tape tape) {
    this(found, tape, new double[found.model().passes().size()]);
  }

  /**
   * @param outwards how much larger the radius of each pass's path is than on the tape (mm): what
   *     comes before and after grows in proportion
   */
  RealPath(FoundThread found, Tape tape, double[] outwards) {
    this.found = found;
    this.outwards = outwards.clone();
    this.tape = tape;
    this.passes = found.model().passes();
    for (int i = 0; i < passes.size(); i++) {
      stretches.add(new Stretch(first(i), last(i)));
    }
  }

  /** Why there is no such wall; empty when there is. */
  Optional<String> impossible() {
    double turns = (found.hole().top() - bottom()) / found.spec().pitch();
    if (turns > MOST_TURNS) {
      return Optional.of(
          "it is " + Math.round(Math.ceil(turns)) + " turns long, " + MOST_TURNS + " are read");
    }
    for (int i = 0; i < passes.size(); i++) {
      int moves = stretches.get(i).last() - stretches.get(i).first() + 1;
      if (moves > MOST_MOVES) {
        return Optional.of(
            "the pass at line "
                + passes.get(i).pass().line()
                + " has "
                + moves
                + " moves, "
                + MOST_MOVES
                + " are swept");
      }
      double radius = passes.get(i).pass().radius();
      if (inward(i).stream().anyMatch(off -> off >= radius)) {
        return Optional.of(
            "bending takes the whole radius of the pass at line " + passes.get(i).pass().line());
      }
    }
    return Optional.empty();
  }

  /** What the answer depends on. */
  Key key() {
    Hole hole = found.hole();
    Hole unnamed =
        new Hole(
            "",
            hole.boss(),
            0,
            0,
            hole.top(),
            hole.diameter(),
            hole.depth(),
            hole.bottomAngle(),
            hole.countersink(),
            hole.thread(),
            hole.threadDepth(),
            0);
    List<Likeness> likenesses = seen().stream().map(Seen::likeness).toList();
    return new Key(unnamed, found.spec(), bottom(), wanted(), isThrough(), likenesses);
  }

  /** The wall about the hole's axis, over the length of the hole or of what is cut. */
  SweptWall wall() {
    Hole hole = found.hole();
    double bottom = bottom();
    return new SweptWall(
        !hole.boss(),
        0,
        0,
        new SweptWall.Range(bottom, hole.top()),
        List.of(Blank.of(hole, bottom)),
        seen().stream().map(Seen::sweep).toList());
  }

  /** Reads the wall, more closely where a measured tooth may leave kinks in its flanks. */
  WallField read(SweptWall wall) {
    boolean kinked =
        passes.stream().anyMatch(cut -> cut.teeth().form() instanceof Tool.CutterForm.Measured);
    double[] ladder = kinked ? DepthLadder.ofKinked(found.spec()) : DepthLadder.of(found.spec());
    return WallField.sample(wall, found.spec(), isThrough(), ladder);
  }

  /** Index on the tape of a move of a sweep of the wall. */
  int move(int sweep, int move) {
    return stretches.get(sweep).first() + move;
  }

  private List<Seen> seen() {
    List<Seen> seen = new ArrayList<>();
    for (int i = 0; i < passes.size(); i++) {
      CutterPath path = CutterPath.of(tape, stretches.get(i).first(), stretches.get(i).last());
      CutterPath about = path.seenFrom(found.hole().x(), found.hole().y());
      seen.add(new Seen(passes.get(i), about, inward(i)));
    }
    return seen;
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

  /** Lowest height to which full thread is wanted (mm). */
  double wanted() {
    return CutterPath.rounded(found.wantedBottom());
  }

  private double bottom() {
    Hole hole = found.hole();
    double lowest = found.model().zBottom() - 2 * found.spec().lead();
    double bottom =
        hole.depth()
            .map(depth -> hole.top() - depth)
            .or(found::partBottom)
            .filter(low -> low < hole.top())
            .orElse(Math.min(lowest, hole.top() - found.spec().lead()));
    return CutterPath.rounded(bottom);
  }

  /**
   * The first feed move that leads to a pass without a rapid or another pass between, and without
   * leaving the hole.
   */
  private int first(int i) {
    int first = passes.get(i).pass().first();
    int free = i == 0 ? 0 : passes.get(i - 1).pass().last() + 1;
    while (first > free && leads(first - 1, passes.get(i))) {
      first--;
    }
    return first;
  }

  private int last(int i) {
    int last = passes.get(i).pass().last();
    int free = i + 1 < passes.size() ? passes.get(i + 1).pass().first() - 1 : tape.size() - 1;
    while (last < free && leads(last + 1, passes.get(i))) {
      last++;
    }
    return last;
  }

  private boolean leads(int move, CutPass cut) {
    return tape.kind(move) != MoveKind.RAPID
        && tape.state(move).tool() == cut.pass().state().tool()
        && distance(move) <= farthest(cut);
  }

  /** Distance of the axis from the hole's beyond which no part of a mill meets the thread (mm). */
  private double farthest(CutPass cut) {
    double widest =
        Cutter.of(cut.tool(), cut.tooth()).body().stream()
            .mapToDouble(Cutter.Section::radius)
            .reduce(cut.tooth().outsideRadius(), Math::max);
    return Math.max(found.hole().diameter(), found.spec().nominal()) / 2
        + widest
        + found.spec().pitch();
  }

  /** Least distance of a move from the hole's axis (mm). */
  private double distance(int move) {
    double x = found.hole().x();
    double y = found.hole().y();
    if (tape.kind(move) == MoveKind.ARC) {
      return tape.state(move).plane() == Plane.XY
          ? Math.abs(Math.hypot(tape.centreU(move) - x, tape.centreV(move) - y) - tape.radius(move))
              - Math.abs(tape.endRadius(move) - tape.radius(move))
          : 0;
    }
    double dx = tape.toX(move) - tape.fromX(move);
    double dy = tape.toY(move) - tape.fromY(move);
    double square = dx * dx + dy * dy;
    double along = (x - tape.fromX(move)) * dx + (y - tape.fromY(move)) * dy;
    double share = square > 0 ? Math.max(0, Math.min(1, along / square)) : 0;
    return Math.hypot(tape.fromX(move) + share * dx - x, tape.fromY(move) + share * dy - y);
  }

  /** How far each row is pushed off towards the axis (mm); rows nearly alike are as one. */
  private List<Double> inward(int i) {
    double[] off = new double[passes.get(i).teeth().rows()];
    for (int row = 0; row < off.length; row++) {
      int number = row;
      off[row] = found.bending().map(b -> b.cutShort(i, number)).orElse(0.0);
    }
    List<Double> inward = new ArrayList<>();
    for (double told : alike(off)) {
      inward.add((found.spec().internal() ? told : -told) - outwards[i] + 0.0);
    }
    return inward;
  }

  /** Bending of rows (mm), such that rows that bend nearly alike have one number. */
  static double[] alike(double[] off) {
    double greatest = Arrays.stream(off).map(Math::abs).max().orElse(0);
    double step = SAME_BENDING;
    while (step < SAME_SHARE * greatest) {
      step *= 2;
    }
    double[] told = new double[off.length];
    for (int row = 0; row < off.length; row++) {
      told[row] = Math.rint(off[row] / step) * step;
    }
    return told;
  }
}
