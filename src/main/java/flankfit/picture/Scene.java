package flankfit.picture;

import flankfit.motion.Extents;
import flankfit.motion.MoveKind;
import flankfit.motion.Point;
import flankfit.motion.Tape;
import flankfit.setup.Hole;
import flankfit.setup.SetupSheet;
import flankfit.setup.Stock;
import flankfit.setup.Tool;
import flankfit.unit.Require;
import java.util.Arrays;
import java.util.Collections;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * What a picture of the motion shows: the path of a tape, stock, holes and keep-outs of a sheet,
 * and the cutter where a move ends. Holds no graphics memory and never changes.
 */
public final class Scene {
  /** A closer look is worth it when it shows less than this share of the part (1). */
  private static final double CLOSE = 0.6;

  private final Ground ground;
  private final Tape tape;
  private final SetupSheet setup;
  private final String title;
  private final OptionalInt position;
  private final double share;
  private final Map<String, Double> majorDiameters;
  private final Passes passes;
  private final LineKinds kinds;
  private final Optional<Extents> feeds;
  private final Extents bounds;
  private final Extents reach;

  /** What scenes of one program have in common, so that lines drawn for one serve the others. */
  private static final class Ground {
    private final Point origin;
    private final Object program;

    /**
     * @param origin what positions are relative to in graphics memory
     * @param program stands for the program
     */
    Ground(Point origin, Object program) {
      this.origin = origin;
      this.program = program;
    }
  }

  /**
   * The scene of a program.
   *
   * @param tape what the tool does
   * @param setup what the program does not say
   * @param title shown above the picture; may be empty
   */
  public Scene(Tape tape, SetupSheet setup, String title) {
    this(
        tape,
        setup,
        title,
        new Passes(tape, setup.holes()),
        LineKinds.NONE.and(tape, 0),
        feedBox(tape),
        tape.extents());
  }

  /**
   * A scene of which everything is known already.
   *
   * @param feeds the box of all feed moves; empty for none
   * @param moved the box of all moves
   */
  Scene(
      Tape tape,
      SetupSheet setup,
      String title,
      Passes passes,
      LineKinds kinds,
      Optional<Extents> feeds,
      Extents moved) {
    this(tape, setup, title, passes, kinds, feeds, moved, boundsOf(setup, feeds, moved));
  }

  private Scene(
      Tape tape,
      SetupSheet setup,
      String title,
      Passes passes,
      LineKinds kinds,
      Optional<Extents> feeds,
      Extents moved,
      Extents bounds) {
    this(
        new Ground(bounds.middle(), new Object()),
        tape,
        setup,
        title,
        OptionalInt.empty(),
        1,
        Map.of(),
        passes,
        kinds,
        feeds,
        bounds,
        moved.union(bounds));
  }

  private Scene(
      Ground ground,
      Tape tape,
      SetupSheet setup,
      String title,
      OptionalInt position,
      double share,
      Map<String, Double> majorDiameters,
      Passes passes,
      LineKinds kinds,
      Optional<Extents> feeds,
      Extents bounds,
      Extents reach) {
    this.ground = ground;
    this.tape = Objects.requireNonNull(tape, "tape");
    this.setup = Objects.requireNonNull(setup, "setup");
    this.title = Objects.requireNonNull(title, "title");
    this.position = position;
    this.share = share;
    this.majorDiameters = Collections.unmodifiableMap(new TreeMap<>(majorDiameters));
    this.passes = passes;
    this.kinds = kinds;
    this.feeds = feeds;
    this.bounds = bounds;
    this.reach = reach;
  }

  /**
   * This scene as one of the program that another one showed so far.
   *
   * @param earlier a scene of the first moves of the tape
   * @param sameLines whether what was drawn of those moves still holds
   */
  Scene after(Scene earlier, boolean sameLines) {
    Ground kept =
        sameLines ? earlier.ground : new Ground(earlier.ground.origin, earlier.ground.program);
    return new Scene(
        kept,
        tape,
        setup,
        title,
        position,
        share,
        earlier.majorDiameters,
        passes,
        kinds,
        feeds,
        bounds,
        reach);
  }

  /**
   * The same scene with the cutter where a move ends; the path beyond is drawn paler.
   *
   * @param move index of the move, from 0
   */
  public Scene withCutterAfter(int move) {
    return withCutterAt(move, 1);
  }

  /**
   * The same scene with the cutter within a move; the path beyond is drawn paler.
   *
   * @param move index of the move, from 0
   * @param done how much of the move is done (1), in [0, 1]
   */
  public Scene withCutterAt(int move, double done) {
    Objects.checkIndex(move, tape.size());
    Require.within("done", done, 0, 1);
    OptionalInt at = OptionalInt.of(move);
    return new Scene(
        ground, tape, setup, title, at, done, majorDiameters, passes, kinds, feeds, bounds, reach);
  }

  /**
   * The same scene with the major diameter of the threads wanted, drawn as thin circles.
   *
   * @param diameters major diameter by name of the hole (mm), each above 0
   */
  public Scene withMajorDiameters(Map<String, Double> diameters) {
    return new Scene(
        ground, tape, setup, title, position, share, diameters, passes, kinds, feeds, bounds,
        reach);
  }

  /**
   * Whether another scene differs in the place of the cutter at most, and in moves that were added
   * at the end.
   */
  boolean sharesGround(Scene other) {
    return ground == other.ground && majorDiameters.equals(other.majorDiameters);
  }

  /** Whether lines of another scene show the same program, perhaps in other styles. */
  boolean sharesProgram(Scene other) {
    return ground.program == other.ground.program;
  }

  /** Which kinds of line there are. */
  LineKinds kinds() {
    return kinds;
  }

  /** What the tool does. */
  public Tape tape() {
    return tape;
  }

  /** What the program does not say. */
  public SetupSheet setup() {
    return setup;
  }

  /** Shown above the picture; may be empty. */
  public String title() {
    return title;
  }

  /** The move after which the cutter is drawn; empty for no cutter. */
  public OptionalInt position() {
    return position;
  }

  /** How much of the move at the position is done (1); 1 without a position. */
  public double share() {
    return share;
  }

  /** Where the tip stands at the position, which there must be. */
  Point tip() {
    int move = position.orElseThrow();
    if (share >= 1) {
      return tape.to(move);
    }
    double[] p = new double[3];
    tape.pointAt(move, share, p);
    return new Point(p[0], p[1], p[2]);
  }

  /** The major diameter of the thread wanted in a hole (mm), if it was given. */
  Optional<Double> majorDiameter(Hole hole) {
    return Optional.ofNullable(majorDiameters.get(hole.name()));
  }

  /** Which pass each move belongs to. */
  Passes passes() {
    return passes;
  }

  /**
   * How much of the paper's colour the line of a move has (1): more for earlier passes, none for
   * the last.
   */
  public double paleness(int move) {
    return LineStyles.paleness(passes.following(move));
  }

  /** The box to show at first: stock, holes and feed moves; all moves if there are none. */
  public Extents bounds() {
    return bounds;
  }

  /**
   * The box to look at closely: feed moves and the holes they lie in, with some of the part around
   * them; the same as {@link #bounds()} when that is hardly larger.
   */
  public Extents subject() {
    if (feeds.isEmpty()) {
      return bounds;
    }
    Extents box = feeds.get();
    for (Hole hole : setup.holes()) {
      if (worked(hole, box)) {
        box = box.union(boxOf(hole));
      }
    }
    double room = 0.3 * Math.max(box.max().x() - box.min().x(), box.max().y() - box.min().y());
    Extents part = bounds;
    Extents grown =
        new Extents(
            new Point(
                Math.max(box.min().x() - room, part.min().x()),
                Math.max(box.min().y() - room, part.min().y()),
                part.min().z()),
            new Point(
                Math.min(box.max().x() + room, part.max().x()),
                Math.min(box.max().y() + room, part.max().y()),
                part.max().z()));
    return grown.diagonal() < CLOSE * part.diagonal() ? grown : part;
  }

  private static boolean worked(Hole hole, Extents box) {
    double r = hole.diameter() / 2;
    return box.min().x() < hole.x() + r
        && box.max().x() > hole.x() - r
        && box.min().y() < hole.y() + r
        && box.max().y() > hole.y() - r;
  }

  private static Extents extents(double[] low, double[] high) {
    return new Extents(new Point(low[0], low[1], low[2]), new Point(high[0], high[1], high[2]));
  }

  /** The box of everything, rapids included. */
  public Extents reach() {
    return reach;
  }

  /** What positions are relative to in graphics memory. */
  Point origin() {
    return ground.origin;
  }

  /**
   * Height of the part's top, where depth is zero (mm): of the stock, else the highest hole, else
   * 0.
   */
  public double top() {
    return setup
        .stock()
        .map(Stock::top)
        .orElseGet(() -> setup.holes().stream().mapToDouble(Hole::top).max().orElse(0));
  }

  /** Height of the part's bottom (mm): of the stock, else the lowest that the tool reaches. */
  double bottom() {
    return setup.stock().map(Stock::bottom).orElseGet(() -> Math.min(bounds.min().z(), top()));
  }

  /** The tool drawn at the position; empty without a position or if the sheet does not know it. */
  Optional<Tool> cutter() {
    return position.isPresent()
        ? setup.tool(tape.state(position.getAsInt()).tool())
        : Optional.empty();
  }

  /** What is to be shown at first: stock, holes and feed moves; all moves if there are none. */
  private static Extents boundsOf(SetupSheet setup, Optional<Extents> feeds, Extents moved) {
    Extents box = setup.stock().map(Stock::box).orElse(null);
    for (Hole hole : setup.holes()) {
      box = union(box, boxOf(hole));
    }
    if (feeds.isPresent()) {
      box = union(box, feeds.get());
    }
    return box == null ? moved : box;
  }

  private static Extents boxOf(Hole hole) {
    double r = hole.diameter() / 2;
    double low = hole.top() - hole.depth().orElse(0.0);
    return new Extents(
        new Point(hole.x() - r, hole.y() - r, low),
        new Point(hole.x() + r, hole.y() + r, hole.top()));
  }

  private static Extents union(Extents a, Extents b) {
    return a == null ? b : a.union(b);
  }

  private static Optional<Extents> feedBox(Tape tape) {
    double[] low = new double[3];
    double[] high = new double[3];
    Arrays.fill(low, Double.MAX_VALUE);
    Arrays.fill(high, -Double.MAX_VALUE);
    boolean any = false;
    double[] p = new double[3];
    for (int move = 0; move < tape.size(); move++) {
      MoveKind kind = tape.kind(move);
      if (kind == MoveKind.LINE || kind == MoveKind.ARC) {
        any = true;
        int steps = kind == MoveKind.ARC ? 16 : 1;
        for (int i = 0; i <= steps; i++) {
          tape.pointAt(move, (double) i / steps, p);
          for (int k = 0; k < 3; k++) {
            low[k] = Math.min(low[k], p[k]);
            high[k] = Math.max(high[k], p[k]);
          }
        }
      }
    }
    return any ? Optional.of(extents(low, high)) : Optional.empty();
  }
}
