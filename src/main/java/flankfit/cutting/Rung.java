package flankfit.cutting;

import java.util.List;
import java.util.Objects;

/**
 * What one pass of a ladder does.
 *
 * @param cutShort how far each row is pushed off its path (mm), positive away from the wall: the
 *     path cut short; for a row that rubs, at least the layer that it leaves standing
 * @param total what all rows together feel; volume of one tooth of all rows
 * @param peak greatest cutting force on one tooth of all rows (N)
 * @param rubs whether each row only rubs: its chip is thinner than its edge can take
 * @param settled whether force and bending found their balance
 */
public record Rung(
    List<Double> cutShort, RowForce total, double peak, List<Boolean> rubs, boolean settled) {
  public Rung {
    cutShort = List.copyOf(cutShort);
    Objects.requireNonNull(total, "total");
    rubs = List.copyOf(rubs);
  }

  /** Mean over the rows (mm). */
  public double meanCutShort() {
    return cutShort.stream().mapToDouble(Double::doubleValue).average().orElse(0);
  }
}
