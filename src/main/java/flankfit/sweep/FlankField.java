package flankfit.sweep;

import flankfit.unit.Require;
import java.util.Arrays;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * The flanks of a wall's grooves at given angles and radii: for each angle and groove the heights
 * at which its upper and lower flank stand on each radius. Grooves are followed along the helix, by
 * their phase, and counted from the mouth downwards, 0 the highest that is found at any angle.
 *
 * <p>Where neighbouring grooves have run together the flanks between them do not exist; where a
 * groove leaves the wall's range, nor does the flank beyond it. Never changed after it is made.
 */
public final class FlankField {
  /** Stretches of a line that there is room for at first. */
  private static final int ROOM = 64;

  private final double[] theta;
  private final double[] radius;
  private final GroovePhase phase;
  private final int grooves;
  private final double[] z;

  private FlankField(double[] theta, double[] radius, GroovePhase phase, int grooves, double[] z) {
    this.theta = theta;
    this.radius = radius;
    this.phase = phase;
    this.grooves = grooves;
    this.z = z;
  }

  /**
   * Reads a wall. Angles are shared out among the processors; the outcome does not depend on how.
   *
   * @param wall the wall; must bear being asked by several threads at once
   * @param phase where its grooves should lie, from the motion; numbers may begin anywhere
   * @param theta polar angles (rad), at least one; a field over more than a turn is in order
   * @param radius radii about the axis (mm), above 0, at least one
   */
  public static FlankField of(Wall wall, GroovePhase phase, double[] theta, double[] radius) {
    Objects.requireNonNull(phase, "phase");
    Require.within("number of angles", theta.length, 1, Integer.MAX_VALUE);
    Require.within("number of radii", radius.length, 1, Integer.MAX_VALUE);
    double least = Arrays.stream(theta).map(a -> phase.perRadian() * a).min().orElseThrow();
    double greatest = Arrays.stream(theta).map(a -> phase.perRadian() * a).max().orElseThrow();
    long first = phase.nearest(wall.top() + phase.spacing() - least, 0);
    long last = phase.nearest(wall.bottom() - phase.spacing() - greatest, 0);
    int room = Math.toIntExact(last - first + 1);
    Reader reader = new Reader(wall, phase.from(first), room, theta, radius);
    IntStream.range(0, theta.length).parallel().forEach(reader::read);
    return trimmed(reader);
  }

  /** Without the grooves above the first and below the last that exist. */
  private static FlankField trimmed(Reader reader) {
    int stride = 2 * reader.radius.length;
    int first = reader.room;
    int last = -1;
    for (int i = 0; i < reader.z.length; i++) {
      if (!Double.isNaN(reader.z[i])) {
        int groove = i / stride % reader.room;
        first = Math.min(first, groove);
        last = Math.max(last, groove);
      }
    }
    int grooves = Math.max(0, last - first + 1);
    double[] kept = new double[reader.theta.length * grooves * stride];
    for (int i = 0; i < reader.theta.length && grooves > 0; i++) {
      int from = (i * reader.room + first) * stride;
      System.arraycopy(reader.z, from, kept, i * grooves * stride, grooves * stride);
    }
    GroovePhase phase = grooves > 0 ? reader.phase.from(first) : reader.phase;
    return new FlankField(reader.theta, reader.radius, phase, grooves, kept);
  }

  /** Reads the flanks at one angle after the other into a shared array, each its own part. */
  private static final class Reader {
    private final Wall wall;
    private final GroovePhase phase;
    private final int room;
    private final double[] theta;
    private final double[] radius;
    private final double[] z;

    Reader(Wall wall, GroovePhase phase, int room, double[] theta, double[] radius) {
      this.wall = wall;
      this.phase = phase;
      this.room = room;
      this.theta = theta.clone();
      this.radius = radius.clone();
      this.z = new double[theta.length * room * 2 * radius.length];
      Arrays.fill(z, Double.NaN);
    }

    void read(int angle) {
      double[] stretches = new double[2 * ROOM];
      for (int j = 0; j < radius.length; j++) {
        int n = wall.open(theta[angle], radius[j], stretches);
        if (2 * n > stretches.length) {
          stretches = new double[2 * n];
          n = wall.open(theta[angle], radius[j], stretches);
        }
        for (int s = 0; s < n; s++) {
          take(angle, j, stretches[2 * s], stretches[2 * s + 1]);
        }
      }
    }

    private void take(int angle, int j, double low, double high) {
      boolean hasLow = low > wall.bottom();
      boolean hasHigh = high < wall.top();
      boolean single = hasLow && hasHigh && high - low < phase.spacing();
      // Of grooves run together the outer flanks alone are left; a flank stands up to half a
      // spacing from its groove's middle.
      double back = single ? (high - low) / 2 : phase.spacing() / 4;
      if (hasHigh) {
        int at = index(angle, phase.nearest(high - back, theta[angle]), Flank.UP, j);
        if (at >= 0 && !(z[at] >= high)) {
          z[at] = high;
        }
      }
      if (hasLow) {
        int at = index(angle, phase.nearest(low + back, theta[angle]), Flank.DOWN, j);
        if (at >= 0 && !(z[at] <= low)) {
          z[at] = low;
        }
      }
    }

    private int index(int angle, long groove, Flank flank, int j) {
      if (groove < 0 || groove >= room) {
        return -1;
      }
      int side = flank == Flank.UP ? 0 : 1;
      return ((angle * room + (int) groove) * 2 + side) * radius.length + j;
    }
  }

  /** Number of angles. */
  public int angles() {
    return theta.length;
  }

  /** An angle as given (rad). */
  public double theta(int angle) {
    return theta[angle];
  }

  /** Number of radii. */
  public int radii() {
    return radius.length;
  }

  /** A radius as given (mm). */
  public double radius(int index) {
    return radius[index];
  }

  /** Number of grooves found at any angle. */
  public int grooves() {
    return grooves;
  }

  /** Where the grooves should lie, numbered as here. */
  public GroovePhase phase() {
    return phase;
  }

  /**
   * Height at which a flank stands on a radius (mm); NaN where it does not exist.
   *
   * @param angle index of the angle
   * @param groove number of the groove, from 0 at the mouth
   * @param index index of the radius
   */
  public double z(int angle, int groove, Flank flank, int index) {
    return z[offset(angle, groove, flank) + index];
  }

  /**
   * The heights of one flank at one angle, for loops that may not call for each.
   *
   * @param target takes one height for each radius (mm), NaN where there is none
   */
  public void copyFlank(int angle, int groove, Flank flank, double[] target) {
    System.arraycopy(z, offset(angle, groove, flank), target, 0, radius.length);
  }

  private int offset(int angle, int groove, Flank flank) {
    int at =
        (Objects.checkIndex(angle, theta.length) * grooves + Objects.checkIndex(groove, grooves));
    return (at * 2 + (flank == Flank.UP ? 0 : 1)) * radius.length;
  }

  /** Width of a groove on a radius (mm); NaN where one of its flanks does not exist. */
  public double width(int angle, int groove, int index) {
    return z(angle, groove, Flank.UP, index) - z(angle, groove, Flank.DOWN, index);
  }
}
