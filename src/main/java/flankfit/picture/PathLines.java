package flankfit.picture;

import flankfit.motion.Chords;
import flankfit.motion.ModalState.Distance;
import flankfit.motion.MoveKind;
import flankfit.motion.Plane;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import java.util.Arrays;

/**
 * The path of a scene as lines for one level of zoom: where the tool goes, thick; where the blocks
 * told it to be, if that differs, thin; marks of direction along the arcs.
 */
final class PathLines {
  private static final double TICK_SPACING = 84;
  private static final double SHORTEST_TICKED = 26;
  private static final int MOST_TICKS = 20000;

  /** So many moves are drawn with all their points; more are thinned. */
  static final int EXACT_MOVES = 50_000;

  /** What may be left out of a thinned path, in pixels of the level (1): below half a real one. */
  private static final double THINNED = 0.2;

  private static final int MOVES_A_LOOK = 256;

  private final double tolerance;
  private final double pixel;
  private final LineStore actual;
  private final LineStore programmed;
  private final ThinnedLine actualLine;
  private final ThinnedLine programmedLine;
  private final TickStore ticks;
  private final double[] p = new double[3];
  private final double[] q = new double[3];
  private double[] points = new double[192];
  private Scene scene;
  private Tape tape;
  private int[] ends;
  private boolean[] within;
  private int moves;

  /**
   * No lines yet.
   *
   * @param scene what is shown
   * @param tolerance greatest distance of a chord from its arc (mm), above 0
   * @param pixel what a pixel shows about (mm), above 0
   */
  PathLines(Scene scene, double tolerance, double pixel) {
    this.scene = scene;
    this.tape = scene.tape();
    this.tolerance = tolerance;
    this.pixel = pixel;
    boolean exact = scene.passes().areKnown() && tape.size() <= EXACT_MOVES;
    double thinned = exact ? 0 : THINNED * pixel;
    actual = new LineStore(scene.origin());
    programmed = new LineStore(scene.origin());
    actualLine = new ThinnedLine(actual, thinned);
    programmedLine = new ThinnedLine(programmed, thinned);
    ticks = new TickStore(scene.origin());
    ends = new int[tape.size()];
    within = new boolean[tape.size()];
    actualLine.moveTo(tape.start().x(), tape.start().y(), tape.start().z());
  }

  /**
   * Goes on with the lines of a scene.
   *
   * @param now the scene before, or one that shares its ground with more moves
   * @param until the time (ns, of {@link System#nanoTime}) after which no more is begun; some are
   *     made in any case
   */
  void extend(Scene now, long until) {
    scene = now;
    tape = now.tape();
    if (ends.length < tape.size()) {
      int room = Math.max(tape.size(), (int) Math.min(Integer.MAX_VALUE - 8, 2L * ends.length));
      ends = Arrays.copyOf(ends, room);
      within = Arrays.copyOf(within, room);
    }
    int least = moves + MOVES_A_LOOK;
    while (moves < tape.size()
        && (moves < least || moves % MOVES_A_LOOK != 0 || System.nanoTime() - until < 0)) {
      add(moves);
      ends[moves] = actual.last();
      within[moves] = actualLine.isWithinChord();
      addProgrammed(moves);
      moves++;
    }
    actualLine.flush();
    programmedLine.flush();
  }

  /** Number of moves that have their lines. */
  int moves() {
    return moves;
  }

  /** Whether the move ends within the chord that starts at its {@link #end}, not at the texel. */
  boolean endsWithinChord(int move) {
    return move < moves && within[move];
  }

  /** Where the tool goes. */
  LineStore actual() {
    return actual;
  }

  /** Where the blocks told it to be, as far as that differs. */
  LineStore programmed() {
    return programmed;
  }

  /** Direction marks along the arcs. */
  TickStore ticks() {
    return ticks;
  }

  /** Texel of the actual path at which a move ends. */
  int end(int move) {
    return move < moves ? ends[move] : actual.last();
  }

  /** The texel whose chord a share (1) of a move ends within. */
  int part(int move, double share) {
    int from = move == 0 ? 0 : end(move - 1);
    int to = end(move);
    boolean arc = tape.kind(move) == MoveKind.ARC;
    int texel = arc ? from + (int) Math.floor(share * (to - from)) : to - 1;
    // The point that two slots share, and the new beginning of a dashed line, start no chord.
    while (texel > from && actual.styles()[texel] == LineStore.HIDDEN) {
      texel--;
    }
    return Math.max(from, texel);
  }

  private void add(int move) {
    MoveKind kind = tape.kind(move);
    int chords = Chords.count(tape, move, tolerance);
    if (chords == 0) {
      return;
    }
    int style = style(kind == MoveKind.RAPID ? LineStyles.RAPID : LineStyles.FEED, move);
    boolean measured = kind == MoveKind.RAPID;
    if (measured) {
      actualLine.restart();
    }
    if (kind == MoveKind.ARC) {
      addTicks(move, style);
    }
    if (points.length < 3 * chords) {
      points = new double[2 * 3 * chords];
    }
    int last = Chords.write(tape, move, chords, points, 0);
    for (int k = 0; k < last; k += 3) {
      if (measured) {
        actualLine.dashTo(points[k], points[k + 1], points[k + 2], tape.length(move), style);
      } else {
        actualLine.lineTo(points[k], points[k + 1], points[k + 2], style);
      }
    }
  }

  private int style(int kind, int move) {
    Distance mode = tape.state(move).distance();
    int level = Math.min(scene.passes().following(move), LineStyles.LEVELS - 1);
    return LineStyles.path(kind, mode, level);
  }

  private void addTicks(int move, int style) {
    double length = tape.length(move);
    if (length < SHORTEST_TICKED * pixel || ticks.size() >= MOST_TICKS) {
      return;
    }
    int count = (int) Math.max(1, Math.min(400, Math.floor(length / (TICK_SPACING * pixel))));
    int texel = actual.last();
    for (int i = 0; i < count; i++) {
      double share = (i + 0.5) / count;
      tape.pointAt(move, share, p);
      tape.pointAt(move, share + 1e-3, q);
      ticks.add(p, q, style, texel);
    }
  }

  private void addProgrammed(int move) {
    MoveKind kind = tape.kind(move);
    if (kind == MoveKind.DWELL || kind == MoveKind.RAPID) {
      return;
    }
    Point from = move == 0 ? tape.start() : tape.programmedTo(move - 1);
    Point to = tape.programmedTo(move);
    boolean same = from.equals(tape.from(move)) && to.equals(tape.to(move));
    if (same || from.equals(to)) {
      return;
    }
    int style = style(LineStyles.PROGRAMMED, move);
    programmedLine.moveTo(from.x(), from.y(), from.z());
    if (kind == MoveKind.ARC) {
      addProgrammedArc(move, from, to, style);
    } else {
      programmedLine.lineTo(to.x(), to.y(), to.z(), style);
    }
  }

  /** The arc about the same centre that the block asked for, before compensation moved its ends. */
  private void addProgrammedArc(int move, Point from, Point to, int style) {
    Plane plane = tape.state(move).plane();
    double cu = tape.centreU(move);
    double cv = tape.centreV(move);
    double fromU = from.axis(plane.u()) - cu;
    double fromV = from.axis(plane.v()) - cv;
    double toU = to.axis(plane.u()) - cu;
    double toV = to.axis(plane.v()) - cv;
    double r0 = Math.hypot(fromU, fromV);
    double r1 = Math.hypot(toU, toV);
    double a0 = Math.atan2(fromV, fromU);
    double plain = Math.atan2(toV, toU) - a0;
    double turns = Math.rint((tape.sweep(move) - plain) / (2 * Math.PI));
    double sweep = plain + 2 * Math.PI * turns;
    int chords = Chords.count(Math.max(r0, r1), sweep, tolerance);
    for (int i = 1; i <= chords; i++) {
      double t = (double) i / chords;
      double r = r0 + (r1 - r0) * t;
      double a = a0 + sweep * t;
      p[plane.u()] = cu + r * Math.cos(a);
      p[plane.v()] = cv + r * Math.sin(a);
      p[plane.n()] = from.axis(plane.n()) + t * (to.axis(plane.n()) - from.axis(plane.n()));
      programmedLine.lineTo(p[0], p[1], p[2], style);
    }
  }
}
