package flankfit.sweep;

import flankfit.unit.Require;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;

/**
 * One cutter carried along one path.
 *
 * @param cutter the cutter
 * @param path path of its lowest point, part frame
 * @param inward for each row from the lowest, how far its path is drawn in towards the thread's
 *     axis (mm), negative for pushed out: the row's path is made smaller about the axis, so that
 *     its turns lose this radius and what comes before and after loses in proportion
 */
public record Sweep(Cutter cutter, CutterPath path, List<Double> inward) {
  public Sweep {
    Objects.requireNonNull(cutter, "cutter");
    Objects.requireNonNull(path, "path");
    inward = List.copyOf(inward);
    if (inward.size() != cutter.rows()) {
      throw new IllegalArgumentException(
          "inward must have one number for each of " + cutter.rows() + " rows: " + inward.size());
    }
    inward.forEach(value -> Require.finite("inward", value));
  }

  /** A stiff cutter. */
  public static Sweep of(Cutter cutter, CutterPath path) {
    return new Sweep(cutter, path, Collections.nCopies(cutter.rows(), 0.0));
  }

  /** The same with rows drawn in towards the axis (mm), one number a row. */
  public Sweep drawnIn(double... rows) {
    return new Sweep(cutter, path, Arrays.stream(rows).boxed().toList());
  }

  /** The same with the path moved as a whole (mm). */
  public Sweep shifted(double dx, double dy, double dz) {
    return new Sweep(cutter, path.shifted(dx, dy, dz), inward);
  }
}
