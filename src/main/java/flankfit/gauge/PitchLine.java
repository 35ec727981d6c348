package flankfit.gauge;

import flankfit.unit.Tolerance;
import java.util.Arrays;

/**
 * The pitch line of a wall: for each element of full form the depth at which the groove is half the
 * pitch wide, and the height of the groove's middle off the helix, each with its least-squares fit.
 */
final class PitchLine {
  /** Terms of the fit of depths: constant, with height, with cosine and sine of the direction. */
  private static final int TERMS = 4;

  /** Times the median departure from which a place is left out of the fit (1). */
  private static final double FAR_OFF = 4;

  private static final int ROUNDS = 3;

  private final WallField field;
  private final int[] elements;
  private final double[] depth;
  private final double[] middle;
  private final double centre;
  private final double[][] rows;
  private final double[] depthFit;
  private final double[] middleFit;
  private final double[] depthFitted;
  private final double[] middleFitted;

  PitchLine(WallField field, int[] elements) {
    this.field = field;
    this.elements = elements;
    this.depth = new double[elements.length];
    this.middle = new double[elements.length];
    for (int i = 0; i < elements.length; i++) {
      depth[i] = halfWide(elements[i]);
      double up = field.flankAt(elements[i], field.pitchLine(), true);
      double down = field.flankAt(elements[i], field.pitchLine(), false);
      middle[i] = (up - down) / 2;
    }
    this.centre = Arrays.stream(elements).mapToDouble(field::height).average().orElse(0);
    this.rows = new double[elements.length][];
    for (int i = 0; i < elements.length; i++) {
      rows[i] = termsAt(elements[i]);
    }
    this.depthFit = fit(depth, TERMS);
    this.middleFit = fit(middle, 2);
    this.depthFitted = fitted(depthFit);
    this.middleFitted = fitted(middleFit);
  }

  /**
   * Depth at which a groove is half the pitch wide (mm); prolonged where it is not in the field.
   */
  private double halfWide(int e) {
    double half = field.spec().pitch() / 2;
    int first = 0;
    while (first < field.depths() - 2 && !(wide(e, first) < Double.POSITIVE_INFINITY)) {
      first++;
    }
    int step = first;
    while (step + 2 < field.depths()
        && wide(e, step + 1) > half
        && Double.isFinite(wide(e, step + 2))) {
      step++;
    }
    double a = wide(e, step);
    double b = wide(e, step + 1);
    double share = (a - half) / (a - b);
    double straight = field.depth(step) + share * (field.depth(step + 1) - field.depth(step));
    double bent = bent(e, step - 1, half);
    boolean between = bent >= field.depth(step) && bent <= field.depth(step + 1);
    return between && share >= 0 && share <= 1 ? bent : straight;
  }

  /**
   * The depth of a width on the cubic through four depths (mm): in the round corner of a groove the
   * straight line is off by tenths of a micrometre. Not a number where there are not four.
   */
  private double bent(int e, int first, double width) {
    if (first < 0 || first + 3 >= field.depths()) {
      return Double.NaN;
    }
    double sum = 0;
    for (int i = first; i < first + 4; i++) {
      double term = field.depth(i);
      for (int k = first; k < first + 4; k++) {
        if (k != i) {
          term *= (width - wide(e, k)) / (wide(e, i) - wide(e, k));
        }
      }
      sum += term;
    }
    return sum;
  }

  /** Width of a groove at a depth of the field; infinite where a ridge does not reach it. */
  private double wide(int e, int step) {
    double depth = field.depth(step);
    boolean free = depth <= field.ridge(e, true) || depth <= field.ridge(e, false);
    return free
        ? Double.POSITIVE_INFINITY
        : field.flank(e, step, true) + field.flank(e, step, false);
  }

  /** Least squares, and again without what stands far off: a mark does not bend the fit. */
  private double[] fit(double[] values, int terms) {
    boolean[] counts = new boolean[elements.length];
    int fitted = fittedCount();
    int told = 0;
    for (int i = 0; i < fitted; i++) {
      counts[i] = Double.isFinite(values[i]);
      told += counts[i] ? 1 : 0;
    }
    double[] fit = new double[TERMS];
    if (told < fitted / 2 + TERMS) {
      // Most grooves are too broken to be half the pitch wide anywhere: there is no line.
      Arrays.fill(fit, Double.NaN);
      return fit;
    }
    fit = fit(values, terms, counts);
    for (int round = 0; round < ROUNDS; round++) {
      double[] off = new double[fitted];
      for (int i = 0; i < off.length; i++) {
        off[i] = Math.abs(values[i] - fitted(fit, rows[i]));
      }
      double[] sorted = off.clone();
      Arrays.sort(sorted);
      double far = Math.max(Tolerance.MODEL.value(), FAR_OFF * sorted[told / 2]);
      for (int i = 0; i < off.length; i++) {
        counts[i] = off[i] <= far;
      }
      fit = fit(values, terms, counts);
    }
    return fit;
  }

  private double[] fit(double[] values, int terms, boolean[] counts) {
    double[][] normal = new double[terms][terms];
    double[] right = new double[terms];
    for (int i = 0; i < elements.length; i++) {
      double share = counts[i] ? field.share(elements[i]) : 0;
      for (int r = 0; r < terms && counts[i]; r++) {
        for (int c = 0; c < terms; c++) {
          normal[r][c] += share * rows[i][r] * rows[i][c];
        }
        right[r] += share * rows[i][r] * values[i];
      }
    }
    double[] found = new double[TERMS];
    double[][] inverse = Inverse.of(normal);
    for (int r = 0; r < terms; r++) {
      for (int c = 0; c < terms; c++) {
        found[r] += inverse[r][c] * right[c];
      }
    }
    return found;
  }

  /** Whole turns only, so that ovals and lobes do not lean on taper and axis. */
  private int fittedCount() {
    double whole = Math.floor(field.turns(elements));
    return whole > 0 ? field.within(elements, 0, whole) : elements.length;
  }

  private double[] termsAt(int e) {
    double theta = field.theta(e);
    return new double[] {1, field.height(e) - centre, Math.cos(theta), Math.sin(theta)};
  }

  private double[] fitted(double[] fit) {
    return Arrays.stream(rows).mapToDouble(at -> fitted(fit, at)).toArray();
  }

  private static double fitted(double[] fit, double[] at) {
    double sum = 0;
    for (int r = 0; r < TERMS; r++) {
      sum += fit[r] * at[r];
    }
    return sum;
  }

  /** Whether most grooves have a pitch line; without, nothing is fitted. */
  boolean isTold() {
    return !Double.isNaN(depthFit[0]) && !Double.isNaN(middleFit[0]);
  }

  int count() {
    return elements.length;
  }

  int element(int i) {
    return elements[i];
  }

  /** Depth of the pitch line at the i-th element of full form (mm). */
  double depth(int i) {
    return depth[i];
  }

  /** Depth off the fitted cone about its own axis (mm). */
  double depthOff(int i) {
    return depth[i] - depthFitted[i];
  }

  /** Depth fitted: cone about its own axis (mm). */
  double depthFitted(int i) {
    return depthFitted[i];
  }

  /** The fitted cone at any element of the wall (mm). */
  double depthAt(int element) {
    return fitted(depthFit, termsAt(element));
  }

  /** Height of the groove's middle off the helix of the wanted lead (mm). */
  double middle(int i) {
    return middle[i];
  }

  /** The same, as fitted by a helix of another lead (mm). */
  double middleFitted(int i) {
    return middleFitted[i];
  }

  /** Growth of the depth with height (1). */
  double depthSlope() {
    return depthFit[1];
  }

  /** Growth of the groove's height off the wanted helix with height (1). */
  double leadSlope() {
    return middleFit[1];
  }

  /** Depth that the axis of the grooves stands off along X (0) or Y (1) (mm). */
  double axis(int which) {
    return depthFit[2 + which];
  }
}
