package flankfit.gauge;

import flankfit.gauge.Fit.DecidedBy;
import flankfit.gauge.RoomRows.Row;
import flankfit.gauge.SizeCourse.Form;
import flankfit.unit.Angles;
import flankfit.unit.Tolerance;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The room that each element of a wall leaves a form of gauge: on both flanks and at the crest, as
 * bounds along the axis of the linear program in {@link LargestGauge} (mm), infinite where nothing
 * stands in the way.
 */
final class Rooms {
  /** Share of the load from which a place counts as touched (1). */
  static final double TOUCHED = 1e-6;

  /** Directions nearer than this are one (rad). */
  private static final double SAME = 1e-6;

  private final Winding winding;
  private final double pitchHeight;
  private final int size;
  private final double slip;
  private double[] up;
  private double[] down;
  private double[] crest;
  private double[] cos;
  private double[] sin;
  private double[] theta;
  private double[] height;
  private final boolean[] isRead;
  private int extras;

  private Rooms(WallField field, double diameter, List<Row> rows) {
    this.winding = field.winding();
    this.pitchHeight = pitchHeight(field, diameter);
    this.slip = winding.sign() * winding.rise() / (field.spec().basicPitch() / 2 * winding.tan());
    this.size = rows.size();
    this.up = rows.stream().mapToDouble(Row::up).toArray();
    this.down = rows.stream().mapToDouble(Row::down).toArray();
    this.crest = rows.stream().mapToDouble(Row::crest).toArray();
    this.theta = rows.stream().mapToDouble(Row::theta).toArray();
    this.height = rows.stream().mapToDouble(Row::height).toArray();
    this.isRead = new boolean[size];
    for (int e = 0; e < size; e++) {
      isRead[e] = rows.get(e).isRead();
    }
    this.cos = Arrays.stream(theta).map(Math::cos).toArray();
    this.sin = Arrays.stream(theta).map(Math::sin).toArray();
  }

  private static double pitchHeight(WallField field, double diameter) {
    return field.winding().turned(diameter / 2) * field.winding().tan();
  }

  /** The room that a thread gauge finds. */
  static Rooms of(WallField field, ThreadGauge gauge) {
    return of(field, gauge, Form.FLANKS_BEHIND_CREST);
  }

  /** The room that a thread gauge of a form finds. */
  static Rooms of(WallField field, ThreadGauge gauge, Form form) {
    return new Rooms(field, gauge.pitchDiameter(), rows(field, gauge, form));
  }

  /** The room that a thread gauge finds on its flanks, as if it had no crest. */
  static Rooms flanksOnly(WallField field, ThreadGauge gauge) {
    return of(field, gauge, Form.FLANKS);
  }

  /**
   * The room that a thread gauge finds on its way, with the places where the ends of the wall cut
   * ridges and grooves off: there it is met first.
   */
  static Rooms onTheWay(WallField field, ThreadGauge gauge) {
    return onTheWay(field, gauge, Form.FLANKS_BEHIND_CREST, Double.NaN);
  }

  /**
   * The same for a form of gauge.
   *
   * @param wanted a height at which it is read, too (mm); not a number for none
   */
  static Rooms onTheWay(WallField field, ThreadGauge gauge, Form form, double wanted) {
    List<Row> rows = rows(field, gauge, form);
    for (double z : EndEdges.of(field, gauge)) {
      rows.addAll(rows(field.at(z), gauge, form));
    }
    if (wanted >= field.bottom() && wanted <= field.top()) {
      rows.addAll(rows(field.at(wanted), gauge, form));
    }
    rows.sort(Comparator.comparingDouble(row -> -row.height()));
    return new Rooms(field, gauge.pitchDiameter(), rows);
  }

  private static List<Row> rows(WallField field, ThreadGauge gauge, Form form) {
    double own = pitchHeight(field, gauge.pitchDiameter());
    double crestDepth = field.winding().turned(gauge.crestRadius());
    FlankRoom room = new FlankRoom(field, gauge);
    boolean withFlanks = form != Form.CREST;
    boolean withCrest = form != Form.FLANKS;
    return RoomRows.of(
        field,
        e -> {
          // A crest no deeper than a nanometre beyond the bottom is at the bottom.
          double over = field.bottom(e) - crestDepth + Tolerance.MODEL.value();
          return new Row(
              field.theta(e),
              field.height(e),
              withFlanks ? room.of(e, true) - own : Double.POSITIVE_INFINITY,
              withFlanks ? room.of(e, false) - own : Double.POSITIVE_INFINITY,
              withCrest ? field.winding().tan() * over : Double.POSITIVE_INFINITY,
              true);
        });
  }

  /** The room that a plain plug or ring finds between the ridges' crests. */
  static Rooms plain(WallField field, double diameter) {
    double own = field.winding().turned(diameter / 2);
    List<Row> rows =
        RoomRows.of(
            field,
            e -> {
              double wall = Math.min(field.bottom(e), field.ridge(e, true));
              return new Row(
                  field.theta(e),
                  field.height(e),
                  Double.POSITIVE_INFINITY,
                  Double.POSITIVE_INFINITY,
                  field.winding().tan() * (wall - own),
                  true);
            });
    return new Rooms(field, diameter, rows);
  }

  /** Takes in places read beside the elements; they come behind those. */
  void take(Rooms more) {
    int at = size + extras;
    up = joined(up, at, more.up);
    down = joined(down, at, more.down);
    crest = joined(crest, at, more.crest);
    cos = joined(cos, at, more.cos);
    sin = joined(sin, at, more.sin);
    theta = joined(theta, at, more.theta);
    height = joined(height, at, more.height);
    extras += more.size;
  }

  private static double[] joined(double[] first, int count, double[] more) {
    double[] all = Arrays.copyOf(first, count + more.length);
    System.arraycopy(more, 0, all, count, more.length);
    return all;
  }

  /** Lets go of places taken in last, but for a number. */
  void leave(int count) {
    extras = count;
  }

  /** Whether an element was read, rather than lies on the straight line between two. */
  boolean isRead(int element) {
    return isRead[element];
  }

  /** Puts what was read in the place of an element's direction. */
  void put(int element, Rooms there) {
    for (int i = 0; i < there.size; i++) {
      if (Math.abs(Math.IEEEremainder(there.theta[i] - theta[element], Angles.TURN)) < SAME) {
        up[element] = there.up[i];
        down[element] = there.down[i];
        crest[element] = there.crest[i];
      }
    }
    isRead[element] = true;
  }

  /** Number of elements. */
  int size() {
    return size;
  }

  /** Number of places taken in beside them. */
  int extras() {
    return extras;
  }

  /** Direction of an element or place (rad). */
  double theta(int element) {
    return theta[element];
  }

  /** Height of the helix there (mm). */
  double height(int element) {
    return height[element];
  }

  Winding winding() {
    return winding;
  }

  /** Pitch depth of the gauge itself times tan α (mm). */
  double pitchHeight() {
    return pitchHeight;
  }

  /** Room beyond that which the form itself takes on the upper flank (mm). */
  double up(int element) {
    return up[element];
  }

  /** The same on the lower flank (mm). */
  double down(int element) {
    return down[element];
  }

  /** Room at the crest times tan α (mm). */
  double crest(int element) {
    return crest[element];
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
