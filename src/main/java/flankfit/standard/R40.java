package flankfit.standard;

/**
 * Preferred numbers of the series R40, met by whole steps: forty to a decade.
 *
 * @see "ISO 3, table 1"
 */
final class R40 {
  private static final int[] DECADE = {
    100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280,
    300, 315, 335, 355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850,
    900, 950
  };

  /** Steps counted here: 1 to 10 000 (steps). */
  private static final int COUNT = 4 * DECADE.length;

  private static final double[] TEN_TO = {1, 10, 100, 1000};

  private R40() {}

  /** The preferred number that lies so many steps, 0 to 159, above 1 (1). */
  static double at(int step) {
    return DECADE[step % DECADE.length] * TEN_TO[step / DECADE.length] / 100;
  }

  /** How many steps above 1 the preferred number nearest to the value lies. */
  static int nearest(double value) {
    int best = 0;
    for (int step = 1; step < COUNT; step++) {
      if (Math.abs(at(step) - value) < Math.abs(at(best) - value)) {
        best = step;
      }
    }
    return best;
  }

  /**
   * A tolerance in whole micrometres. Halves are printed upwards, but 26.5 and 42.5 as 26 and 42.
   *
   * @see "ISO 965-1, tables 3 to 6, as printed"
   */
  static long micrometres(int step) {
    double value = at(step);
    return value == 26.5 || value == 42.5 ? (long) value : Rounding.steps(value);
  }
}
