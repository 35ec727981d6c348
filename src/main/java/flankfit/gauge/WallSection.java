package flankfit.gauge;

import flankfit.sweep.Wall;
import java.util.HashMap;
import java.util.Map;

/**
 * A wall in one direction: its lines, each read once, and how deep it is between heights.
 *
 * <p>A line farther into the metal is open where those nearer are, or less. So bottoms and crests
 * are looked for among lines that are there already, and between two of them by their own lines.
 */
final class WallSection {
  /** Width of the bracket at which a search ends (mm). */
  private static final double SETTLED = 1e-9;

  /** Distance from a foreseen end at which lines beside it are read (mm). */
  private static final double ASIDE = 4e-10;

  /** Length of a range that is looked at at least (mm). */
  private static final double LEAST = 1e-7;

  private static final int MOST_STEPS = 100;

  private final Wall wall;
  private final Winding winding;
  private final boolean through;
  private final double theta;
  private final DepthMarks marks;
  private final WallLine[] atMarks;
  private final Map<Double, WallLine> others = new HashMap<>();

  WallSection(Wall wall, Winding winding, boolean through, DepthMarks marks, double theta) {
    this.wall = wall;
    this.winding = winding;
    this.through = through;
    this.theta = theta;
    this.marks = marks;
    this.atMarks = new WallLine[marks.count()];
  }

  double theta() {
    return theta;
  }

  Winding winding() {
    return winding;
  }

  /** How deep the wall is at the mouth's face (mm). */
  double deepestAtFace() {
    return deepest(wall.top(), wall.top());
  }

  /** The line at any depth (mm). */
  WallLine at(double depth) {
    int mark = marks.of(depth);
    return mark >= 0 ? atMark(mark) : others.computeIfAbsent(depth, this::read);
  }

  /** The line at a depth of the ladder. */
  WallLine atStep(int step) {
    return atMark(marks.ofStep(step));
  }

  private WallLine atMark(int mark) {
    WallLine line = atMarks[mark];
    if (line == null) {
      line = read(marks.depth(mark));
      atMarks[mark] = line;
    }
    return line;
  }

  private WallLine read(double depth) {
    return WallLine.read(wall, through, theta, winding.turned(depth));
  }

  /** Whether no metal ever was at a height (mm). */
  boolean isBeyond(double z) {
    return z > wall.top() || (through && z < wall.bottom());
  }

  /** Whether a stretch lies wholly before the mouth's face, or beyond that of a far open end. */
  boolean isOutside(double low, double high) {
    return low >= wall.top() || (through && high <= wall.bottom());
  }

  /** A height, brought within the wall (mm). */
  double within(double z) {
    return Math.min(Math.max(z, wall.bottom()), wall.top());
  }

  /** The greatest depth between two heights of the wall (mm); beyond its ends, that at the end. */
  double deepest(double low, double high) {
    double a = within(Math.min(low, wall.top() - LEAST));
    double b = within(Math.max(high, a + LEAST));
    return end(line -> line.open(a, b), -1);
  }

  /** The least depth between two heights of the wall (mm); beyond its ends, that at the end. */
  double shallowest(double low, double high) {
    double a = within(Math.min(low, wall.top() - LEAST));
    double b = within(Math.max(high, a + LEAST));
    return end(line -> line.metal(a, b), 1);
  }

  /** How much of a line is there; negative when there is nothing. */
  private interface Share {
    double of(WallLine line);
  }

  /**
   * Where something begins to be there: the outermost line found where it is.
   *
   * @param sense 1 when it is there from some depth on, -1 when up to some depth
   */
  private double end(Share share, int sense) {
    int there = firstMark(share, sense);
    int last = sense > 0 ? marks.count() - 1 : 0;
    if (there < 0) {
      return sense * Double.POSITIVE_INFINITY;
    }
    int without = there - sense;
    if (without < 0 || without >= marks.count()) {
      return marks.depth(there);
    }
    double foreseen = marks.foreseenBetween(Math.min(there, without));
    if (!Double.isNaN(foreseen)) {
      return foreseen;
    }
    Bracket bracket = new Bracket(share, marks.depth(there), marks.depth(without));
    if (there != last) {
      bracket.beyond = marks.depth(there + sense);
      bracket.shareBeyond = share.of(atMark(there + sense));
    }
    return bracket.settled();
  }

  /** The first mark in a sense at which something is there, by halving; -1 when at none. */
  private int firstMark(Share share, int sense) {
    int without = sense > 0 ? -1 : marks.count();
    int there = sense > 0 ? marks.count() : -1;
    while (Math.abs(there - without) > 1) {
      int middle = (there + without) >> 1;
      if (share.of(atMark(middle)) >= 0) {
        there = middle;
      } else {
        without = middle;
      }
    }
    return there < 0 || there >= marks.count() ? -1 : there;
  }

  /** Draws together round the depth where something ends, along its own straight lines. */
  private final class Bracket {
    private final Share share;
    private double there;
    private double shareThere;
    private double without;
    private double beyond = Double.NaN;
    private double shareBeyond;

    Bracket(Share share, double there, double without) {
      this.share = share;
      this.there = there;
      this.without = without;
      this.shareThere = share.of(at(there));
    }

    double settled() {
      for (int i = 0; i < MOST_STEPS && Math.abs(there - without) > SETTLED; i++) {
        double next = next(i);
        double found = share.of(at(next));
        if (found >= 0) {
          beyond = there;
          shareBeyond = shareThere;
          there = next;
          shareThere = found;
        } else {
          without = next;
        }
      }
      return there;
    }

    /** In turn the end as the last two lines foresee it, from both sides, and the middle. */
    private double next(int i) {
      double middle = (there + without) / 2;
      double slope = (shareBeyond - shareThere) / (beyond - there);
      double foreseen = there - shareThere / slope;
      double aside = Math.copySign(ASIDE, there - without);
      double tried = i % 3 == 0 ? foreseen + aside : foreseen - aside;
      boolean within = tried > Math.min(there, without) && tried < Math.max(there, without);
      return i % 3 != 2 && within ? tried : middle;
    }
  }
}
