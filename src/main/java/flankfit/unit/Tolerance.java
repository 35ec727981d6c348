package flankfit.unit;

import java.util.Objects;

/**
 * A named closeness, handed to whatever compares.
 *
 * @param value largest difference that still counts as none; in the unit named
 * @param unit unit of the value, such as {@code mm}
 * @param reason why this value
 */
public record Tolerance(double value, String unit, String reason) {
  /** Points nearer than this are one point (mm). */
  public static final Tolerance MODEL =
      new Tolerance(1e-6, "mm", "points nearer than a nanometre are one: far below any machine");

  public Tolerance {
    Require.positive("value", value);
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(reason, "reason");
  }

  /** Whether two values differ by no more than this. */
  public boolean near(double a, double b) {
    return Math.abs(a - b) <= value;
  }

  /** Whether a value is no farther from 0 than this. */
  public boolean zero(double a) {
    return Math.abs(a) <= value;
  }
}
