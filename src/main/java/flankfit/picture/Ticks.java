package flankfit.picture;

import flankfit.unit.Require;

/** Round steps for rules and scale bars: 1, 2 or 5 times a power of ten. */
public final class Ticks {
  private Ticks() {}

  /**
   * The least round step that is not below a length.
   *
   * @param least least step (any unit), above 0
   */
  public static double stepAtLeast(double least) {
    Require.positive("least", least);
    int power = (int) Math.floor(Math.log10(least));
    for (int p = power; ; p++) {
      double ten = Double.parseDouble("1e" + p);
      for (int digit : new int[] {1, 2, 5}) {
        if (digit * ten >= least * (1 - 1e-12)) {
          return digit * ten;
        }
      }
    }
  }

  /** Decimals needed to write multiples of a round step. */
  public static int decimals(double step) {
    return Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
  }
}
