package flankfit.unit;

/** Checks of arguments; each failure names parameter, value and range. */
public final class Require {
  private Require() {}

  /** Returns the value if it is finite. */
  public static double finite(String name, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be finite: " + value);
    }
    return value;
  }

  /** Returns the value if it is finite and above 0. */
  public static double positive(String name, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be above 0: " + value);
    }
    return value;
  }

  /** Returns the value if it is finite and not below 0. */
  public static double notNegative(String name, double value) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must not be below 0: " + value);
    }
    return value;
  }

  /** Returns the value if it lies between the bounds, both included. */
  public static double within(String name, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          name + " must lie between " + low + " and " + high + ": " + value);
    }
    return value;
  }
}
