package flankfit.sweep;

import flankfit.unit.Require;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The radius of a wall over a grid of angles and heights. Each angle is read on a few radii, every
 * reading serving all heights; between two radii the wall is taken for straight where one half-way
 * shows no bend beyond the accuracy, else they are brought nearer. Never changed after it is made.
 */
public final class WallGrid {
  /** Radii read at first: a flank's curvature over a sixteenth of its height is seen at once. */
  private static final int LEVELS = 17;

  private final double[] theta;
  private final double[] z;
  private final double[] radius;

  private WallGrid(double[] theta, double[] z, double[] radius) {
    this.theta = theta;
    this.z = z;
    this.radius = radius;
  }

  /**
   * Reads a wall. Angles are shared out among the processors; the outcome does not depend on how.
   *
   * @param wall the wall; must bear being asked by several threads at once
   * @param theta polar angles (rad), at least one
   * @param z heights (mm), from bottom to top of the wall, at least one
   * @param shallow radius on which the wall stands at its least deep: that of hole or boss (mm)
   * @param deep radius that it does not reach beyond: that of the groove's bottom (mm)
   * @param accuracy of the radii (mm), above 0
   */
  public static WallGrid of(
      Wall wall, double[] theta, double[] z, double shallow, double deep, double accuracy) {
    Require.positive("shallow", shallow);
    Require.positive("deep", deep);
    Require.positive("accuracy", accuracy);
    Require.within("number of angles", theta.length, 1, Integer.MAX_VALUE);
    double[] heights = z.clone();
    double[] angles = theta.clone();
    double[] radius = new double[Math.multiplyExact(angles.length, heights.length)];
    IntStream.range(0, angles.length)
        .parallel()
        .forEach(
            i -> {
              double[] column = new Column(wall, angles[i], heights, accuracy).radii(shallow, deep);
              System.arraycopy(column, 0, radius, i * heights.length, heights.length);
            });
    return new WallGrid(angles, heights, radius);
  }

  /** Number of angles. */
  public int angles() {
    return theta.length;
  }

  /** Number of heights. */
  public int heights() {
    return z.length;
  }

  /** An angle as given (rad). */
  public double theta(int angle) {
    return theta[angle];
  }

  /** A height as given (mm). */
  public double z(int height) {
    return z[height];
  }

  /** Radius of the wall (mm). */
  public double radius(int angle, int height) {
    return radius[angle * z.length + height];
  }

  /** The wall at one angle. */
  private static final class Column {
    private final Wall wall;
    private final double theta;
    private final double[] z;
    private final double accuracy;
    private final double[] found;
    private double[] stretches = new double[128];

    Column(Wall wall, double theta, double[] z, double accuracy) {
      this.wall = wall;
      this.theta = theta;
      this.z = z;
      this.accuracy = accuracy;
      this.found = new double[z.length];
    }

    double[] radii(double shallow, double deep) {
      int[] all = IntStream.range(0, z.length).toArray();
      double at = deep;
      double[] gaps = gaps(at, all);
      Arrays.fill(found, shallow);
      int[] left = settle(all, gaps, at);
      for (int level = LEVELS - 2; level >= 0 && left.length > 0; level--) {
        double next = shallow + (deep - shallow) * level / (LEVELS - 1);
        double[] nextGaps = gaps(next, left);
        int[] open = Arrays.stream(left).filter(i -> nextGaps[i] > 0).toArray();
        between(next, nextGaps, at, gaps, open);
        left = Arrays.stream(left).filter(i -> nextGaps[i] <= 0).toArray();
        at = next;
        gaps = nextGaps;
      }
      return found;
    }

    /** Heights open on the deepest radius are done. */
    private int[] settle(int[] heights, double[] gaps, double radius) {
      for (int i : heights) {
        if (gaps[i] > 0) {
          found[i] = radius;
        }
      }
      return Arrays.stream(heights).filter(i -> gaps[i] <= 0).toArray();
    }

    /** Finds the wall at heights that are open on one radius and closed on another. */
    private void between(double a, double[] gapsA, double b, double[] gapsB, int[] heights) {
      if (heights.length == 0) {
        return;
      }
      double m = (a + b) / 2;
      if (Math.abs(b - a) < accuracy) {
        for (int i : heights) {
          found[i] = m;
        }
        return;
      }
      double[] gapsM = gaps(m, heights);
      int[] deeper = new int[heights.length];
      int[] shallower = new int[heights.length];
      int nDeeper = 0;
      int nShallower = 0;
      for (int i : heights) {
        boolean open = gapsM[i] > 0;
        if (isStraight(gapsA[i], gapsM[i], gapsB[i], Math.abs(b - a))) {
          found[i] = open ? crossing(m, gapsM[i], b, gapsB[i]) : crossing(a, gapsA[i], m, gapsM[i]);
        } else if (open) {
          deeper[nDeeper++] = i;
        } else {
          shallower[nShallower++] = i;
        }
      }
      between(m, gapsM, b, gapsB, Arrays.copyOf(deeper, nDeeper));
      between(a, gapsA, m, gapsM, Arrays.copyOf(shallower, nShallower));
    }

    /** Whether the wall bends no more between two radii than the accuracy. */
    private boolean isStraight(double gapA, double gapM, double gapB, double apart) {
      boolean told = gapA < Double.MAX_VALUE && gapB > -Double.MAX_VALUE;
      double bend = Math.abs(gapM - (gapA + gapB) / 2);
      return told && bend * apart < accuracy * (gapA - gapB);
    }

    /** Where the straight line through two gaps is 0. */
    private static double crossing(double a, double gapA, double b, double gapB) {
      return a + (b - a) * gapA / (gapA - gapB);
    }

    private double[] gaps(double radius, int[] heights) {
      int n = wall.open(theta, radius, stretches);
      if (2 * n > stretches.length) {
        stretches = new double[2 * n];
        n = wall.open(theta, radius, stretches);
      }
      double[] gaps = new double[z.length];
      for (int i : heights) {
        gaps[i] = SurfaceSearch.gap(wall, z[i], stretches, n);
      }
      return gaps;
    }
  }
}
