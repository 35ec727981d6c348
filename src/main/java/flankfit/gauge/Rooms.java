package flankfit.gauge;

import flankfit.gauge.Fit.DecidedBy;
import flankfit.unit.Tolerance;
import java.util.Arrays;

/**
 * The room that each element of a wall leaves a form of gauge: on both flanks and at the crest, as
 * bounds along the axis of the linear program in {@link LargestGauge} (mm), infinite where nothing
 * stands in the way.
 */
final class Rooms {
  /** Share of the load from which a place counts as touched (1). */
  static final double TOUCHED = 1e-6;

  private final Winding winding;
  private final double pitchHeight;
  private final double[] up;
  private final double[] down;
  private final double[] crest;
  private final double[] cos;
  private final double[] sin;
  private final double slip;

  private Rooms(WallField field, double diameter) {
    this.winding = field.winding();
    this.pitchHeight = winding.turned(diameter / 2) * winding.tan();
    this.slip = winding.sign() * winding.rise() / (field.spec().basicPitch() / 2 * winding.tan());
    this.up = new double[field.size()];
    this.down = new double[field.size()];
    this.crest = new double[field.size()];
    this.cos = new double[field.size()];
    this.sin = new double[field.size()];
    for (int e = 0; e < field.size(); e++) {
      cos[e] = Math.cos(field.theta(e));
      sin[e] = Math.sin(field.theta(e));
    }
  }

  /** The room that a thread gauge finds. */
  static Rooms of(WallField field, ThreadGauge gauge) {
    Rooms rooms = new Rooms(field, gauge.pitchDiameter());
    double crestDepth = rooms.winding.turned(gauge.crestRadius());
    FlankRoom room = new FlankRoom(field, gauge);
    for (int e = 0; e < field.size(); e++) {
      rooms.up[e] = room.of(e, true);
      rooms.down[e] = room.of(e, false);
      // A crest no deeper than a nanometre beyond the bottom is at the bottom.
      double over = field.bottom(e) - crestDepth + Tolerance.MODEL.value();
      rooms.crest[e] = rooms.winding.tan() * over;
    }
    return rooms;
  }

  /** The room that a thread gauge finds on its flanks, as if it had no crest. */
  static Rooms flanksOnly(WallField field, ThreadGauge gauge) {
    Rooms rooms = of(field, gauge);
    Arrays.fill(rooms.crest, Double.POSITIVE_INFINITY);
    return rooms;
  }

  /** The room that the crest of a thread gauge finds, as if it had no flanks. */
  static Rooms crestOnly(WallField field, ThreadGauge gauge) {
    Rooms rooms = of(field, gauge);
    Arrays.fill(rooms.up, Double.POSITIVE_INFINITY);
    Arrays.fill(rooms.down, Double.POSITIVE_INFINITY);
    return rooms;
  }

  /** The room that a plain plug or ring finds between the ridges' crests. */
  static Rooms plain(WallField field, double diameter) {
    Rooms rooms = new Rooms(field, diameter);
    double own = rooms.winding.turned(diameter / 2);
    for (int e = 0; e < field.size(); e++) {
      double wall = Math.min(field.bottom(e), field.ridge(e, true));
      rooms.up[e] = Double.POSITIVE_INFINITY;
      rooms.down[e] = Double.POSITIVE_INFINITY;
      rooms.crest[e] = rooms.winding.tan() * (wall - own);
    }
    return rooms;
  }

  Winding winding() {
    return winding;
  }

  /** Pitch depth of the gauge itself times tan α (mm). */
  double pitchHeight() {
    return pitchHeight;
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
    return crest[element] + pitchHeight;
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
    return winding.sign() * 2 * height / winding.tan();
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
}
