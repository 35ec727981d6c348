package flankfit.gauge;

import flankfit.unit.Angles;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Chooses the directions in which a wall is read. From directions spread evenly, intervals are
 * halved in which what gauges and measures read may stray from the straight line between their ends
 * by more than it may be off: entries, ends of passes, ovals. The straying is judged by that at the
 * ends from their own neighbours, so that nothing is read in vain where the wall is the same all
 * round.
 *
 * <p>A dip in the room of a gauge between two directions lets too large a gauge pass; a hump lies
 * beyond what the directions themselves tell and harms nobody. Of a flank's own place a hump
 * counts, which is a mark in the metal.
 */
final class DirectionSearch {
  /** How far rooms of gauges may dip between directions (mm along the axis). */
  private static final double DIP = 1.5e-5;

  /** How far a flank may stand deeper between directions (mm along the axis). */
  private static final double HUMP = 2.5e-5;

  /** Halvings of an even interval in which the full form ends. */
  private static final int END_HALVINGS = 5;

  /** Times that curvatures on a stretch may differ for it to count as smooth (1). */
  private static final double SMOOTH = 3;

  /** Halvings of an even interval at most: to a hundredth of a degree. */
  private static final int MOST_HALVINGS = 9;

  /** Directions nearer than this are one (rad). */
  private static final double SAME = 1e-9;

  /** Directions that are read at most. */
  private static final int MOST = 600;

  private final FieldSampler sampler;
  private final FullForm form;
  private final double lowest;
  private final double highest;
  private final List<Reading> readings = new ArrayList<>();

  DirectionSearch(FieldSampler sampler) {
    this.sampler = sampler;
    WallField even = new WallField(sampler, sampler.even());
    this.form = new FullForm(even);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int e = 0; e < even.size(); e++) {
      if (form.isWhole(even, e)) {
        low = Math.min(low, even.height(e));
        high = Math.max(high, even.height(e));
      }
    }
    this.lowest = low;
    this.highest = high;
    sampler.even().forEach(reading -> readings.add(new Reading(reading)));
  }

  /** A direction with what is judged of each of its grooves. */
  private final class Reading {
    final DirectionReading read;
    final double[][] signals;
    final boolean[] whole;

    Reading(DirectionReading read) {
      WallField field = new WallField(sampler, List.of(read));
      this.read = read;
      this.signals = Signals.of(field, lowest, highest);
      this.whole = new boolean[signals.length];
      for (int i = 0; i < whole.length; i++) {
        whole[i] = form.isWhole(field, whole.length - 1 - i);
      }
    }

    boolean isWhole(long groove) {
      long i = groove - read.first;
      return i >= 0 && i < whole.length && whole[(int) i];
    }

    /** What is judged of a groove; empty when it does not count. */
    double[] of(long groove) {
      long i = groove - read.first;
      return i >= 0 && i < signals.length ? signals[(int) i] : Signals.NONE;
    }
  }

  /** All readings by rising angle. */
  List<DirectionReading> readings() {
    double even = Angles.TURN / sampler.even().size();
    double least = even / (1 << MOST_HALVINGS);
    double leastAtEnd = even / (1 << END_HALVINGS);
    boolean[] look = new boolean[readings.size()];
    Arrays.fill(look, true);
    while (readings.size() < MOST) {
      TreeSet<Double> wanted = new TreeSet<>();
      for (int i = 0; i < readings.size(); i++) {
        if (look[i] && width(i) > 1.5 * leastAtEnd && endsWithin(i)) {
          wanted.add(middle(i));
          opposite(i).ifPresent(wanted::add);
        } else if (look[i] && width(i) > 1.5 * least && strays(i)) {
          wanted.add(middle(i));
        }
      }
      if (wanted.isEmpty()) {
        break;
      }
      look = insert(wanted);
    }
    return readings.stream().map(reading -> reading.read).toList();
  }

  /** Reads in more directions; tells which intervals are to be looked at anew. */
  private boolean[] insert(SortedSet<Double> wanted) {
    List<DirectionReading> found =
        sampler.read(wanted.stream().mapToDouble(Double::doubleValue).toArray());
    List<Integer> places = new ArrayList<>();
    for (DirectionReading read : found) {
      int at = places.isEmpty() ? 0 : places.get(places.size() - 1) + 1;
      while (at < readings.size() && angle(at) < read.theta) {
        at++;
      }
      readings.add(at, new Reading(read));
      places.add(at);
    }
    int n = readings.size();
    boolean[] look = new boolean[n];
    for (int at : places) {
      for (int i = at - 3; i <= at + 2; i++) {
        look[Math.floorMod(i, n)] = true;
      }
    }
    return look;
  }

  private double middle(int i) {
    return angle(i) + width(i) / 2;
  }

  /**
   * The direction across from the middle of an interval, where it has not been read: diameters are
   * read across, so that a step counts on both sides.
   */
  private OptionalDouble opposite(int i) {
    double there = Angles.normalised(middle(i) + Math.PI);
    boolean known =
        readings.stream().anyMatch(reading -> Math.abs(reading.read.theta - there) < SAME);
    return known ? OptionalDouble.empty() : OptionalDouble.of(there);
  }

  private double angle(int i) {
    return readings.get(i).read.theta;
  }

  private double width(int i) {
    int n = readings.size();
    return i + 1 < n ? angle(i + 1) - angle(i) : angle(0) + Angles.TURN - angle(i);
  }

  private Reading reading(int i) {
    return readings.get(Math.floorMod(i, readings.size()));
  }

  /** Number of a groove in the i-th direction, which may lie beyond the whole turn. */
  private long number(long groove, int i) {
    int turns = Math.floorDiv(i, readings.size());
    return groove + (long) turns * sampler.winding.hand() * sampler.spec.starts();
  }

  /** Whether a groove's full form ends on the interval behind a direction. */
  private boolean endsWithin(int i) {
    Reading here = readings.get(i);
    Reading next = reading(i + 1);
    for (int g = 0; g < here.whole.length; g++) {
      if (here.whole[g] != next.isWhole(number(here.read.first + g, i + 1))) {
        return true;
      }
    }
    return false;
  }

  /** Whether anything strays too far on the interval behind a direction. */
  private boolean strays(int i) {
    Reading here = readings.get(i);
    for (int g = 0; g < here.signals.length; g++) {
      if (here.signals[g].length > 0 && strays(i, here.read.first + g)) {
        return true;
      }
    }
    return false;
  }

  private boolean strays(int i, long groove) {
    double[][] s = new double[6][];
    double[] h = new double[5];
    for (int k = 0; k < s.length; k++) {
      s[k] = reading(i - 2 + k).of(number(groove, i - 2 + k));
    }
    for (int k = 0; k < 5; k++) {
      h[k] = width(Math.floorMod(i - 2 + k, readings.size()));
    }
    if (s[3].length == 0 || (s[1].length == 0 && s[4].length == 0)) {
      return false;
    }
    for (int k = 0; k < s[2].length; k++) {
      double stray = stray(s, h, k);
      if (stray > DIP || (-stray > HUMP && Signals.countsDeep(k))) {
        return true;
      }
    }
    return false;
  }

  /** How far the value dips below the straight line on the middle interval, about (mm). */
  private static double stray(double[][] s, double[] h, int k) {
    double left = curvature(s, h, 1, k);
    double right = curvature(s, h, 2, k);
    // At an end without a neighbour beyond, the other end speaks for both.
    double a = Double.isNaN(left) ? right : left;
    double b = Double.isNaN(right) ? left : right;
    double widest = h[2] * (h[1] + h[2] + h[3]) / 2;
    if (!(Math.min(Math.abs(a), Math.abs(b)) * widest > DIP)) {
      return 0;
    }
    double[] c = {curvature(s, h, 0, k), left, right, curvature(s, h, 3, k)};
    if (!(a * b > 0)) {
      return a * b < 0 ? jump(s, h, k) : 0;
    }
    if (isSmooth(c)) {
      return (Math.abs(a) > Math.abs(b) ? a : b) * h[2] * h[2] / 8;
    }
    // A bend of slope s at a share f shows as s (1 - f) at one end and s f at the other.
    double first = a * (h[1] + h[2]) / 2;
    double second = b * (h[2] + h[3]) / 2;
    return h[2] * first * second / (first + second);
  }

  /** How far the value may dip below both ends where it may leap on the middle interval (mm). */
  private static double jump(double[][] s, double[] h, int k) {
    if (s[1].length == 0 || s[4].length == 0) {
      return 0;
    }
    double rise = s[3][k] - s[2][k];
    double before = (s[2][k] - s[1][k]) / h[1] * h[2];
    double after = (s[4][k] - s[3][k]) / h[3] * h[2];
    double leap = Math.min(Math.abs(rise - before), Math.abs(rise - after));
    double low = Math.min(s[2][k] + Math.min(0, before), s[3][k] - Math.max(0, after));
    return Math.min(leap, Math.min(s[2][k], s[3][k]) - low);
  }

  /** Second derivative at the j-th inner end; not a number where something is missing. */
  private static double curvature(double[][] s, double[] h, int j, int k) {
    if (s[j].length == 0 || s[j + 1].length == 0 || s[j + 2].length == 0) {
      return Double.NaN;
    }
    double before = (s[j + 1][k] - s[j][k]) / h[j];
    double after = (s[j + 2][k] - s[j + 1][k]) / h[j + 1];
    double found = 2 * (after - before) / (h[j] + h[j + 1]);
    return Double.isFinite(found) ? found : Double.NaN;
  }

  private static boolean isSmooth(double[] c) {
    double least = Double.POSITIVE_INFINITY;
    double greatest = Double.NEGATIVE_INFINITY;
    for (double value : c) {
      if (!Double.isNaN(value)) {
        least = Math.min(least, value);
        greatest = Math.max(greatest, value);
      }
    }
    return least * greatest > 0
        && Math.max(Math.abs(least), Math.abs(greatest))
            <= SMOOTH * Math.min(Math.abs(least), Math.abs(greatest));
  }
}
