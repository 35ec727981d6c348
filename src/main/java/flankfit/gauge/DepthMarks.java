package flankfit.gauge;

import flankfit.sweep.Wall;
import java.util.Arrays;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * The depths at which a wall is looked at first: the ladder, places on both sides of where its
 * surface is likely to lie, and one step beyond either end.
 */
final class DepthMarks {
  /** Distance short of a bottom or crest at which lines beside it are read (mm). */
  static final double SHORT = 1e-9;

  /** The same beyond it: lines on a cutter's very outside still count as cut (mm). */
  static final double BEYOND = 1.5e-9;

  /** How far beyond the ladder, as a multiple of its length (1). */
  private static final double FARTHEST = 20;

  /** Radius that counts as the axis (mm). */
  private static final double AXIS = 1e-3;

  private final double[] depth;
  private final double[] foreseen;
  private final int[] ofStep;

  private DepthMarks(double[] depth, double[] foreseen, int[] ofStep) {
    this.depth = depth;
    this.foreseen = foreseen;
    this.ofStep = ofStep;
  }

  static DepthMarks of(Wall wall, Winding winding, double[] ladder) {
    NavigableMap<Double, Double> marks = new TreeMap<>();
    for (double step : ladder) {
      marks.put(step, Double.NaN);
    }
    for (double radius : wall.likelyRadii()) {
      double likely = winding.turned(radius);
      if (marks.subMap(likely - SHORT, true, likely + BEYOND, true).isEmpty()) {
        marks.put(likely - SHORT, likely);
        marks.put(likely + BEYOND, Double.NaN);
      }
    }
    addBeyond(marks, ladder, winding);
    double[] depth = marks.keySet().stream().mapToDouble(d -> d).toArray();
    double[] foreseen = marks.values().stream().mapToDouble(d -> d).toArray();
    int[] ofStep = Arrays.stream(ladder).mapToInt(d -> Arrays.binarySearch(depth, d)).toArray();
    return new DepthMarks(depth, foreseen, ofStep);
  }

  /** Coarser and coarser beyond the ladder's ends, where no gauge reaches, up to the axis. */
  private static void addBeyond(
      NavigableMap<Double, Double> marks, double[] ladder, Winding winding) {
    double first = ladder[0];
    double last = ladder[ladder.length - 1];
    for (double off = last - first; off < FARTHEST * (last - first); off *= 2) {
      addAside(marks, first - off, winding);
      addAside(marks, last + off, winding);
    }
    marks.putIfAbsent(winding.turned(AXIS), Double.NaN);
  }

  private static void addAside(NavigableMap<Double, Double> marks, double depth, Winding winding) {
    if (winding.turned(depth) > AXIS) {
      // Never between both sides of a likely depth, which stand next to each other.
      Map.Entry<Double, Double> before = marks.lowerEntry(depth);
      if (before == null || before.getValue().isNaN()) {
        marks.putIfAbsent(depth, Double.NaN);
      }
    }
  }

  int count() {
    return depth.length;
  }

  /** A mark's depth, rising with its index (mm). */
  double depth(int mark) {
    return depth[mark];
  }

  /** Index of the mark at a depth; below 0 when there is none. */
  int of(double at) {
    return Arrays.binarySearch(depth, at);
  }

  /** Index of the mark of a step of the ladder. */
  int ofStep(int step) {
    return ofStep[step];
  }

  /** The likely depth between a mark and the next (mm); not a number when there is none. */
  double foreseenBetween(int mark) {
    return foreseen[mark];
  }
}
