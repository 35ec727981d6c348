package flankfit.metal;

import java.util.List;

/**
 * What became of the stock.
 *
 * @param stock volume before the first move (mm³)
 * @param removed what each tool took away, run by run in the order of time
 */
public record Balance(double stock, List<Removed> removed) {
  public Balance {
    removed = List.copyOf(removed);
  }

  /** Volume that is left (mm³). */
  public double left() {
    double left = stock;
    for (Removed run : removed) {
      left -= run.volume();
    }
    return left;
  }
}
