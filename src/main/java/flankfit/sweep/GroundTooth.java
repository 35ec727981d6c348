package flankfit.sweep;

import flankfit.unit.Angles;
import flankfit.unit.Require;

/**
 * A tooth corrected by its maker so that on the nominal path one thread comes out with straight
 * basic flanks at its basic pitch diameter. The profile is the inverse envelope in closed form; the
 * flank ends where it reaches the outside radius, so the crest comes out narrower than the form's.
 *
 * <p>A wall point at radius ρ is touched when the cutter stands at φ with {@code sin(φ + β) = ρ sin
 * β / e}, {@code tan β = p cot α / ρ}; outside a boss the same with the signs of φ turned.
 *
 * @see "derived from the condition that the distance from the cutter's axis to the wanted surface
 *     is least; a direct minimisation agrees to 1e-9"
 */
public final class GroundTooth implements Tooth {
  private static final int STEPS = 60;

  /** Rows of the flank's table. */
  private static final int ROWS = 257;

  /** Error at which the search for a wall point ends (mm): the last digits of a double. */
  private static final double SETTLED = 1e-13;

  private final Basis basis;
  private final double outsideRadius;
  private final double pathRadius;
  private final double baseRadius;
  private final double rise;
  private final double deepest;
  private final double shallowest;
  private final FlankTable table;

  /**
   * Makes the tooth.
   *
   * @param basis thread the mill is ground for
   * @param outsideRadius radius over the teeth (mm), above 0; inside a hole below the bottom radius
   * @throws IllegalArgumentException if no mill of this radius can leave the thread
   */
  public GroundTooth(Basis basis, double outsideRadius) {
    Require.positive("outsideRadius", outsideRadius);
    this.basis = basis;
    this.outsideRadius = outsideRadius;
    this.pathRadius =
        basis.internal ? basis.bottomRadius - outsideRadius : basis.bottomRadius + outsideRadius;
    Require.positive("bottom radius less outside radius", pathRadius);
    this.rise = basis.lead / Angles.TURN;
    this.baseRadius = rise / Math.tan(basis.halfAngle);
    if (baseRadius >= pathRadius) {
      throw new IllegalArgumentException(
          "outsideRadius must leave a path radius above " + baseRadius + ": " + outsideRadius);
    }
    double meet = basis.pitch / 4 / Math.tan(basis.halfAngle);
    double toBottom = basis.bottomRadius - basis.pitchRadius;
    this.shallowest = toBottom > 0 ? basis.pitchRadius - meet : basis.pitchRadius + meet;
    this.deepest = whereFlankEnds();
    this.table = tabled();
  }

  /**
   * Thread that a mill is ground for.
   *
   * @param internal whether it is a hole's thread
   * @param bottomRadius radius of the groove's bottom on the nominal path (mm)
   * @param pitchRadius half the basic pitch diameter (mm)
   * @param pitch axial distance from groove to groove (mm)
   * @param lead travel along the axis in one turn (mm)
   * @param halfAngle half the angle between the flanks (rad)
   */
  public record Basis(
      boolean internal,
      double bottomRadius,
      double pitchRadius,
      double pitch,
      double lead,
      double halfAngle) {
    public Basis {
      Require.positive("bottomRadius", bottomRadius);
      Require.positive("pitchRadius", pitchRadius);
      Require.positive("pitch", pitch);
      Require.positive("lead", lead);
      Require.within("halfAngle", halfAngle, 1e-3, Math.PI / 2 - 1e-3);
    }
  }

  @Override
  public double outsideRadius() {
    return outsideRadius;
  }

  @Override
  public double rootRadius() {
    return toothRadius(shallowest);
  }

  @Override
  public boolean isSymmetric() {
    return true;
  }

  @Override
  public double halfWidth(double radius, Flank flank) {
    return toothWidth(wallOf(radius));
  }

  @Override
  public double radius(double s) {
    double from = Math.abs(s);
    if (from <= toothWidth(deepest)) {
      return outsideRadius;
    }
    if (from > toothWidth(shallowest)) {
      return 0;
    }
    double near = deepest;
    double far = shallowest;
    for (int i = 0; i < STEPS; i++) {
      double middle = (near + far) / 2;
      if (toothWidth(middle) < from) {
        near = middle;
      } else {
        far = middle;
      }
    }
    return toothRadius((near + far) / 2);
  }

  @Override
  public FlankShape side(Flank flank) {
    return table;
  }

  private FlankTable tabled() {
    double root = rootRadius();
    double step = (outsideRadius - root) / (ROWS - 1);
    double[] width = new double[ROWS];
    double[] fall = new double[ROWS];
    for (int i = 0; i < ROWS; i++) {
      double wall = i == 0 ? shallowest : i == ROWS - 1 ? deepest : wallOf(root + i * step);
      width[i] = toothWidth(wall);
      // Where tooth and wall touch, the tooth's slope follows from the angle ahead alone.
      fall[i] = rise * toothRadius(wall) / (pathRadius * wall * Math.sin(ahead(wall)));
    }
    return new FlankTable(root, step, width, fall);
  }

  /** Angle of the cutter ahead of the wall point it touches (rad). */
  private double ahead(double wall) {
    double beta = Math.atan2(baseRadius, wall);
    double sine = wall * Math.sin(beta) / pathRadius;
    return Math.abs(Math.asin(Math.min(1, sine)) - beta);
  }

  private double toothRadius(double wall) {
    double half = Math.sin(ahead(wall) / 2);
    double apart = wall - pathRadius;
    return Math.sqrt(apart * apart + 4 * wall * pathRadius * half * half);
  }

  private double toothWidth(double wall) {
    double beyond = (wall - basis.pitchRadius) * Math.tan(basis.halfAngle);
    double wanted = basis.pitch / 4 - (basis.internal ? beyond : -beyond);
    return wanted - rise * ahead(wall);
  }

  private double whereFlankEnds() {
    double toBottom = basis.bottomRadius;
    double far = shallowest;
    if (toothRadius(far) >= outsideRadius) {
      throw new IllegalArgumentException("outsideRadius leaves no flank: " + outsideRadius);
    }
    return bisect(far, toBottom, outsideRadius);
  }

  /** The wall radius that is touched at a distance from the cutter's axis (mm). */
  private double wallOf(double radius) {
    // The distance grows nearly as fast as the wall radius, so correcting by the whole error
    // settles
    // in a few steps; the sign is that of "deeper into the material".
    double outwards = basis.internal ? 1 : -1;
    double wall = pathRadius + outwards * radius;
    for (int i = 0; i < STEPS; i++) {
      double error = radius - toothRadius(wall);
      wall += outwards * error;
      if (Math.abs(error) < SETTLED) {
        break;
      }
    }
    double low = Math.min(shallowest, deepest);
    return Math.min(Math.max(wall, low), Math.max(shallowest, deepest));
  }

  private double bisect(double shallow, double deep, double radius) {
    double low = shallow;
    double high = deep;
    for (int i = 0; i < STEPS; i++) {
      double middle = (low + high) / 2;
      if (toothRadius(middle) < radius) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
