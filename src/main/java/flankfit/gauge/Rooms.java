package flankfit.gauge;

import flankfit.gauge.Fit.DecidedBy;
import flankfit.unit.Tolerance;

/**
 * The room that each element of a wall leaves a form of gauge: on both flanks and at the crest, as
 * bounds along the axis of the linear program in {@link LargestGauge} (mm), infinite where nothing
 * stands in the way.
 */
final class Rooms {
  /** Share of the load from which a place counts as touched (1). */
  static final double TOUCHED = 1e-6;

  private final WallField field;
  private final ThreadGauge gauge;
  private final double tan;
  private final double root;
  private final double crestDepth;
  private final double[] up;
  private final double[] down;
  private final double[] crest;
  private final double[] cos;
  private final double[] sin;
  private final double slip;

  private Rooms(WallField field, ThreadGauge gauge) {
    Winding winding = field.winding();
    int size = field.size();
    this.field = field;
    this.gauge = gauge;
    this.tan = winding.tan();
    this.root = winding.turned(gauge.rootRadius());
    this.crestDepth = winding.turned(gauge.crestRadius());
    this.up = new double[size];
    this.down = new double[size];
    this.crest = new double[size];
    this.cos = new double[size];
    this.sin = new double[size];
    this.slip = winding.sign() * winding.rise() / (gauge.pitchDiameter() / 2 * winding.tan());
    for (int e = 0; e < size; e++) {
      cos[e] = Math.cos(field.theta(e));
      sin[e] = Math.sin(field.theta(e));
      up[e] = room(e, true);
      down[e] = room(e, false);
      // A crest no deeper than a nanometre beyond the bottom is at the bottom.
      crest[e] = tan * (field.bottom(e) - crestDepth + Tolerance.MODEL.value());
    }
  }

  static Rooms of(WallField field, ThreadGauge gauge) {
    return new Rooms(field, gauge);
  }

  Winding winding() {
    return field.winding();
  }

  /** Pitch depth of the gauge itself times tan α (mm). */
  double pitchHeight() {
    return winding().turned(gauge.pitchDiameter() / 2) * tan;
  }

  double up(int element) {
    return up[element];
  }

  double down(int element) {
    return down[element];
  }

  /** Room at the crest times tan α (mm). */
  double crest(int element) {
    return crest[element];
  }

  /** The same as a bound of the pitch depth, for gauges whose crest grows with it (mm). */
  double growing(int element) {
    return crest[element] + pitchHeight();
  }

  double[] cos() {
    return cos;
  }

  double[] sin() {
    return sin;
  }

  /** How far a shift across turns the helix against the wall, for a unit of shift times tan α. */
  double slip() {
    return slip;
  }

  /** Pitch diameter of a gauge of a height (mm). */
  double diameter(double height) {
    return winding().sign() * 2 * height / tan;
  }

  /** What the row of a contact belongs to. */
  static DecidedBy part(int row) {
    return switch (row % LargestGauge.KINDS) {
      case LargestGauge.UP -> DecidedBy.FLANK_UP;
      case LargestGauge.DOWN -> DecidedBy.FLANK_DOWN;
      default -> DecidedBy.CREST;
    };
  }

  /**
   * The flank that keeps a gauge from being larger: where one of both stands clearly nearer to the
   * pitch line than its fellow across the groove; flank-up when they are alike.
   */
  DecidedBy decidedBy(LargestGauge largest) {
    double upper = 0;
    for (int row : largest.contacts(TOUCHED)) {
      int e = row / LargestGauge.KINDS;
      if (part(row) == DecidedBy.CREST) {
        return DecidedBy.CREST;
      }
      double less = down[e] - up[e];
      upper += Double.isFinite(less) ? less : 0;
    }
    return upper < -Tolerance.MODEL.value() ? DecidedBy.FLANK_DOWN : DecidedBy.FLANK_UP;
  }

  private double room(int e, boolean isUp) {
    double ridge = field.ridge(e, isUp);
    double least = Double.POSITIVE_INFINITY;
    double low = Math.max(root, ridge);
    for (int step = 0; step < field.depths(); step++) {
      double depth = field.depth(step);
      if (depth >= low && depth <= crestDepth) {
        least = lesser(least, field.flank(e, step, isUp), depth);
      }
    }
    least = lesser(least, field.flankAt(e, crestDepth, isUp), crestDepth);
    if (ridge >= root && ridge <= crestDepth) {
      least = lesser(least, field.atRidge(e, isUp), ridge);
    } else {
      least = lesser(least, field.flankAt(e, root, isUp), root);
    }
    double bottom = field.bottom(e);
    if (bottom >= root && bottom <= crestDepth) {
      least = lesser(least, field.atBottom(e, isUp), bottom);
    }
    return least - winding().pitch() / 4;
  }

  /** The lesser of a room and that on one cylinder, which may not be there. */
  private double lesser(double least, double flank, double depth) {
    double room = flank + depth * tan;
    return room < least ? room : least;
  }
}
