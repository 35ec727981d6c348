package flankfit.odds;

import flankfit.chance.Tabulated;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * One diameter over the depth and a few small deviations: the diameter over the depth alone, plus
 * for each deviation what it changes, by a parabola through three values at each depth. The depth
 * is counted at the deepest reach, so that what is left to the parabolas is small; no two
 * deviations are taken together.
 */
final class Surface {
  /** Departure of the tables from what was measured (mm). */
  private static final double ERROR = 2e-5;

  private final Tabulated base;
  private final List<Bend> bends = new ArrayList<>();

  /**
   * A deviation's tables.
   *
   * @param which index of the deviation
   * @param size where the outer values lie
   * @param less table at {@code -size}
   * @param more table at {@code +size}
   */
  private record Bend(int which, double size, Tabulated less, Tabulated more) {
    double at(double depth, double base, double z) {
      double t = z / size;
      double a = less.at(depth) - base;
      double b = more.at(depth) - base;
      return t / 2 * (b - a + t * (a + b));
    }
  }

  Surface(double low, double high, DoubleUnaryOperator byDepth) {
    this.base = Tabulated.of(byDepth, low, high, ERROR);
  }

  /** Adds a deviation; one of size 0 is left out. */
  Surface and(int which, double size, DoubleUnaryOperator less, DoubleUnaryOperator more) {
    if (size > 0) {
      bends.add(
          new Bend(
              which,
              size,
              Tabulated.of(less, base.low(), base.high(), ERROR),
              Tabulated.of(more, base.low(), base.high(), ERROR)));
    }
    return this;
  }

  /** The diameter (mm). */
  double at(double depth, double[] deviations) {
    double alone = base.at(depth);
    double sum = alone;
    for (Bend bend : bends) {
      double z = deviations[bend.which()];
      if (z != 0) {
        sum += bend.at(depth, alone, z);
      }
    }
    return sum;
  }

  double low() {
    return base.low();
  }

  double high() {
    return base.high();
  }
}
