package flankfit.standard;

import java.util.Arrays;

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

  /** The numbers from 1 to 9500, ascending. */
  private static final double[] NUMBERS = fourDecades();

  private R40() {}

  /** The preferred number that lies so many steps, 0 to 159, above 1 (1). */
  static double at(int step) {
    return NUMBERS[step];
  }

  /** How many steps above 1 the preferred number nearest to the value lies. */
  static int nearest(double value) {
    int found = Arrays.binarySearch(NUMBERS, value);
    if (found >= 0) {
      return found;
    }
    int above = Math.min(-found - 1, NUMBERS.length - 1);
    int below = Math.max(above - 1, 0);
    return value - NUMBERS[below] <= NUMBERS[above] - value ? below : above;
  }

  private static double[] fourDecades() {
    double[] numbers = new double[4 * DECADE.length];
    double scale = 1;
    for (int step = 0; step < numbers.length; step++) {
      if (step > 0 && step % DECADE.length == 0) {
        scale *= 10;
      }
      numbers[step] = DECADE[step % DECADE.length] * scale / 100;
    }
    return numbers;
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
