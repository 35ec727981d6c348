package flankfit.draft;

import flankfit.draft.DraftChoices.Entry;
import flankfit.draft.DraftChoices.Path;
import flankfit.motion.Point;
import flankfit.setup.SetupSheet;
import flankfit.standard.ThreadSpec;
import flankfit.unit.Angles;
import flankfit.unit.LengthUnit;
import flankfit.unit.Lengths;
import java.util.ArrayList;
import java.util.List;

/**
 * Everything a person works out by hand before writing the program: senses, heights, turns, radii,
 * arcs. Lengths of the path are whole numbers of increments; what counts is what is programmed, not
 * what was reckoned before rounding.
 */
final class PathPlan {
  /** How far the lowest groove lies below the depth wanted, in pitches: common practice. */
  static final double BELOW = 0.25;

  /** How far the highest groove lies above the top at least, in pitches: common practice. */
  static final double ABOVE = 0.5;

  /** Least room below the tool's lowest point (mm): common practice, no source. */
  static final double ROOM_BELOW = 0.5;

  /** Height above the part where rapids in the plane are made (mm). */
  private static final double CLEAR_MM = 5;

  private static final double CLEAR_INCH = 0.2;

  /** Distance of a cutter from a boss where it goes down, and length of its first line (mm). */
  private static final double ASIDE = 2;

  /** Share of the room round the mill in a hole that the first line takes (1), and its limit. */
  private static final double START_SHARE = 0.6;

  private static final double LONGEST_START = 1;

  /** Feeds below this read like feeds per revolution (mm/min). */
  private static final double LEAST_FEED = 1;

  private final ThreadJob job;
  private final DraftChoices choices;
  private final Feeds feeds;
  private final Grid grid;
  private final Point origin;
  private final int turns;
  private final List<PassPlan> passes = new ArrayList<>();

  PathPlan(ThreadJob job, DraftChoices choices) {
    this.job = job;
    this.choices = choices;
    this.feeds = Feeds.of(job, choices);
    this.grid =
        new Grid(choices.unit(), job.sheet().control().reading().leastIncrement(choices.unit()));
    this.origin = origin(job.sheet());
    double cover = job.depth() + below() + above() - job.comb();
    this.turns = (int) Math.max(1, Math.ceil(cover / lead() - 1e-9));
    double done = 0;
    for (int k = 1; k <= choices.passes(); k++) {
      double upTo = Math.sqrt((double) k / choices.passes());
      passes.add(pass(k, done, upTo));
      done = upTo;
    }
  }

  /** Origin of G54 (mm): coordinates of the program count from there. */
  private static Point origin(SetupSheet sheet) {
    Point own = sheet.workOffsets().getOrDefault("G54", Point.ZERO);
    Point common = sheet.workOffsets().getOrDefault("common", Point.ZERO);
    return new Point(own.x() + common.x(), own.y() + common.y(), own.z() + common.z());
  }

  private PassPlan pass(int number, double done, double upTo) {
    boolean internal = job.internal();
    double radius = job.mill().radius();
    double bottom = job.bottomDiameter() / 2;
    double outwards = internal ? 1 : -1;
    double back = outwards * (1 - upTo) * radialDepth();
    double path = bottom - back - outwards * radius;
    boolean wear = choices.path() == Path.WEAR;
    long programmed =
        wear
            ? internal ? grid.evenSteps(path) : grid.steps(path)
            : grid.steps(path + outwards * radius);
    double centre = grid.millimetres(programmed) - (wear ? 0 : outwards * radius);
    long arc = choices.entry() == Entry.STRAIGHT ? 0 : arc(programmed, centre);
    double metal = bottom - outwards * (1 - done) * radialDepth();
    double feed = roundFeed(feeds.centre(internal, centre, radius));
    double toolArc = toolArc(arc);
    double in =
        choices.entry() == Entry.STRAIGHT
            ? internal ? roundFeed(feed / 2) : feed
            : internal ? roundFeed(feeds.centre(true, toolArc, radius)) : feed;
    double reach = centre + outwards * radius;
    return new PassPlan(number, upTo - done, programmed, arc, centre, reach, metal, feed, in);
  }

  /** Radius of the programmed entry arc (increments). */
  private long arc(long programmed, double centre) {
    double radius = job.mill().radius();
    boolean wear = choices.path() == Path.WEAR;
    if (job.internal()) {
      return wear ? programmed / 2 : grid.steps(centre / 2 + radius);
    }
    double aside = radialDepth() + ASIDE / 2;
    return grid.stepsUp(wear ? aside : aside + radius);
  }

  /** Radius of the arc that the cutter's centre makes (mm) for a programmed one (increments). */
  double toolArc(long arc) {
    return grid.millimetres(arc) - (choices.path() == Path.WEAR ? 0 : job.mill().radius());
  }

  /** A feed rounded down to what people write; not below the least that is usual. */
  private double roundFeed(double feed) {
    boolean inch = grid.unit() == LengthUnit.INCH;
    double value = grid.unit().fromMillimetres(feed);
    double step = inch || value < 20 ? 0.1 : 1;
    double least = inch ? step : LEAST_FEED;
    return grid.unit().toMillimetres(Math.max(least, Math.floor(value / step + 1e-9) * step));
  }

  /** A feed (mm/min) as a word's number. */
  String feedWord(double feed) {
    String text = Lengths.plain(grid.unit().fromMillimetres(feed), 2);
    return text.contains(".") ? text : text + ".";
  }

  ThreadJob job() {
    return job;
  }

  DraftChoices choices() {
    return choices;
  }

  Feeds feeds() {
    return feeds;
  }

  Grid grid() {
    return grid;
  }

  List<PassPlan> passes() {
    return List.copyOf(passes);
  }

  PassPlan last() {
    return passes.get(passes.size() - 1);
  }

  private ThreadSpec spec() {
    return job.spec();
  }

  double pitch() {
    return spec().pitch();
  }

  double lead() {
    return spec().lead();
  }

  /** Metal from the hole or boss to the bottom of the thread (mm). */
  double radialDepth() {
    return Math.abs(job.bottomDiameter() - job.hole().diameter()) / 2;
  }

  /** Room between the mill and the wall of the hole (mm). */
  double room() {
    return (job.hole().diameter() - job.mill().diameter()) / 2;
  }

  /** Whole turns of each pass. */
  int turns() {
    return turns;
  }

  /** Helices of each pass: a single row cuts one start along each. */
  int helices() {
    return job.teeth().rows() == 1 ? spec().starts() : 1;
  }

  /** Whether the cutter goes counter-clockwise about the axis. */
  boolean anticlockwise() {
    boolean left = choices.climb() != job.mill().leftHand();
    return left == job.internal();
  }

  /** Whether the motion is that which is not mirrored: the cutter runs left of the wall. */
  boolean leftOfWall() {
    return choices.climb() != job.mill().leftHand();
  }

  /** Whether the cutter rises on the helix. */
  boolean rising() {
    return anticlockwise() != spec().leftHand();
  }

  /**
   * How far the lowest groove lies below the depth wanted (mm): with several starts the gauge's
   * threads go in side by side, and the shortest groove stops it.
   */
  double below() {
    return (BELOW + spec().starts() - 1) * pitch();
  }

  /** How far the highest groove lies above the top at least (mm). */
  double above() {
    return (ABOVE + spec().starts() - 1) * pitch();
  }

  /** Height of the lowest row's middle at the lowest point of the helix, part frame (mm). */
  double lowestGroove() {
    return job.hole().top() - job.depth() - below();
  }

  /** The height of the tip after so many turns of a helix (increments, program frame). */
  long tip(int turn, int helix) {
    double low = lowestGroove() - job.teeth().tip() - origin.z() + helix * pitch();
    double start = rising() ? low : low + turns * lead();
    return grid.steps(start + (rising() ? 1 : -1) * turn * lead());
  }

  /** Rise of the entry arc (mm) that leaves no mark: lead · sweep/360 · its radius / path. */
  double entryRise(PassPlan pass) {
    if (choices.entry() == Entry.STRAIGHT) {
      // A line along the tangent of a boss goes on with the slope of the helix.
      double way = job.internal() ? 0 : grid.millimetres(tangent(pass));
      return lead() * way / (Angles.TURN * pass.path());
    }
    return lead() * choices.entry().sweep() / Angles.TURN * toolArc(pass.arc()) / pass.path();
  }

  /** Lowest height that the tool's lowest point comes to, part frame (mm). */
  double lowest() {
    double rise = passes.stream().mapToDouble(this::entryRise).max().orElse(0);
    return lowestGroove() - job.teeth().tip() - rise;
  }

  /** Depth that hole or boss needs (mm), with room below. */
  double neededDepth() {
    return job.hole().top() - lowest() + ROOM_BELOW;
  }

  /** Length of a tangent line before a boss's path (increments): the cutter stands clear there. */
  long tangent(PassPlan pass) {
    double clear = job.hole().diameter() / 2 + job.mill().radius() + ASIDE / 2;
    return grid.stepsUp(Math.sqrt(Math.max(0, clear * clear - pass.path() * pass.path())));
  }

  /** Length of the line on which compensation comes on (increments). */
  long startLine() {
    return job.internal()
        ? Math.max(2, (long) (Math.min(START_SHARE * room(), LONGEST_START) / grid.increment()))
        : grid.steps(ASIDE);
  }

  /** Height at which rapids in the plane are made, program frame (increments). */
  long clear() {
    double top = job.sheet().stock().map(s -> s.top()).orElse(job.hole().top());
    double above = Math.max(top, job.hole().top()) - origin.z();
    double clear =
        grid.unit() == LengthUnit.INCH ? grid.unit().toMillimetres(CLEAR_INCH) : CLEAR_MM;
    return grid.stepsUp(above + clear);
  }

  /** Axis of a hole in the program frame (increments). */
  long[] axis(int hole) {
    return new long[] {
      grid.steps(job.holes().get(hole).x() - origin.x()),
      grid.steps(job.holes().get(hole).y() - origin.y())
    };
  }
}
