package flankfit.motion;

import java.util.Arrays;
import java.util.List;

/** The path of a rapid whose axes each run at their own rate and stop on arrival. */
public final class DogLeg {
  /** Most stops of one rapid. */
  public static final int MOST_STOPS = 3;

  private DogLeg() {}

  /**
   * Where an axis arrives, in order of time; stops may fall on each other.
   *
   * @param from start (mm), 3 long
   * @param to end (mm), 3 long
   * @param rates rate of each axis (mm/min), 3 long, above 0
   * @param target takes {@value #MOST_STOPS} stops of x, y, z (mm); the last is the end bit for bit
   */
  public static void write(double[] from, double[] to, List<Double> rates, double[] target) {
    double[] times = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      times[axis] = Math.abs(to[axis] - from[axis]) / rates.get(axis);
    }
    double[] ordered = times.clone();
    Arrays.sort(ordered);
    for (int stop = 0; stop < MOST_STOPS; stop++) {
      double time = ordered[stop];
      for (int axis = 0; axis < 3; axis++) {
        double share = times[axis] <= time ? 1 : time / times[axis];
        target[3 * stop + axis] =
            share == 1 ? to[axis] : from[axis] + share * (to[axis] - from[axis]);
      }
    }
  }
}
