package flankfit.gauge;

import flankfit.standard.ThreadSpec;
import flankfit.sweep.Wall;
import flankfit.unit.Require;
import java.util.Arrays;

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
  /** Directions read when nothing else is said. */
  public static final int DIRECTIONS = 120;

  private final ThreadSpec spec;
  private final Winding winding;
  private final FieldSampler read;

  private WallField(ThreadSpec spec, FieldSampler read) {
    this.spec = spec;
    this.winding = Winding.of(spec);
    this.read = read;
  }

  /**
   * Reads a wall.
   *
   * @param wall the wall; must bear being asked by several threads at once
   * @param spec thread wanted there: its pitch, starts, hand, angle and gauges say where to look
   * @param through whether the wall's lower end is open, so that gauges may leave there
   */
  public static WallField sample(Wall wall, ThreadSpec spec, boolean through) {
    return sample(wall, spec, through, DIRECTIONS);
  }

  /**
   * Reads a wall in a number of directions.
   *
   * @param directions number of directions, even and at least 12
   * @throws IllegalArgumentException if the number is odd or too small, or one of wall and thread
   *     is a hole's and the other a boss's
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
    if (directions % 2 != 0) {
      throw new IllegalArgumentException("directions must be even: " + directions);
    }
    if (wall.isInternal() != spec.internal()) {
      throw new IllegalArgumentException("wall and thread must both be internal or external");
    }
    FieldSampler read = new FieldSampler(wall, spec, through, directions, ladder);
    read.readAll();
    return new WallField(spec, read);
  }

  /** The thread wanted. */
  public ThreadSpec spec() {
    return spec;
  }

  /** Number of directions. */
  public int directions() {
    return read.directions;
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
    return winding;
  }

  Wall wall() {
    return read.wall;
  }

  /** Depth of the wall at the mouth's face in a direction (mm). */
  double face(int direction) {
    return read.face[direction];
  }

  int size() {
    return read.size;
  }

  /** Index of the direction of an element. */
  int direction(int element) {
    return read.direction[element];
  }

  /** Direction of an element (rad). */
  double theta(int element) {
    return read.angle(read.direction[element]);
  }

  /** Height of the helix at an element (mm). */
  double height(int element) {
    return read.height[element];
  }

  /** Depth of the groove's bottom (mm); infinite beyond the ends of the wall. */
  double bottom(int element) {
    return read.bottom[element];
  }

  /** Depth of the crest of the ridge above (up) or below a groove (mm). */
  double ridge(int element, boolean up) {
    return up ? read.ridgeUp[element] : read.ridgeDown[element];
  }

  /** Distance of the flank from the helix beside the crest of its ridge (mm). */
  double atRidge(int element, boolean up) {
    return up ? read.upAtRidge[element] : read.downAtRidge[element];
  }

  /** Distance of the flank from the helix at the groove's bottom (mm). */
  double atBottom(int element, boolean up) {
    return up ? read.upAtBottom[element] : read.downAtBottom[element];
  }

  /** Depth of the basic pitch cylinder (mm). */
  double pitchLine() {
    return winding.turned(spec.basicPitch() / 2);
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
    return up ? read.up[at] : read.down[at];
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
