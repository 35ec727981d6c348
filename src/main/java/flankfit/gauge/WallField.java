package flankfit.gauge;

import flankfit.standard.ThreadSpec;
import flankfit.sweep.Wall;
import flankfit.unit.Angles;
import flankfit.unit.Require;
import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/**
 * A wall read once for gauging and measuring: at directions round the axis, and for each groove met
 * there along the wanted thread's helix, where both flanks, the bottom and the neighbouring ridges
 * stand. One groove in one direction is an element; elements lie in order of falling height, so
 * that one turn of a thread is {@link #directions} elements for each start.
 *
 * <p>Depths are radii counted into the metal: the radius in a hole, its negative on a boss. Flanks
 * are given as distances from the helix (mm), infinite where no metal stands, not a number deeper
 * than the bottom. A groove is that which lies nearest to the wanted helix, within a quarter of the
 * pitch; where there is none, the bottom is the wall itself.
 */
public final class WallField {
  /** Evenly spread directions that are read first when nothing else is said. */
  public static final int DIRECTIONS = 60;

  /** Turns nearer than this are one (1). */
  private static final double SAME_TURN = 1e-9;

  private final FieldSampler read;
  private final FieldColumns columns;
  private final double[] share;
  private final boolean[] even;

  /**
   * What readings tell.
   *
   * @param readings one for each direction, by rising angle, those of the sampler among them
   */
  WallField(FieldSampler read, List<DirectionReading> readings) {
    this(
        read,
        new FieldColumns(
            readings,
            read.ladder.length,
            readings == read.even() || readings.size() == 1
                ? 0
                : read.winding.hand() * read.spec.starts()),
        evenOnes(read, readings));
  }

  private WallField(FieldSampler read, FieldColumns columns, boolean[] even) {
    this.read = read;
    this.columns = columns;
    this.even = even;
    this.share = shares(columns.theta);
  }

  private static boolean[] evenOnes(FieldSampler read, List<DirectionReading> readings) {
    Set<DirectionReading> even = Collections.newSetFromMap(new IdentityHashMap<>());
    even.addAll(read.even());
    boolean[] found = new boolean[readings.size()];
    for (int i = 0; i < found.length; i++) {
      found[i] = even.contains(readings.get(i));
    }
    return found;
  }

  /** Share of the turn that lies nearer to a direction than to others. */
  private static double[] shares(double[] theta) {
    int n = theta.length;
    double[] shares = new double[n];
    for (int i = 0; i < n; i++) {
      double before = i > 0 ? theta[i - 1] : theta[n - 1] - Angles.TURN;
      double after = i + 1 < n ? theta[i + 1] : theta[0] + Angles.TURN;
      shares[i] = (after - before) / (2 * Angles.TURN);
    }
    return shares;
  }

  /**
   * Reads a wall in as many directions as it takes for gauges and measures to be right to a tenth
   * of a micrometre: closer where the wall changes fast round the axis.
   *
   * @param wall the wall; must bear being asked by several threads at once
   * @param spec thread wanted there: its pitch, starts, hand, angle and gauges say where to look
   * @param through whether the wall's lower end is open, so that gauges may leave there
   */
  public static WallField sample(Wall wall, ThreadSpec spec, boolean through) {
    return sample(wall, spec, through, DepthLadder.of(spec));
  }

  /** The same at other depths (mm), as of {@link #sample(Wall, ThreadSpec, boolean, int)}. */
  static WallField sample(Wall wall, ThreadSpec spec, boolean through, double[] ladder) {
    check(wall, spec);
    FieldSampler read = new FieldSampler(wall, spec, through, DIRECTIONS, ladder);
    return new WallField(read, new DirectionSearch(read).readings());
  }

  /**
   * Reads a wall in a number of directions, spread evenly.
   *
   * @param directions number of directions, at least 12
   * @throws IllegalArgumentException if the number is too small, or one of wall and thread is a
   *     hole's and the other a boss's
   */
  public static WallField sample(Wall wall, ThreadSpec spec, boolean through, int directions) {
    return sample(wall, spec, through, directions, DepthLadder.of(spec));
  }

  /**
   * Reads a wall at other depths.
   *
   * @param ladder depths in rising order, all ends of the thread's gauges and its pitch line among
   *     them (mm)
   */
  static WallField sample(
      Wall wall, ThreadSpec spec, boolean through, int directions, double[] ladder) {
    Require.within("directions", directions, 12, 100_000);
    check(wall, spec);
    FieldSampler read = new FieldSampler(wall, spec, through, directions, ladder);
    return new WallField(read, read.even());
  }

  private static void check(Wall wall, ThreadSpec spec) {
    if (wall.isInternal() != spec.internal()) {
      throw new IllegalArgumentException("wall and thread must both be internal or external");
    }
  }

  /** The places where the grooves of all starts pass a height (mm), as a field of their own. */
  WallField at(double z) {
    FieldColumns at = read.at(z);
    return new WallField(read, at, new boolean[at.theta.length]);
  }

  /**
   * Distance of a flank from the helix at a height of the helix and a depth (mm), read there;
   * infinite where it is free, not a number where there is no groove.
   */
  double flankOn(double z, double depth, boolean up) {
    double theta = Angles.normalised((z - read.phase) / read.winding.rise());
    double pitch = read.winding.pitch();
    WallLine line = WallLine.read(read.wall, read.through, theta, read.winding.turned(depth));
    int i = line.nearest(z, z - pitch / 4, z + pitch / 4, 0);
    return i < 0 ? Double.NaN : up ? line.high(i) - z : z - line.low(i);
  }

  /** The thread wanted. */
  public ThreadSpec spec() {
    return read.spec;
  }

  /** Number of directions. */
  public int directions() {
    return columns.theta.length;
  }

  /** Height of the mouth's face (mm). */
  public double top() {
    return read.wall.top();
  }

  /** Height of the wall's lower end (mm). */
  public double bottom() {
    return read.wall.bottom();
  }

  /** Whether the lower end is open. */
  public boolean isThrough() {
    return read.through;
  }

  /**
   * Height of the highest metal on the basic pitch cylinder (mm): turns are counted from there, so
   * a chamfer wider than the pitch diameter counts for nothing.
   */
  public double mouth() {
    return read.mouth;
  }

  /** Height of the lowest metal on the basic pitch cylinder (mm). */
  public double farMouth() {
    return read.farMouth;
  }

  /** Height of the helix's middle in direction 0, within one pitch of the mouth (mm). */
  public double phase() {
    return read.phase;
  }

  Winding winding() {
    return read.winding;
  }

  Wall wall() {
    return read.wall;
  }

  /** Depth of the wall at the mouth's face in a direction (mm). */
  double face(int direction) {
    return columns.face[direction];
  }

  int size() {
    return columns.size;
  }

  /** Index of the direction of an element. */
  int direction(int element) {
    return columns.direction[element];
  }

  /** Direction of an element (rad). */
  double theta(int element) {
    return columns.theta[columns.direction[element]];
  }

  /** Angle of a direction (rad). */
  double angle(int direction) {
    return columns.theta[direction];
  }

  /** Share of the turn that an element stands for (1). */
  double share(int element) {
    return share[columns.direction[element]];
  }

  /**
   * How many elements make up a number of turns of all starts (1), from one on; all that there are
   * where they make less.
   */
  int within(int[] elements, int from, double turns) {
    double sum = 0;
    int to = from;
    while (to < elements.length && sum < turns * spec().starts() - SAME_TURN) {
      sum += share(elements[to++]);
    }
    return to - from;
  }

  /** Turns of all starts that elements make up (1). */
  double turns(int[] elements) {
    double sum = 0;
    for (int e : elements) {
      sum += share(e);
    }
    return sum / spec().starts() + SAME_TURN;
  }

  /** Whether an element's direction is one of those spread evenly. */
  boolean isEven(int element) {
    return even[columns.direction[element]];
  }

  /** The element of the same groove in the next direction; below 0 where there is none. */
  int behind(int element) {
    return columns.behind[element];
  }

  /** Height of the helix at an element (mm). */
  double height(int element) {
    return columns.height[element];
  }

  /** Depth of the groove's bottom (mm); infinite beyond the ends of the wall. */
  double bottom(int element) {
    return columns.bottom[element];
  }

  /** Depth of the crest of the ridge above (up) or below a groove (mm). */
  double ridge(int element, boolean up) {
    return up ? columns.ridgeUp[element] : columns.ridgeDown[element];
  }

  /** Distance of the flank from the helix beside the crest of its ridge (mm). */
  double atRidge(int element, boolean up) {
    return up ? columns.upAtRidge[element] : columns.downAtRidge[element];
  }

  /** Distance of the flank from the helix at the groove's bottom (mm). */
  double atBottom(int element, boolean up) {
    return up ? columns.upAtBottom[element] : columns.downAtBottom[element];
  }

  /** Depth of the basic pitch cylinder (mm). */
  double pitchLine() {
    return read.pitchLine;
  }

  /** Number of depths. */
  int depths() {
    return read.ladder.length;
  }

  /** A depth of the ladder (mm). */
  double depth(int step) {
    return read.ladder[step];
  }

  /** Distance of a flank from the helix at a depth of the ladder (mm). */
  double flank(int element, int step, boolean up) {
    int at = element * read.ladder.length + step;
    return up ? columns.up[at] : columns.down[at];
  }

  /**
   * Distance of a flank from the helix at any depth (mm), between depths of the ladder by a
   * straight line; infinite where it is free, not a number beyond the groove's bottom or the
   * ladder.
   */
  double flankAt(int element, double depth, boolean up) {
    int last = read.ladder.length - 1;
    if (!(depth >= read.ladder[0] && depth <= read.ladder[last])) {
      return Double.NaN;
    }
    int found = Arrays.binarySearch(read.ladder, depth);
    if (found >= 0) {
      return flank(element, found, up);
    }
    int above = -found - 1;
    double low = flank(element, above - 1, up);
    double high = flank(element, above, up);
    double share = (depth - depth(above - 1)) / (depth(above) - depth(above - 1));
    return Double.isInfinite(high) ? high : low + share * (high - low);
  }
}
