package flankfit.sweep;

import java.util.Arrays;

/** Stretches of a line on which metal is gone, gathered in any order. */
final class Openings {
  /** Stretches nearer than this are one (mm): rounding at the joints of a path. */
  private static final double TOUCHING = 1e-9;

  private final double bottom;
  private final double top;
  private double[] low = new double[32];
  private double[] high = new double[32];
  private int size;

  /** Nothing yet; what is added is clipped to bottom and top (mm). */
  Openings(double bottom, double top) {
    this.bottom = bottom;
    this.top = top;
  }

  /** Number of stretches added, joined or not. */
  int size() {
    return size;
  }

  void add(double from, double to) {
    double a = Math.max(from, bottom);
    double b = Math.min(to, top);
    if (!(a <= b)) {
      return;
    }
    if (size == low.length) {
      low = Arrays.copyOf(low, 2 * size);
      high = Arrays.copyOf(high, 2 * size);
    }
    // They come nearly in order, so each finds its place in a step or two.
    int i = size++;
    while (i > 0 && low[i - 1] > a) {
      low[i] = low[i - 1];
      high[i] = high[i - 1];
      i--;
    }
    low[i] = a;
    high[i] = b;
  }

  /**
   * Joins what overlaps.
   *
   * @param stretches takes lower and upper ends in turn (mm); what does not fit is left out
   * @return number of stretches there are
   */
  int joined(double[] stretches) {
    int n = 0;
    int i = 0;
    while (i < size) {
      double from = low[i];
      double to = high[i];
      for (i++; i < size && low[i] <= to + TOUCHING; i++) {
        to = Math.max(to, high[i]);
      }
      if (2 * n + 1 < stretches.length) {
        stretches[2 * n] = from;
        stretches[2 * n + 1] = to;
      }
      n++;
    }
    return n;
  }
}
