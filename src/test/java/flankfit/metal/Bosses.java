package flankfit.metal;

import flankfit.setup.Hole;
import java.util.Optional;

/** Bosses for tests. */
final class Bosses {
  private Bosses() {}

  /** A boss that is there before the program, its top at 0 (mm). */
  static Hole ofStock(double x, double y, double diameter, double depth) {
    return new Hole(
        "stud",
        true,
        x,
        y,
        0,
        diameter,
        Optional.of(depth),
        Math.PI,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(Hole.MadeBy.STOCK),
        0);
  }
}
