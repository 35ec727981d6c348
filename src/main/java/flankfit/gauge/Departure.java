package flankfit.gauge;

import flankfit.sweep.Flank;
import flankfit.unit.Angles;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;

/**
 * The deepest departure of a thread's flanks into the metal from their usual profile: what an entry
 * arc leaves. Taper, lead error and an axis off centre are taken out before.
 *
 * @param depth radial depth beyond the usual profile (mm)
 * @param theta direction (rad)
 * @param z height of the groove's helix there (mm)
 * @param flank flank of the groove
 */
public record Departure(double depth, double theta, double z, Flank flank) {
  public Departure {
    Objects.requireNonNull(flank, "flank");
  }

  /**
   * The deepest within an arc of directions; empty when there is less than a turn of full form.
   *
   * @param from first direction (rad)
   * @param sweep how far the arc reaches anticlockwise (rad), from 0 to 2π
   */
  public static Optional<Departure> within(WallField field, double from, double sweep) {
    int[] full = new FullForm(field).elements();
    return field.turns(full) < 1
        ? Optional.empty()
        : within(field, new PitchLine(field, full), from, sweep);
  }

  static Optional<Departure> within(WallField field, PitchLine line, double from, double sweep) {
    Departure deepest = new Departure(Double.NEGATIVE_INFINITY, 0, 0, Flank.UP);
    for (Flank flank : Flank.values()) {
      for (int step = 0; step < field.depths(); step++) {
        deepest = deeper(deepest, field, line, flank, step, from, sweep);
      }
    }
    return Double.isFinite(deepest.depth) ? Optional.of(deepest) : Optional.empty();
  }

  private static Departure deeper(
      Departure than,
      WallField field,
      PitchLine line,
      Flank flank,
      int step,
      double from,
      double sweep) {
    double tan = field.winding().tan();
    double[] off = new double[line.count()];
    for (int i = 0; i < off.length; i++) {
      off[i] = off(field, line, i, flank, step);
    }
    double usual = usual(field, line, off);
    Departure deepest = than;
    for (int i = 0; i < off.length; i++) {
      double depth = (off[i] - usual) / tan;
      double theta = field.theta(line.element(i));
      boolean inArc = Angles.normalised(theta - from) <= sweep;
      if (inArc && depth > deepest.depth) {
        deepest = new Departure(depth, theta, field.height(line.element(i)), flank);
      }
    }
    return deepest;
  }

  /**
   * A flank's distance from the fitted groove at a depth (mm); not a number where it ends or is
   * free, as where a ridge is cut away up to the face.
   */
  private static double off(WallField field, PitchLine line, int i, Flank flank, int step) {
    int e = line.element(i);
    boolean up = flank == Flank.UP;
    if (field.depth(step) <= field.ridge(e, up)) {
      return Double.NaN;
    }
    double middle = up ? line.middleFitted(i) : -line.middleFitted(i);
    double cone = line.depthFitted(i) * field.winding().tan();
    double at = field.flank(e, step, up);
    return Double.isFinite(at) ? at - middle - cone : Double.NaN;
  }

  /** The median over the directions spread evenly. */
  private static double usual(WallField field, PitchLine line, double[] values) {
    double[] sorted = new double[values.length];
    int count = 0;
    for (int i = 0; i < values.length; i++) {
      if (Double.isFinite(values[i]) && field.isEven(line.element(i))) {
        sorted[count++] = values[i];
      }
    }
    Arrays.sort(sorted, 0, count);
    return count == 0 ? Double.NaN : sorted[count / 2];
  }
}
